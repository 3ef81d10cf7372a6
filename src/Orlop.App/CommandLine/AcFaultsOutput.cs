using System.Text.Json.Nodes;
using Orlop.Presentation.Words;
using Orlop.Review.Electrics;
using Orlop.Review.Electrics.AcSide;

namespace Orlop.App.CommandLine;

/// <summary>The AC side of <c>orlop faults</c>: for each AC circuit and each source that feeds it, how a fault to earth ends.</summary>
internal static class AcFaultsOutput
{
    private const string Note = "Faults to earth on the AC side: from live to the metal of what takes power, without resistance. Loop: hot, and cold as a loop tester reads it. ?: cannot be told.";

    public static void WriteText(TextWriter output, ElectricsView view, Func<double?, string, string> text)
    {
        if (AcTable.Of(view) is not { IsEmpty: false } rows)
        {
            return;
        }

        output.WriteLine();
        output.WriteLine("AC side");
        output.WriteLine($"  {"loop",10}{"cold",10}{"fault",10}{"touched",10}{"ends in",10}{"may last",10}  circuit, source: ended by; neutral to earth");
        foreach (AcRow row in rows)
        {
            output.WriteLine(
                $"  {(row.IsLimited ? "limited" : text(row.LoopOhm, "Ohm")),10}{text(row.ColdLoopOhm, "Ohm"),10}{text(row.FaultA, "A"),10}{text(row.TouchV, "V"),10}{text(row.EndsS, "S"),10}{text(row.PermittedS, "S"),10}"
                + $"  {row.Taker.Title}, {row.Source.Title}: {AcWords.EndedBy(row.HasEarth, row.EndedBy?.Title)}; {AcWords.Bond(row.BondPlaces)}");
        }

        output.WriteLine();
        output.WriteLine($"{Note} {Cautions.EarthFault}");
    }

    /// <summary>Rows of the same columns: the fault as the weakest, with no greatest and no time that the conductor bears.</summary>
    public static void WriteCsv(TextWriter output, ElectricsView view, Func<double?, string> number)
    {
        foreach (AcRow row in AcTable.Of(view))
        {
            output.WriteLine(string.Join(',', new[] { row.Condition.Id, row.ConductorId, $"{row.Taker.Title}, to earth, fed by {row.Source.Title}", number(row.FaultA), "", "", row.EndedBy?.Id ?? "", number(row.EndsS), "" }.Select(Csv.Cell)));
        }
    }

    public static JsonArray Json(ElectricsView view) => new([.. AcTable.Of(view).Select(row => new JsonObject
    {
        ["taker"] = row.Taker.Id,
        ["source"] = row.Source.Id,
        ["condition"] = row.Condition.Id,
        ["bonds"] = row.BondPlaces is { } places ? new JsonArray([.. places.Select(place => JsonValue.Create(place))]) : null,
        ["hasEarth"] = row.HasEarth,
        ["loopOhm"] = row.LoopOhm,
        ["coldLoopOhm"] = row.ColdLoopOhm,
        ["greatestLoopOhm"] = row.GreatestLoopOhm,
        ["faultA"] = row.FaultA,
        ["isLimited"] = row.IsLimited,
        ["touchV"] = row.TouchV,
        ["endedBy"] = row.EndedBy?.Id,
        ["endsS"] = row.EndsS,
        ["mayLastS"] = row.PermittedS,
    })]);
}
