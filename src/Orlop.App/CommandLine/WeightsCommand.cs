using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Orlop.Boat.Things;
using Orlop.Hull.Measuring;
using Orlop.Presentation.Views.Floating;
using Orlop.Review.Stability;

namespace Orlop.App.CommandLine;

/// <summary><c>orlop weights</c>: the weight ledger of a boat in her conditions.</summary>
internal static class WeightsCommand
{
    private const int FormatVersion = 1;
    private const int LeastColumnWidth = 12;
    private const int ColumnGap = 2;

    public static Command Make(CommandStreams streams) => LoadedInput.Command(
        "weights", "List what is aboard: mass, place, how it is known, and the whole boat.", streams, (input, form, units) =>
        {
            switch (form)
            {
                case LoadedInput.OutputForm.Json:
                    streams.Out.WriteLine(Json(input));
                    break;
                case LoadedInput.OutputForm.Csv:
                    WriteCsv(streams.Out, input);
                    break;
                default:
                    WriteText(streams.Out, input, units);
                    break;
            }
        });

    private static void WriteText(TextWriter output, LoadedInput input, string? units)
    {
        foreach (Condition condition in input.Conditions)
        {
            LedgerView ledger = LedgerView.Of(input.View, null, condition, UnitsOption.Of(units), UnitsOption.Culture);
            output.WriteLine(condition.Title);
            WriteLines(output, [.. ledger.Rows, .. ledger.Sums]);

            foreach ((_, string text) in ledger.Trouble)
            {
                output.WriteLine($"  {text}");
            }

            FloatText.Missing(output, ledger.Missing);
            output.WriteLine();
        }

        output.WriteLine(LedgerView.ColumnNote);
    }

    // Each column is as wide as its longest cell, and two spaces stand between them: feet and inches are longer than metres.
    private static void WriteLines(TextWriter output, LedgerLine[] lines)
    {
        string[][] cells = [["mass", "±", "forward", "to port", "up"], .. lines.Select(line => new[] { line.Mass, line.PlusMinus, line.X, line.Y, line.Z })];
        int[] widths = [.. cells[0].Select((_, column) => Math.Max(LeastColumnWidth, cells.Max(row => row[column].Length + ColumnGap)))];
        string[] words = ["what", .. lines.Select(line => $"{line.Title}{(line.How.Length == 0 ? "" : $" ({line.How})")}")];
        foreach ((string[] row, string what) in cells.Zip(words))
        {
            output.WriteLine(Plain($"  {string.Concat(row.Zip(widths, (cell, width) => cell.PadLeft(width)))}  {what}"));
        }
    }

    private static void WriteCsv(TextWriter output, LoadedInput input)
    {
        output.WriteLine("condition,id,name,kind,mass_kg,mass_deviation_kg,x_m,y_m,z_m,place_deviation_m,how");
        foreach (Condition condition in input.Conditions)
        {
            foreach (WeightRow row in LedgerView.RowsOf(input.View, condition))
            {
                output.WriteLine(string.Join(',', new[] { condition.Id, row.ThingId, row.Title, Word(row.Kind), R(row.MassKg), R(row.DeviationKg), R(row.Place.XM), R(row.Place.YM), R(row.Place.ZM), R(row.PlaceDeviationM), row.How }.Select(Csv.Cell)));
            }

            foreach (LedgerSum sum in LedgerView.SumsOf(input.View, condition))
            {
                output.WriteLine(string.Join(',', new[] { condition.Id, "", sum.Title, $"sum-{JsonNamingPolicy.KebabCaseLower.ConvertName(sum.Kind.ToString())}", R(sum.MassKg), R(sum.DeviationKg), R(sum.XM), R(sum.YM), R(sum.ZM), "", sum.How }.Select(Csv.Cell)));
            }
        }
    }

    private static string Json(LoadedInput input) => new JsonObject
    {
        ["weightsFormat"] = FormatVersion,
        ["boat"] = input.View.Boat.Particulars?.Title ?? "",
        ["alteration"] = input.AlterationId,
        ["conditions"] = new JsonArray([.. input.Conditions.Select(condition => Condition(input.View, condition))]),
        ["unreadTests"] = new JsonArray([.. input.View.Weight.Trouble.Select(trouble => new JsonObject { ["test"] = trouble.TestId, ["because"] = trouble.Message })]),
    }.ToJsonString(JsonOutput.Options);

    private static JsonObject Condition(StabilityView view, Condition condition)
    {
        LoadedBoat loaded = view.LoadedIn(condition);
        return new JsonObject
        {
            ["condition"] = condition.Id,
            ["rows"] = new JsonArray([.. LedgerView.RowsOf(view, condition).Select(Row)]),
            ["withoutLiquids"] = loaded.Total is { } total ? Total(total) : null,
            ["missing"] = FloatJson.Missing(loaded.Missing),
        };
    }

    private static JsonObject Row(WeightRow row) => new()
    {
        ["thing"] = row.ThingId,
        ["name"] = row.Title,
        ["kind"] = Word(row.Kind),
        ["massKg"] = row.MassKg,
        ["massDeviationKg"] = row.DeviationKg,
        ["xM"] = row.Place.XM,
        ["yM"] = row.Place.YM,
        ["zM"] = row.Place.ZM,
        ["placeDeviationM"] = row.PlaceDeviationM,
        ["how"] = row.How,
    };

    private static JsonObject Total(WeightTotal total) => new()
    {
        ["massKg"] = total.MassKg,
        ["massDeviationKg"] = total.MassDeviationKg,
        ["lcgM"] = total.Centre.XM,
        ["lcgDeviationM"] = total.LcgDeviationM,
        ["tcgM"] = total.Centre.YM,
        ["tcgDeviationM"] = total.TcgDeviationM,
        ["kgM"] = total.Centre.ZM,
        ["kgDeviationM"] = total.KgDeviationM,
    };

    private static string Word(WeightKind kind) => JsonNamingPolicy.KebabCaseLower.ConvertName(kind.ToString());

    private static string R(double? value) => value is { } known ? R(known) : "";

    private static string R(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    private static string Plain(string text) => text.Replace('\u00A0', ' ');
}
