using Orlop.Boat.Things;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Ways.Checks;

/// <summary>Direct and alternating current do not lie together.</summary>
public sealed class ApartFromAcCheck : ICheck<WaysView>
{
    private const string Source = "French order of 23 November 1987, Division 240, 240-2.35; ISO 10133, 7.8";

    public CheckDescription Description { get; } = new(
        "apart-from-ac",
        "Direct and alternating current lie apart",
        "For each way with cables of both kinds: it is divided. A way for one kind alone holds no cable of the other.",
        []);

    public IEnumerable<Finding> Run(WaysView view)
    {
        foreach (Way way in view.Ways)
        {
            Cable[] ac = [.. view.CablesIn(way).Where(cable => view.IsAc(cable) == true)], dc = [.. view.CablesIn(way).Where(cable => view.IsAc(cable) == false)];
            if ((ac.Length > 0 && dc.Length > 0) || (way.Share == WayShare.DcOnly && ac.Length > 0) || (way.Share == WayShare.AcOnly && dc.Length > 0))
            {
                yield return Judge(way, ac, dc);
            }
        }
    }

    private Finding Judge(Way way, Cable[] ac, Cable[] dc)
    {
        if (way.Share is null)
        {
            return Unknown(Description, way.Id, null, Sentence.Of($"{way.Title} has {Names(ac)} beside {dc.Length} of direct current, and nobody said whether a divider stands between"), [new FindingInput(way.Id, "share", IsMissing: true)]) with { Caution = Cautions.MainsVoltage };
        }

        bool isDivided = way.Share == WayShare.Divided;
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = way.Id,
            Verdict = isDivided ? Verdict.Holds : Verdict.Fails,
            Headline = isDivided
                ? Sentence.Of($"{way.Title}: {Names(ac)} and {dc.Length} of direct current are on their sides of a divider")
                : way.Share switch
                {
                    WayShare.DcOnly => Sentence.Of($"{way.Title} is for direct current, and {Names(ac)} is in it"),
                    WayShare.AcOnly => Sentence.Of($"{way.Title} is for alternating current, and {Names(dc)} is in it"),
                    _ => Sentence.Of($"{way.Title}: {Names(ac)} lies with {dc.Length} of direct current, and nothing divides them"),
                },
            Working = [new WorkingLine("Alternating current", Names(ac), null, "the wiring as drawn"), new WorkingLine("Direct current", Names(dc), null, "the wiring as drawn"), new WorkingLine("What may share it", way.Share.ToString()!, null, Source)],
            Inputs = [new FindingInput(way.Id, "share"), .. ac.Concat(dc).Select(cable => new FindingInput(cable.Id, "run"))],
            Caution = Cautions.MainsVoltage,
        };
    }

    private static string Names(Cable[] cables) => cables.Length == 0 ? "none" : string.Join(", ", cables.Select(cable => cable.Title));
}
