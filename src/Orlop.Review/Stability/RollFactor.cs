using Orlop.Boat.Things;

namespace Orlop.Review.Stability;

/// <summary>f of T = f B/√GM for a boat: of her own latest rolling test that states one, else of the trade.</summary>
/// <param name="Value">f.</param>
/// <param name="Deviation">One standard deviation.</param>
/// <param name="Source">Where it is from.</param>
internal sealed record RollFactor(double Value, double Deviation, string Source)
{
    public static RollFactor Of(StabilityView view) =>
        view.Boat.All<RollingTest>().Where(test => test.RollingFactor is not null).OrderBy(test => test.On ?? DateOnly.MinValue).LastOrDefault() is { RollingFactor: { } own } test
            ? new RollFactor(own.Value, own.PlusMinus ?? TestEvidence.RollingScatter, $"{test.Title}; scatter by Res. A.749(18) annex 3 where none is given")
            : new RollFactor(TestEvidence.RollingFactor, TestEvidence.RollingScatter, "Res. A.749(18) annex 3, deep-sea fishing boats");
}
