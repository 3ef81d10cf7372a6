using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Findings;

namespace Orlop.Review.Electrics;

/// <summary>
/// A minus that counts as ungrounded because nothing that it is wired to is marked as bonded to the hull: it then wants a device of its own, which an owner
/// who knows it as the earthed side does not expect.
/// </summary>
internal static class UnbondedMinus
{
    /// <summary>The core leads to the minus of a battery or other DC source and to the plus of none.</summary>
    public static bool Is(ElectricsView view, WiringEdge core)
    {
        HashSet<string> seen = [core.A];
        Queue<string> queue = new(seen);
        while (queue.TryDequeue(out string? node))
        {
            foreach (WiringEdge edge in view.Wiring.At(node))
            {
                if (seen.Add(edge.Other(node)))
                {
                    queue.Enqueue(edge.Other(node));
                }
            }
        }

        PolePair[] giving = [.. view.Boat.All<Part>().Select(Poles.Giving).OfType<PolePair>().Where(poles => !poles.IsAc)];
        return giving.Any(poles => seen.Contains(poles.Minus)) && !giving.Any(poles => seen.Contains(poles.Plus)) && !seen.Any(view.Grounding.IsGrounded);
    }

    /// <summary>The finding with the reason and what to do about it.</summary>
    public static Finding Explain(Finding finding) => finding with
    {
        Headline = Sentence.Of($"{finding.Headline}. This minus counts as ungrounded, since nothing it is wired to is marked as bonded to the hull: mark its bar “Is bonded” if it is, or protect both poles"),
        Working =
        [
            .. finding.Working,
            new WorkingLine("Minus", "not bonded anywhere it is wired to, so it counts as ungrounded and needs a fuse or breaker as the plus does", null, "the wiring as drawn"),
            new WorkingLine("What to do", "if it is bonded to the hull, wire it to a minus bar and tick “Is bonded” there; if it is not, protect both poles", null, ""),
        ],
    };
}
