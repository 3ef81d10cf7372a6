using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using Orlop.Review.Stability;
using Xunit;

namespace Orlop.Review.Tests.Stability.Checks;

/// <summary>
/// A box 4 m wide floats 0.8 m deep, wall-sided until its chine comes out at tan φ = 0.4: what lies y off the middle and h over the water goes under at tan φ = h/y.
/// </summary>
public sealed class WellTests
{
    private const double HeightM = 1.0;
    private const double OverWaterM = HeightM - JudgedBox.DraughtM;

    // Only a point: the sides are taken to lie at the deck edge, 2 m off, and both floods are alike wherever the point is.
    [Theory]
    [InlineData(DeckKind.PartlyOpen, 0)]
    [InlineData(DeckKind.PartlyOpen, 0.8)]
    [InlineData(DeckKind.Closed, 0.8)]
    public void WellGivenAsAPoint_FloodsOverItsSidesAtTheDeckEdge(DeckKind deck, double y)
    {
        FloatingBoat afloat = Afloat(deck, Well(y));
        Assert.Equal(Deg(OverWaterM / 2), afloat.Starboard.Features.DownfloodingDeg!.Value, 1e-4);
        Assert.Equal(-Deg(OverWaterM / 2), afloat.Port.Features.DownfloodingDeg!.Value, 1e-4);
    }

    // The coaming stands higher than the deck edge: the sheer governs, as in an open boat, 1.2 m over the water and 2 m off; beyond the wall-sided range the two are compared.
    [Fact]
    public void HighWellGivenAsAPoint_FloodsWhereAnOpenBoatDoes()
    {
        FloatingBoat afloat = Afloat(DeckKind.PartlyOpen, Well(0, 2.3)), open = Afloat(DeckKind.Open);
        Assert.Equal(open.Starboard.Features.DownfloodingDeg!.Value, afloat.Starboard.Features.DownfloodingDeg!.Value, 1e-6);
        Assert.Equal(open.Port.Features.DownfloodingDeg!.Value, afloat.Port.Features.DownfloodingDeg!.Value, 1e-6);
    }

    [Fact]
    public void WellWithItsLengthAndBreadth_FloodsOverItsOwnSides()
    {
        FloatingBoat afloat = Afloat(DeckKind.PartlyOpen, Well(0) with { ClearLengthM = 2, ClearBreadthM = 1.6 });
        Assert.Equal(Deg(OverWaterM / 0.8), afloat.Starboard.Features.DownfloodingDeg!.Value, 1e-4);
        Assert.Equal(-Deg(OverWaterM / 0.8), afloat.Port.Features.DownfloodingDeg!.Value, 1e-4);
        Assert.Equal("well", afloat.Port.Features.DownfloodingOpening);
    }

    // A hatch 1 m wide with its middle 0.5 m to port: its outer side is 1 m off, its inner one on the centre line and stays dry to port.
    [Fact]
    public void HatchOffTheCentreLine_FloodsOverItsLowerSide()
    {
        FloatingBoat afloat = Afloat(DeckKind.Closed, new HullOpening { Id = "hatch", Use = OpeningUse.Hatch, Place = new Place(5, 0.5, HeightM), ClearLengthM = 1, ClearBreadthM = 1 });
        Assert.Equal(-Deg(OverWaterM / 1), afloat.Port.Features.DownfloodingDeg!.Value, 1e-4);
        Assert.True(afloat.Starboard.Features.DownfloodingDeg > 30);
    }

    // A door of 0.6 × 1.5 m on the centre line: a sill of 0.6 m, and no hole 1.5 m across. With one of the two told it runs that way: along, both sides of it lie on the centre line and flood only far over. A window counts by the greater.
    [Theory]
    [InlineData(OpeningUse.Door, 0.6, 1.5, 0.3)]
    [InlineData(OpeningUse.Door, 1.5, 0.6, 0.3)]
    [InlineData(OpeningUse.Door, 0, 0.8, 0.4)]
    [InlineData(OpeningUse.Window, 1.0, 0.4, 0.5)]
    [InlineData(OpeningUse.Door, 0.6, 0, 0)]
    public void DoorThatStands_FloodsOverItsSillAlone(OpeningUse use, double lengthM, double breadthM, double offM)
    {
        HullOpening door = new() { Id = "door", Use = use, Place = new Place(5, 0, HeightM), ClearLengthM = lengthM > 0 ? lengthM : null, ClearBreadthM = breadthM > 0 ? breadthM : null };
        Place[] sill = [.. OpeningCorners.Of(JudgedBox.Of(door), door).Select(corner => new Place(corner.Place.XM, corner.Place.YM, corner.Place.ZM))];

        Assert.Equal(offM, sill.Max(place => place.YM), 1e-12);
        Assert.Equal(-offM, sill.Min(place => place.YM), 1e-12);
        Assert.Equal(lengthM > 0 && breadthM > 0 ? offM : lengthM / 2, sill.Max(place => place.XM) - 5, 1e-12);
        Assert.Equal(lengthM > 0 && breadthM > 0, OpeningCorners.SillTaken(door)?.Contains("as its sill", StringComparison.Ordinal) == true);
    }

    // Trimmed by a chest forward, the corner that is lowest is a forward one: the freeboard finding has each opening once, by its lowest corner.
    [Fact]
    public void Freeboard_IsThatOfTheLowestCorner()
    {
        Finding finding = JudgedBox.Of(
            JudgedBox.Own(LimitIds.LeastFreeboardM, 0.01), JudgedBox.Gear("chest", 1000, 8, 0, 1.2), Well(0) with { ClearLengthM = 4, ClearBreadthM = 1 }).Only("freeboard");
        Assert.Contains("at (7, ", Assert.Single(finding.Working, line => line.What == "well").Expression, StringComparison.Ordinal);
    }

    private static HullOpening Well(double y, double z = HeightM) => new() { Id = "well", Use = OpeningUse.Well, Place = new Place(5, y, z) };

    private static FloatingBoat Afloat(DeckKind deck, params Thing[] more)
    {
        BoatModel boat = JudgedBox.Of(more);
        StabilityView view = boat.With(boat.Particulars! with { Deck = deck }).View();
        return view.FloatingIn(view.Conditions[0])!;
    }

    private static double Deg(double tangent) => Math.Atan(tangent) * 180 / Math.PI;
}
