using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>No stud carries more rings than the practice allows. A bar is not one stud and is left out.</summary>
public sealed class RingsPerStudCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "rings-per-stud",
        "Not too many rings on one stud",
        "The number of ring and fork terminals and links on one terminal of a battery, switch or device against the practice's limit.",
        [LimitIds.RingsPerStudCount]);

    public IEnumerable<Finding> Run(ElectricsView view)
    {
        foreach (IGrouping<Terminal, StudRing> stud in view.Rings.All.Where(stud => view.Boat.Find(stud.Key.Part) is not Busbar))
        {
            int known = stud.Count(ring => ring.IsBolted);
            if (known > 0 || view.Practice?.Find(LimitIds.RingsPerStudCount) is not { } limit || stud.Count() > limit.Value)
            {
                yield return Judge(view, stud.Key, known, stud.Count());
            }
        }
    }

    private Finding Judge(ElectricsView view, Terminal stud, int count, int mostCount)
    {
        string title = $"{view.Boat.Find(stud.Part)?.Title ?? stud.Part}, {stud.Name}";
        if (view.Practice?.Find(LimitIds.RingsPerStudCount) is not { } limit)
        {
            return NoLimit(Description, stud.ToString(), null, title, LimitIds.RingsPerStudCount);
        }

        if (count <= limit.Value && mostCount > limit.Value)
        {
            return Unknown(Description, stud.ToString(), null, Sentence.Of($"{title}: {mostCount} conductors end there and how {mostCount - count} of them are made off is not known"), [new FindingInput(stud.Part, "fromEnd", IsMissing: true)]);
        }

        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = stud.ToString(),
            Verdict = count > limit.Value ? Verdict.Fails : Verdict.Holds,
            UseFraction = Verdicts.UseOf(count, limit.Value),
            Headline = Sentence.Of($"{title}: {count} {(count == 1 ? "terminal" : "terminals")} on one stud, at most {new Amount(limit.Value, "Count")} allowed"),
            Working = [Line(limit, "Terminals on one stud", "Count"), Use(count, limit.Value)],
            Inputs = [new FindingInput(stud.Part, "id")],
        };
    }
}
