using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Hull.Measuring;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability;

/// <summary>
/// A centre of gravity that no boat of this hull has: of the whole boat, or of all the rest of her beside what was listed aboard, below the lowest point of her hull or above the highest of
/// hull, houses and things listed (our rule, no source). Nothing that rests on her weight holds.
/// </summary>
/// <param name="FromIds">The tests that tell her KG; the bare boat where none does.</param>
/// <param name="Field">What of the first of them to look at.</param>
/// <param name="Of">Whose centre, within a sentence.</param>
/// <param name="KgM">Its height over the base line.</param>
/// <param name="DeviationM">One standard deviation of it.</param>
/// <param name="BoundM">The height that it lies beyond.</param>
public sealed record ImpossibleCentre(ImmutableArray<string> FromIds, string Field, string Of, double KgM, double DeviationM, double BoundM)
{
    /// <summary>Asked where a rolling test puts G out of reach.</summary>
    public const string HalfRolls = "did you count half rolls? A roll is there and back";

    private const double BandFactor = 2;

    // Heights that are alike to a tenth of a millimetre are not told apart.
    private const double SmallM = 1e-4;

    /// <summary>Two standard deviations lie wholly out of reach.</summary>
    public bool IsSure => Math.Abs(KgM - BoundM) > BandFactor * DeviationM;

    /// <summary>"the centre of gravity of the whole boat lies 1.01 m ± 0.4 m below the lowest point of her hull".</summary>
    public Sentence Said => Sentence.Of($"the centre of gravity of {Of} lies {M(Math.Abs(KgM - BoundM))} ± {M(BandFactor * DeviationM)} {(KgM < BoundM ? "below the lowest point of her hull" : "above the highest of hull, houses and things listed")}");

    /// <summary>What is to look at.</summary>
    internal FindingInput Input => new(FromIds[0], Field);

    /// <summary>The numbers, as working.</summary>
    internal WorkingLine Line => new("KG out of reach", FormattableString.Invariant($"of {Of}, ± {BandFactor * DeviationM:0.###} m; {(KgM < BoundM ? "at least" : "at most")} {BoundM:0.###} m"), M(KgM), "our rule, no source");

    /// <summary>The centre of a boat that is out of reach: one that surely is first, then that of the whole boat. Null where all may be hers, or she has no hull.</summary>
    internal static ImpossibleCentre? Find(BoatModel boat, HullBodies bodies, BoatWeight weight)
    {
        if (weight.Total is not { } whole || bodies.Hull is not { } hull)
        {
            return null;
        }

        double lowest = hull.Lowest.ZM, highest = bodies.All.Select(body => body.Highest.ZM).Concat(weight.Aboard.Select(item => item.Place.ZM)).Max();
        BerthTest[] tests = [.. boat.All<BerthTest>().Where(test => test is RollingTest or Orlop.Boat.Things.InclinationTest && weight.Evidence.Any(piece => piece.Id == test.Id))];
        ImmutableArray<string> from = tests.Length > 0 ? [.. tests.Select(test => test.Id)] : [boat.All<BareBoat>().FirstOrDefault()?.Id ?? "bare-boat"];
        string field = tests.FirstOrDefault() switch { RollingTest => "runs", null => "kgM", _ => "readings" };
        WeightTotal rest = whole.With(weight.Aboard.Select(item => new WeightChange(item, null)));
        return new[] { ("the whole boat", whole), ("all the rest of her (hull, ballast, what nobody listed)", rest) }
            .Where(part => part.Item2.MassKg > BandFactor * part.Item2.MassDeviationKg)
            .Select(part => new ImpossibleCentre(from, field, part.Item1, part.Item2.Centre.ZM, part.Item2.KgDeviationM, part.Item2.Centre.ZM < lowest ? lowest : highest))
            .Where(found => found.KgM < lowest - SmallM || found.KgM > highest + SmallM)
            .OrderByDescending(found => found.IsSure).FirstOrDefault();
    }
}
