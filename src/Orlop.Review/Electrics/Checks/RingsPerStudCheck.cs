using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>No stud carries more rings than the practice allows. A bar is not one stud and is left out.</summary>
public sealed class RingsPerStudCheck : IElectricsCheck
{
    public CheckDescription Description { get; } = new(
        "rings-per-stud",
        "Not too many rings on one stud",
        "The number of ring and fork terminals on one terminal of a battery, switch or device against the practice's limit.",
        [LimitIds.RingsPerStudCount]);

    public IEnumerable<Finding> Run(ElectricsView view)
    {
        var ends = view.Boat.All<Cable>().SelectMany(cable => cable.Cores).SelectMany(core => new[] { (core.From, End: core.FromEnd), (From: core.To, End: core.ToEnd) })
            .Where(end => end.End is { Means: TerminationMeans.Ring or TerminationMeans.Fork } && view.Boat.Find(end.From.Part) is not Busbar)
            .GroupBy(end => end.From);
        foreach (IGrouping<Terminal, (Terminal, Termination?)> stud in ends)
        {
            yield return Judge(view, stud.Key, stud.Count());
        }
    }

    private Finding Judge(ElectricsView view, Terminal stud, int count)
    {
        string title = $"{view.Boat.Find(stud.Part)?.Title ?? stud.Part}, {stud.Name}";
        if (view.Practice?.Find(LimitIds.RingsPerStudCount) is not { } limit)
        {
            return NoLimit(Description, stud.ToString(), null, title, LimitIds.RingsPerStudCount);
        }

        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = stud.ToString(),
            Verdict = count > limit.Value ? Verdict.Fails : Verdict.Holds,
            UseFraction = count / limit.Value,
            Headline = Sentence.Of($"{title}: {count} terminals on one stud, at most {new Amount(limit.Value, "Count")} allowed"),
            Working = [Line(limit, "Terminals on one stud", "Count"), Use(count, limit.Value)],
            Inputs = [new FindingInput(stud.Part, "id")],
        };
    }
}
