using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Floating;
using Orlop.Hull.Measuring;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views.Floating;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Review.Stability;
using Orlop.Work.Paper;

namespace Orlop.Work.Loading;

/// <summary>The words and numbers of a loading and stability sheet in the reader's units.</summary>
internal sealed class SheetText(PaperOptions options)
{
    public DisplayUnits Units => options.Units;

    public CultureInfo Culture => options.Culture;

    /// <summary>How she floats: a name, and what is told of a boat, one line each.</summary>
    public IEnumerable<(string Name, Func<StabilityView, FloatingFacts, string> Told)> FloatingLines()
    {
        yield return ("Displacement", (_, facts) => facts.MassKg is { } mass ? $"{Kg(mass)} {Band(facts, facts.Deviations.MassKg, "Kg")}" : QuantityText.Unknown);
        yield return ("LCG, forward", (view, facts) => Centre(view, facts, total => (total.Centre.XM, total.LcgDeviationM)));
        yield return ("TCG, to port", (view, facts) => Centre(view, facts, total => (total.Centre.YM, total.TcgDeviationM)));
        yield return ("KG, above base", (view, facts) => Centre(view, facts, total => (total.Centre.ZM, total.KgDeviationM)));
        foreach (int index in Enumerable.Range(0, 3))
        {
            string where = index switch { 0 => "aft", 1 => "amidships", _ => "forward" };
            yield return ($"Draught {where}", (_, facts) => facts.Draughts.ElementAtOrDefault(index) is { } draught
                ? $"{M(draught.DraughtM)}{(index == 1 ? $" {Band(facts, facts.Deviations.DraughtM, "M")}" : "")}, at x {M(draught.XM)}" : QuantityText.Unknown);
        }

        yield return ("Trim", (_, facts) => facts.TrimM is { } trim ? $"{FloatingWords.Trim(trim, Units, Culture)} {Band(facts, facts.Deviations.TrimM, "M")}" : QuantityText.Unknown);
        yield return ("Heel", (_, facts) => facts.Position is { } at ? $"{FloatingWords.Heel(at.Attitude.HeelDeg, Units, Culture)} {Band(facts, facts.Deviations.HeelDeg, "Deg")}" : facts.CapsizedHeelDeg is { } over ? $"{FloatingWords.Heel(over, Units, Culture)}: she capsizes" : QuantityText.Unknown);
        yield return ("Least freeboard", (view, facts) => view.LeastFreeboardIn(facts.Condition) is { } least ? $"{M(least.HeightM)}, {least.Where}" : QuantityText.Unknown);
        yield return ("GM where she rests", (_, facts) => facts is { GmM: { } gm, Position: { } at } ? $"{M(gm)} {Band(facts, facts.Deviations.GmM, "M")}, {FloatingWords.Heel(at.Attitude.HeelDeg, Units, Culture)}" : FloatingWords.NotTold(facts));
        yield return ("Greatest lever", (_, facts) => facts.Greatest is { } most ? $"{M(most.LeverM)} at {FloatingWords.Heel(most.HeelDeg, Units, Culture)}{(facts.Weaker!.IsFloodedAt(most.HeelDeg) ? ", where she floods" : "")}" : facts.Weaker is null ? QuantityText.Unknown : facts.Fills ? FloatingWords.Filling : FloatingWords.None);
        yield return ("Range", (view, facts) => Range(view, facts));
        yield return ("Openings under at", (view, facts) => Flooding(view, facts));
    }

    /// <summary>"± 0.02 m" where she has a position.</summary>
    public string Band(FloatingFacts facts, double deviation, string suffix) => facts.Position is null && facts.Draughts.IsEmpty ? "" : FloatingWords.Band(deviation, suffix, Units, Culture);

    /// <summary>A height of a mark with its band.</summary>
    public string Freeboard(MarkFreeboard mark) => $"{M(mark.HeightM)} {FloatingWords.Band(mark.DeviationM, "M", Units, Culture)}";

    /// <summary>A sentence of a finding; the condition that stands over it is not said again.</summary>
    public string Headline(Finding finding, Condition? condition)
    {
        string words = SentenceText.Of(finding.Headline, Units, Culture);
        string again = $"{condition?.Title}: ";
        words = condition is not null && words.StartsWith(again, StringComparison.Ordinal) ? words[again.Length..] : words;
        return words.Length == 0 ? words : $"{char.ToUpper(words[0], Culture)}{words[1..]}";
    }

    /// <summary>Where a finding's limit comes from: the line of its working that states the limit, or those that name a document.</summary>
    public static string Source(Finding finding)
    {
        WorkingLine? limit = finding.Working.FirstOrDefault(line => line.Source.Length > 0 && (line.What is "Allowed" || line.Expression is "limit" or "limit of the rule" or "as given"));
        string[] named = limit is not null ? [limit.Source] : [.. finding.Working.Select(line => line.Source).Where(source => source.Any(char.IsAsciiDigit) || source.Contains("practice", StringComparison.Ordinal)).Distinct()];
        return named.Length == 0 ? "" : string.Join("; ", named);
    }

    /// <summary>What a check remarks on its own validity.</summary>
    public static IEnumerable<string> Remarks(Finding finding) => finding.Working.Where(line => line.What == "Remark").Select(line => line.Expression).Distinct();

    public string M(double lengthM) => FloatingWords.Metres(lengthM, Units, Culture);

    /// <summary>A value in the reader's units.</summary>
    public string Shown(double value, string suffix) => QuantityText.Shown(value, suffix, Units, Culture);

    public string Trim(double trimM) => FloatingWords.Trim(trimM, Units, Culture);

    public string Heel(double heelDeg) => FloatingWords.Heel(heelDeg, Units, Culture);

    public string Kg(double massKg) => LedgerView.Kg(massKg, Units, Culture);

    /// <summary>Two standard deviations of a mass.</summary>
    public string BandKg(double deviationKg) => LedgerView.BandKg(deviationKg, Units, Culture);

    public string Deg(double angleDeg) => FloatingWords.Degrees(Math.Abs(angleDeg), Units, Culture);

    public string Density(double kgPerM3) => QuantityText.Shown(kgPerM3, "KgPerM3", Units, Culture);

    /// <summary>A place: forward, to port, up.</summary>
    public string At(Place place) => $"{M(place.XM)} forward, {M(Math.Abs(place.YM))} to {(place.YM < 0 ? "starboard" : "port")}, {M(place.ZM)} up";

    private string Centre(StabilityView view, FloatingFacts facts, Func<WeightTotal, (double Value, double Deviation)> read)
    {
        if (LedgerView.WholeOf(view, facts.Condition) is not { } whole)
        {
            return QuantityText.Unknown;
        }

        (double value, double deviation) = read(whole);
        return $"{M(value)} {FloatingWords.Band(deviation, "M", Units, Culture)}";
    }

    private string Range(StabilityView view, FloatingFacts facts)
    {
        (string value, string of) = FloatingWords.Range(view.Boat, facts, Units, Culture);
        return of.Length == 0 ? value : $"{value} {of}";
    }

    private string Flooding(StabilityView view, FloatingFacts facts)
    {
        string Side(RightingFeatures? side, string name) => side switch
        {
            null => $"{name}: {QuantityText.Unknown}",
            { DownfloodingDeg: { } heel, DownfloodingOpening: { } opening } => $"{name}: {view.Boat.Find(opening)?.Title ?? opening} at {Deg(heel)}",
            _ => $"{name}: none of those entered",
        };
        return facts.Floating is null ? QuantityText.Unknown
            : view.OpeningsIn(facts.Condition).IsEmpty ? "no opening is entered, or all are shut"
            : $"{Side(facts.Port, "to port")}; {Side(facts.Starboard, "to starboard")}";
    }
}
