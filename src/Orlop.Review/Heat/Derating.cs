using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Review.Networks;

namespace Orlop.Review.Heat;

/// <summary>What of its rating a part carries in the air where it stands.</summary>
/// <param name="ShareFraction">1 where its owner gave no temperatures, or it is cool enough; 0 beyond the greatest it may stand in.</param>
/// <param name="AmbientC">Air around it; null where that cannot be told or does not matter.</param>
/// <param name="Missing">What is missing to tell it.</param>
/// <param name="Working">How it was found.</param>
internal sealed record Derating(double ShareFraction, double? AmbientC, ImmutableArray<FindingInput> Missing, ImmutableArray<WorkingLine> Working)
{
    private static readonly Derating None = new(1, null, [], []);

    public static Derating Of(ElectricsView view, Part part, Condition condition)
    {
        if (part.FullRatingC is null && part.MostAmbientC is null)
        {
            return None;
        }

        if (part.Space is null || view.Boat.Find<Space>(part.Space) is not { } space)
        {
            return None with { Missing = [new FindingInput(part.Id, "space", IsMissing: true)] };
        }

        Surroundings around = view.Air.Of(space, condition);
        return around.AmbientC is { } ambient ? Of(part, space, ambient) : None with { Missing = around.Missing };
    }

    /// <summary>In air of a temperature.</summary>
    public static Derating Of(Part part, Space space, double ambientC)
    {
        WorkingLine air = new("Air around it", space.Title, new Amount(ambientC, "C"), space.IsReckoned == true ? "reckoned, everything on" : "as typed");
        if (part.MostAmbientC is { } most && ambientC > most.Value)
        {
            return new Derating(0, ambientC, [], [air, new WorkingLine("May stand in", "nothing is carried beyond", new Amount(most.Value, "C"), "as typed")]);
        }

        if (part.FullRatingC is not { } full || ambientC <= full.Value)
        {
            return new Derating(1, ambientC, [], []);
        }

        if (part.LostPerKFraction is not { } lost)
        {
            return new Derating(1, ambientC, [new FindingInput(part.Id, "lostPerKFraction", IsMissing: true)], [air]);
        }

        double share = Math.Max(0, 1 - (lost.Value * (ambientC - full.Value)));
        return new Derating(share, ambientC, [],
        [
            air,
            new WorkingLine("Of its rating there", Formula.Of("1 − {0} × ({1} − {2})", v => Math.Max(0, 1 - (v[0] * (v[1] - v[2]))), lost.Value, ambientC, full.Value), FindingLines.Fraction(share), "as typed"),
        ]);
    }
}
