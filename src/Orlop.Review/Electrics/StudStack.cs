using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Networks;

namespace Orlop.Review.Electrics;

/// <summary>A ring in its stack.</summary>
/// <param name="Ring">The ring.</param>
/// <param name="CurrentA">The greatest current through it, running or starting, in any condition; null where that cannot be told.</param>
public sealed record StackedRing(StudRing Ring, double? CurrentA);

/// <summary>What belongs on one stud, from the face outward: links, then rings by falling current, so that the least metal carries the most.</summary>
/// <param name="At">The terminal.</param>
/// <param name="Rings">From the face outward, as they should lie.</param>
/// <param name="Missing">What is missing for the currents.</param>
public sealed record StudStack(Terminal At, ImmutableArray<StackedRing> Rings, ImmutableArray<FindingInput> Missing)
{
    // Currents as near as this are alike, and either may lie below.
    private const double AlikeFraction = 0.1;
    private const double AlikeA = 1;

    /// <summary>The first two of which the farther carries more, as they lie; null where none does. Two at one place are no order.</summary>
    public (StackedRing Nearer, StackedRing Farther)? Wrong
    {
        get
        {
            StackedRing[] placed = [.. Rings.Where(each => each.CurrentA is not null && each.Ring.End?.FromFaceCount is not null).OrderBy(each => each.Ring.End!.FromFaceCount)];
            for (int i = 0; i < placed.Length; i++)
            {
                for (int k = i + 1; k < placed.Length; k++)
                {
                    if (placed[k].Ring.End!.FromFaceCount > placed[i].Ring.End!.FromFaceCount && placed[k].CurrentA > (placed[i].CurrentA * (1 + AlikeFraction)) + AlikeA)
                    {
                        return (placed[i], placed[k]);
                    }
                }
            }

            return null;
        }
    }

    /// <summary>The stack of a terminal; where a current cannot be told, thicker conductors count as carrying more.</summary>
    public static StudStack Of(ElectricsView view, Terminal at)
    {
        ArgumentNullException.ThrowIfNull(view);
        StudRing[] rings = [.. view.Rings.At(at).Where(ring => ring.IsBolted)];
        ImmutableArray<FindingInput> missing = rings.Length < 2 ? [] : [.. rings.SelectMany(ring => view.Conditions.SelectMany(condition => MissingInputs.OfCurrent(view, condition, ring.ElementId))).Distinct()];
        return new StudStack(at,
            [.. rings.Select(ring => new StackedRing(ring, GreatestA(view, ring.ElementId))).OrderByDescending(each => each.Ring.Core is null).ThenByDescending(each => each.CurrentA ?? 0).ThenByDescending(each => (each.Ring.Owner as Cable)?.AreaMm2.Value ?? 0)],
            missing);
    }

    private static double? GreatestA(ElectricsView view, string elementId)
    {
        double? most = null;
        foreach (Condition condition in view.Conditions)
        {
            NetworkCase[] cases =
            [
                new(condition.Id, ChargeCase.Normal), new(condition.Id, ChargeCase.Lowest),
                .. view.PathsIn(condition).TakersBehind(elementId).Select(view.Boat.Find<ElectricLoad>).OfType<ElectricLoad>().Where(load => LoadElements.HasStart(load) && LoadElements.IsOnIn(load, condition.Id))
                    .Select(load => new NetworkCase(condition.Id, ChargeCase.Normal, load.Id)),
            ];
            foreach (NetworkCase each in cases)
            {
                SolvedNetwork solved = view.Solve(each);
                if (solved.GroupOf(elementId) is not null)
                {
                    if (solved.BranchA(elementId) is not { } current)
                    {
                        return null;
                    }

                    most = Math.Max(most ?? 0, Math.Abs(current));
                }
            }
        }

        return most;
    }
}
