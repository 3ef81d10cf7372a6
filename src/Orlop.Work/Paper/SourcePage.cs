using Orlop.Review.Readings;
using Orlop.Work.Steps;
using Orlop.Work.Tables;

namespace Orlop.Work.Paper;

/// <summary>Where the numbers of a pack come from.</summary>
internal static class SourcePage
{
    public static void Write(HtmlText html, WorkPack pack)
    {
        html.Open("section", ("class", "follows"), ("id", "sources")).Put("h2", "Where the numbers come from").Open("ul", ("class", "small"));
        IEnumerable<string> lines =
        [
            $"Allowances for cutting, supports and spares: {Allowances.Source}.",
            $"Strip lengths: {EndTables.StripSource}.",
            .. pack.Ends.Select(end => end.Pull?.Source).OfType<string>().Distinct().Select(source => $"Test pull of crimps: {source}."),
            .. pack.Ends.Select(end => end.Torque?.Source).OfType<string>().Distinct().Select(source => $"Torque: {source}."),
            FormattableString.Invariant($"Dead up to {IsolationSteps.DeadV} V, insulation at least {FreeEndTests.LeastInsulationOhm / 1000:0} kΩ, a core joined (which says nothing of its crimps) below {FreeEndTests.JoinedBelowOhm} Ω: common practice, no source."),
            "Isolation: the least unwelcome set of openings that leaves no source reaching the work, with every switch taken as closed. It knows only what the boat's file knows.",
            FormattableString.Invariant($"Ranges of readings: the circuit solved again with joints, lengths, temperature, charge, battery voltage and loads at the ends of what is known of them, combined as the root of the sum of squares; the meter taken as ±{MeterAccuracy.VoltageFraction:0.0 %} and one digit, a clamp as ±{MeterAccuracy.ClampFraction:0 %} and {MeterAccuracy.ClampA} A."),
        ];
        foreach (string line in lines)
        {
            html.Put("li", line);
        }

        html.Close().Close();
    }
}
