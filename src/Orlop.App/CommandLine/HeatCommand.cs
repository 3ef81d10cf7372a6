using System.CommandLine;
using System.Globalization;
using System.Text.Json.Nodes;
using Orlop.Boat.Things;
using Orlop.Electrics.Heat;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Review.Heat;
using Orlop.Review.Practices;

namespace Orlop.App.CommandLine;

/// <summary><c>orlop heat</c>: how warm described spaces and the cables of each way get, in each condition.</summary>
internal static class HeatCommand
{
    private const int FormatVersion = 1;
    private const double SoonFraction = 0.632;
    private const double NearFraction = 0.95;

    public static Command Make(CommandStreams streams) => LoadedInput.Command(
        "heat", "Tell how warm spaces and the cables of each way get, with everything on for good, how soon, and which openings would do.", streams, (input, form, units) =>
        {
            ElectricsView view = new(input.View.Boat, Practice.Of(input.View.Boat, input.Memo), input.Memo, CancellationToken.None);
            switch (form)
            {
                case LoadedInput.OutputForm.Json:
                    streams.Out.WriteLine(Json(input, view));
                    break;
                case LoadedInput.OutputForm.Csv:
                    WriteCsv(streams.Out, input, view);
                    break;
                default:
                    WriteText(streams.Out, input, view, UnitsOption.Of(units));
                    break;
            }
        });

    private static void WriteText(TextWriter output, LoadedInput input, ElectricsView view, DisplayUnits units)
    {
        string Text(double? value, string suffix) => value is { } known && double.IsFinite(known) ? QuantityText.Format(known, suffix, units, UnitsOption.Culture).Replace('\u00A0', ' ') : "?";
        string Minutes(double? seconds) => seconds is { } known ? $"{(known / 60).ToString("0", UnitsOption.Culture)} min" : "?";
        if (input.Conditions.Count == 0)
        {
            output.WriteLine("She has no condition to reckon in.");
        }

        foreach (Condition condition in input.Conditions)
        {
            output.WriteLine(condition.Title);
            foreach (SpaceWarmth warmth in HeatTable.Spaces(view, condition))
            {
                output.WriteLine($"  {warmth.Space.Title}");
                foreach (FindingInput missing in warmth.Missing)
                {
                    output.WriteLine($"    {(missing.IsMissing ? "not given" : "in the way")}: {MissingWords.Of(missing, view.Boat)}");
                }

                if (warmth.Most is not { } rest)
                {
                    output.WriteLine(warmth.WhyNone is { } why ? $"    {why}" : "    unknown");
                    continue;
                }

                ThermalResponseResult? response = warmth.Response();
                output.WriteLine($"    {Text(warmth.HeatW, "W")} in it: {Text(rest.InsideC, "C")} with everything on, {Text(warmth.Mean?.InsideC, "C")} by the share of the time; {Text(rest.FlowM3PerH, "M3PerH")} of air");
                output.WriteLine($"    63 % of the way after {Minutes(response?.TimeToS(0, SoonFraction))}, 95 % after {Minutes(response?.TimeToS(0, NearFraction))}");
                if (warmth.WithoutFan is { } still)
                {
                    output.WriteLine($"    with the fan stopped: {Text(still.InsideC, "C")}");
                }

                if (HeatTable.LimitC(view, warmth.Space) is { } limit)
                {
                    output.WriteLine($"    for {Text(limit, "C")}: " + warmth.OpeningNeededCm2(limit) switch
                    {
                        null => "no opening is enough",
                        <= 0 => "no opening is needed",
                        { } needed => $"openings of {Text(needed, "Cm2")} low and high, {Text(warmth.OpeningsApartM, "M")} apart",
                    });
                }
            }

            output.WriteLine($"  {"by table",10}{"carries",10}{"copper",10}{"bears",10}  hottest cable of each way");
            foreach (BundleWarmth bundle in HeatTable.Bundles(view, condition))
            {
                output.WriteLine(bundle.Worst is { } worst
                    ? $"  {Text(worst.TableA, "A"),10}{Text(worst.CurrentA, "A"),10}{Text(worst.ConductorC, "C"),10}{Text(worst.Cable.InsulationC?.Value, "C"),10}  {bundle.Way.Title}: {worst.Cable.Title}"
                    : $"  {"?",10}{"?",10}{"?",10}{"?",10}  {bundle.Way.Title}: {bundle.Result?.WhyNone ?? string.Join("; ", bundle.Missing.Select(missing => $"{MissingWords.Of(missing, view.Boat)} {(missing.IsMissing ? "is not given" : "cannot be as it is typed")}"))}");
            }

            output.WriteLine();
        }
    }

    private static void WriteCsv(TextWriter output, LoadedInput input, ElectricsView view)
    {
        output.WriteLine("condition,way,cable,ambient_c,current_a,table_a,conductor_c,insulation_c");
        foreach (BundleWarmth bundle in input.Conditions.SelectMany(condition => HeatTable.Bundles(view, condition)))
        {
            foreach (BundleCable cable in bundle.Cables)
            {
                output.WriteLine(string.Join(',', new[]
                {
                    bundle.Condition.Id, bundle.Way.Id, cable.Cable.Id, R(bundle.AmbientC), R(cable.CurrentA), R(cable.TableA), R(cable.ConductorC), R(cable.Cable.InsulationC?.Value),
                }.Select(Csv.Cell)));
            }
        }
    }

    private static string Json(LoadedInput input, ElectricsView view) => new JsonObject
    {
        ["heatFormat"] = FormatVersion,
        ["boat"] = input.View.Boat.Particulars?.Title ?? "",
        ["alteration"] = input.AlterationId,
        ["conditions"] = new JsonArray([.. input.Conditions.Select(condition => new JsonObject
        {
            ["condition"] = condition.Id,
            ["spaces"] = new JsonArray([.. HeatTable.Spaces(view, condition).Select(warmth => Space(view, warmth))]),
            ["bundles"] = new JsonArray([.. HeatTable.Bundles(view, condition).Select(Bundle)]),
        })]),
    }.ToJsonString(JsonOutput.Options);

    private static JsonObject Space(ElectricsView view, SpaceWarmth warmth)
    {
        ThermalResponseResult? response = warmth.Response();
        double? limit = HeatTable.LimitC(view, warmth.Space);
        return new JsonObject
        {
            ["space"] = warmth.Space.Id,
            ["isReckoned"] = warmth.Space.IsReckoned == true,
            ["missing"] = Missing(warmth.Missing),
            ["whyNone"] = warmth.WhyNone,
            ["heatW"] = warmth.Missing.IsEmpty ? warmth.HeatW : null,
            ["insideC"] = warmth.Most?.InsideC,
            ["meanInsideC"] = warmth.Mean?.InsideC,
            ["withoutFanC"] = warmth.WithoutFan?.InsideC,
            ["airAroundC"] = warmth.Most?.AirC,
            ["flowM3PerH"] = warmth.Most?.FlowM3PerH,
            ["airW"] = warmth.Most?.AirW,
            ["sidesW"] = warmth.Most?.SidesW,
            ["timeTo63S"] = response?.TimeToS(0, SoonFraction),
            ["timeTo95S"] = response?.TimeToS(0, NearFraction),
            ["limitC"] = limit,
            ["openingNeededCm2"] = limit is { } at ? warmth.OpeningNeededCm2(at) : null,
            ["heats"] = new JsonArray([.. warmth.Heats.Select(heat => new JsonObject { ["thing"] = heat.ThingId, ["mostW"] = heat.MostW, ["meanW"] = heat.MeanW })]),
        };
    }

    private static JsonObject Bundle(BundleWarmth bundle) => new()
    {
        ["way"] = bundle.Way.Id,
        ["missing"] = Missing(bundle.Missing.Concat(bundle.MissingCurrents)),
        ["whyNone"] = bundle.Result?.WhyNone,
        ["ambientC"] = bundle.AmbientC,
        ["cables"] = new JsonArray([.. bundle.Cables.Select(cable => new JsonObject
        {
            ["cable"] = cable.Cable.Id,
            ["currentA"] = cable.CurrentA,
            ["tableA"] = cable.TableA,
            ["conductorC"] = cable.ConductorC,
            ["insulationC"] = cable.Cable.InsulationC?.Value,
        })]),
    };

    private static JsonArray Missing(IEnumerable<FindingInput> missing) => new([.. missing.Select(one => new JsonObject { ["thing"] = one.ThingId, ["field"] = one.Field })]);

    private static string R(double? value) => value is { } known && double.IsFinite(known) ? known.ToString("R", CultureInfo.InvariantCulture) : "";
}
