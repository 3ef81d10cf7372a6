using Orlop.Boat.Things;

namespace Orlop.Review.Stability;

/// <summary>f of T = f B/√GM for a boat: of her own latest rolling test that states one, else of the trade.</summary>
/// <param name="Value">f.</param>
/// <param name="Deviation">One standard deviation.</param>
/// <param name="Source">Where it is from.</param>
internal sealed record RollFactor(double Value, double Deviation, string Source)
{
    // A period timed to 0.5 %, and a GM of an inclining test known to 3 %, of which f takes half (common practice, no source).
    private const double BestFraction = 0.016;

    /// <summary>What f makes of the band of a period, which goes as f, and what would tell f better: rolls timed as she was when an inclining test told her GM.</summary>
    public BesideWeight Beside(double periodS) =>
        new("rolling factor", "a rolling test, timed where an inclining test tells her GM, that knows f", periodS / Value, Deviation, BestFraction * Value);

    public static RollFactor Of(StabilityView view) =>
        view.Boat.All<RollingTest>().Where(test => test.RollingFactor is not null).OrderBy(test => test.On ?? DateOnly.MinValue).LastOrDefault() is { RollingFactor: { } own } test
            ? new RollFactor(own.Value, own.PlusMinus ?? TestEvidence.RollingScatter, $"{test.Title}; scatter by Res. A.749(18) annex 3 where none is given")
            : new RollFactor(TestEvidence.RollingFactor, TestEvidence.RollingScatter, "Res. A.749(18) annex 3, deep-sea fishing boats");
}
