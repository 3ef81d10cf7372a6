using System.CommandLine;
using System.Globalization;
using System.Text.Json.Nodes;
using Orlop.Boat.Things;
using Orlop.Drawings.Paper;
using Orlop.Presentation.Quantities;
using Orlop.Review.Electrics;
using Orlop.Review.Practices;

namespace Orlop.App.CommandLine;

/// <summary><c>orlop faults</c>: the weakest and the greatest fault at the far end of each conductor, and what opens.</summary>
internal static class FaultsCommand
{
    private const int FormatVersion = 1;

    public static Command Make(CommandStreams streams)
    {
        Option<string?> paper = new("--paper") { Description = "Write the electrical pages into this folder: circuits, fuses, diagram, charts of protection, isolation sheets; HTML to print, PDF where a browser is installed." };
        Option<string?> diagram = new("--diagram") { Description = "Paper of the one-line diagram on its side: a3, a4, letter or tabloid; otherwise that of the pages." };
        _ = diagram.AcceptOnlyFromAmong([.. Enum.GetValues<PaperSize>().Select(PaperSizes.NameOf)]);
        Command command = LoadedInput.Command(
            "faults", "Tell the weakest and the greatest fault at the far end of each conductor that a battery feeds, the fault to earth of each AC circuit, and what opens.", streams, [paper, diagram], async (input, form, parsed, token) =>
            {
                DisplayUnits units = UnitsOption.Of(parsed.GetValue<string?>("--units"));
                if (parsed.GetValue(paper) is { } folder)
                {
                    await SheetFiles.WriteElectricalAsync(input, folder, PaperSizes.Named(parsed.GetValue(diagram)), units, streams, token);
                }
                else
                {
                    Write(input, form, units, streams.Out);
                }
            });
        command.Validators.Add(result =>
        {
            if (result.IsGiven("--paper") && (result.IsGiven("--json") || result.IsGiven("--csv")))
            {
                result.AddError("--paper writes pages and nothing else: leave out --json and --csv.");
            }

            if (result.IsGiven("--diagram") && !result.IsGiven("--paper"))
            {
                result.AddError("--diagram chooses the paper of the pages' diagram: give --paper too.");
            }
        });
        return command;
    }

    private static void Write(LoadedInput input, LoadedInput.OutputForm form, DisplayUnits units, TextWriter output)
    {
        ElectricsView view = new(input.View.Boat, Practice.Of(input.View.Boat, input.Memo), input.Memo, CancellationToken.None);
        switch (form)
        {
            case LoadedInput.OutputForm.Json:
                output.WriteLine(Json(input, view));
                break;
            case LoadedInput.OutputForm.Csv:
                WriteCsv(output, input, view);
                break;
            default:
                WriteText(output, input, view, units);
                break;
        }
    }

    private static void WriteText(TextWriter output, LoadedInput input, ElectricsView view, DisplayUnits units)
    {
        string Text(double? value, string suffix) => value is { } known && double.IsFinite(known) ? QuantityText.Format(known, suffix, units, UnitsOption.Culture).Replace('\u00A0', ' ') : value is null ? "?" : "for ever";
        foreach (Condition condition in input.Conditions)
        {
            output.WriteLine(condition.Title);
            output.WriteLine($"  {"weakest",10}{"greatest",10}{"to hull",10}{"bears",12}{"opens in",12}  conductor: device");
            foreach (FaultRow row in FaultTable.Of(view, condition))
            {
                output.WriteLine($"  {Text(row.WeakestA, "A"),10}{Text(row.GreatestA, "A"),10}{Text(row.ToHullA, "A"),10}{Text(row.BearsS, "S"),12}{Text(row.LatestS, "S"),12}  {row.Title}: {row.Device?.Title ?? "none that is sure to open"}");
            }

            output.WriteLine();
        }

        output.WriteLine(Note);
        AcFaultsOutput.WriteText(output, view, Text);
    }

    private const string Note = "Faults at the far end of each conductor. Weakest: lowest battery, hot conductors, joints as they are. Greatest: full battery, every source, cold conductors. To hull: where the minus is bonded to it. ?: cannot be told.";

    private static void WriteCsv(TextWriter output, LoadedInput input, ElectricsView view)
    {
        output.WriteLine("condition,conductor,name,weakest_a,greatest_a,to_hull_a,device,opens_s,bears_s");
        foreach (Condition condition in input.Conditions)
        {
            foreach (FaultRow row in FaultTable.Of(view, condition))
            {
                output.WriteLine(string.Join(',', new[] { condition.Id, row.ConductorId, row.Title, R(row.WeakestA), R(row.GreatestA), R(row.ToHullA), row.Device?.Id ?? "", R(row.LatestS), R(row.BearsS) }.Select(Csv.Cell)));
            }
        }

        AcFaultsOutput.WriteCsv(output, view, R);
    }

    private static string Json(LoadedInput input, ElectricsView view) => new JsonObject
    {
        ["faultsFormat"] = FormatVersion,
        ["boat"] = input.View.Boat.Particulars?.Title ?? "",
        ["alteration"] = input.AlterationId,
        ["conditions"] = new JsonArray([.. input.Conditions.Select(condition => new JsonObject
        {
            ["condition"] = condition.Id,
            ["rows"] = new JsonArray([.. FaultTable.Of(view, condition).Select(Row)]),
        })]),
        ["acSide"] = AcFaultsOutput.Json(view),
    }.ToJsonString(JsonOutput.Options);

    private static JsonObject Row(FaultRow row) => new()
    {
        ["conductor"] = row.ConductorId,
        ["name"] = row.Title,
        ["weakestA"] = row.WeakestA,
        ["greatestA"] = row.GreatestA,
        ["toHullA"] = row.ToHullA,
        ["device"] = row.Device?.Id,
        ["opensS"] = row.LatestS,
        ["bearsS"] = row.BearsS is { } bears && double.IsFinite(bears) ? bears : null,
        ["bearsForEver"] = row.BearsS is { } time && double.IsInfinity(time),
    };

    private static string R(double? value) => value is { } known && double.IsFinite(known) ? known.ToString("R", CultureInfo.InvariantCulture) : "";
}
