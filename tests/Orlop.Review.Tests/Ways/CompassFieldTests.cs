using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Electrics.Fields;
using Orlop.Review.Findings;
using Orlop.Review.Ways;
using Xunit;

namespace Orlop.Review.Tests.Ways;

public sealed class CompassFieldTests
{
    private static readonly Compass Compass = new() { Id = "compass", Place = new Place(4, 0.3, 1.4), EarthUT = 15, MostDeviationDeg = 3 };

    // Plus along the high way, minus straight back: one loop, whose corners are written down here by hand.
    private static readonly BoatModel Loop = WayBoat.Make().Without("second-cable").Without("second").With(
        Compass,
        Single("lamp-cable", "plus", "fuse.out", "lamp.+", "high"),
        Single("minus-cable", "minus", "minus.bar", "lamp.-", "straight"));

    [Fact]
    public void Field_OfALoop_IsThatOfItsCorners()
    {
        FieldPoint[] corners = [new(1, 0, 0.9), new(1, 0, 1), new(1, 0.8, 1.8), new(7, 0.8, 1.8), new(7, 0, 1), new(6.8, 0, 1), new(1.2, 0, 1), new(1, 0.1, 1), new(1, 0, 0.9)];
        double expected = 5 * LineField.OfLineUT(corners, new FieldPoint(4, 0.3, 1.4)).HorizontalUT;
        CompassField field = Assert.Single(CompassField.Of(Loop.View(), Compass));

        Assert.Equal(expected, field.LoopsUT, 1e-6 * expected);
        Assert.Equal(0, field.PairsUT);
        Assert.Equal(Math.Asin(expected / 15) * 180 / Math.PI, field.DeviationDeg!.Value, 1e-4);
    }

    [Fact]
    public void Field_CoresBesideEachOther_IsAThousandthOfTheLoop_AndTwistedLessStill()
    {
        BoatModel straight = WayBoat.Make().Without("second-cable").Without("second").With(Compass).RunAlong("high");
        CompassField wide = Field(straight, cable => cable with { CoreSpacingMm = 12 }), narrow = Field(straight, cable => cable with { CoreSpacingMm = 6 });
        CompassField twisted = Field(straight, cable => cable with { CoreSpacingMm = 12, TwistPitchMm = 80 });

        Assert.Equal(2, wide.PairsUT / narrow.PairsUT, 0.02);
        Assert.True(twisted.PairsUT < wide.PairsUT / 3, $"{twisted.PairsUT} against {wide.PairsUT}");
        Assert.True(wide.PairsUT < Assert.Single(CompassField.Of(Loop.View(), Compass)).LoopsUT / 10);
    }

    [Fact]
    public void Field_FurtherOff_IsWeaker()
    {
        double[] sizes = [.. new[] { 0.5, 1, 2, 4 }.Select(farM => CompassField.Of(Loop.View(), Compass with { Place = new Place(4, 0.8 + farM, 1.8 + farM) }).Single().OwnUT!.Value)];
        Assert.Equal(sizes.OrderDescending(), sizes);
    }

    [Theory]
    [InlineData(60, Verdict.Holds)]
    [InlineData(0.01, Verdict.Fails)]
    public void Check_AgainstWhatTheOwnerBears(double mostDeg, Verdict verdict) =>
        Assert.Equal(verdict, Loop.Change<Compass>("compass", compass => compass with { MostDeviationDeg = Math.Clamp(mostDeg, 0.01, 45) }).WayFinding("compass-field", "compass").Verdict);

    [Fact]
    public void Check_MissingInput_IsUnknown_AndNamed()
    {
        Loop.Change<Compass>("compass", compass => compass with { EarthUT = null }).WayFinding("compass-field", "compass").IsUnknownFor("compass", "earthUT");
        Loop.Change<Compass>("compass", compass => compass with { MostDeviationDeg = null }).WayFinding("compass-field", "compass").IsUnknownFor("compass", "mostDeviationDeg");
        Loop.Change<Compass>("compass", compass => compass with { Place = null }).WayFinding("compass-field", "compass").IsUnknownFor("compass", "place");
        Loop.Change<ElectricLoad>("lamp", lamp => lamp with { Place = null }).WayFinding("compass-field", "compass").IsUnknownFor("lamp", "place");
        Loop.Change<ElectricLoad>("lamp", lamp => lamp with { RunningA = null }).WayFinding("compass-field", "compass").IsUnknownFor("lamp", "runningA");
        WayBoat.Make().With(Compass).Change<Cable>("lamp-cable", cable => cable with { OuterDiameterMm = null }).WayFinding("compass-field", "compass").IsUnknownFor("lamp-cable", "coreSpacingMm");
    }

    [Fact]
    public void Check_OnARunItself_IsUnknown_AndThePlaceIsInTheWay()
    {
        Finding finding = Loop.Change<Compass>("compass", compass => compass with { Place = new Place(4, 0.8, 1.8) }).WayFinding("compass-field", "compass");
        Assert.Equal(Verdict.Unknown, finding.Verdict);
        Assert.Contains(finding.Inputs, input => (input.ThingId, input.Field, input.IsMissing) == ("compass", "place", false));
    }

    [Fact]
    public void Check_NotSteeredByItThen_IsNotJudged() =>
        Assert.DoesNotContain(Loop.With(new Condition { Id = "other" }).Change<Compass>("compass", compass => compass with { SteeredIn = ["other"] }).WayFindings(), finding => finding.CheckId == "compass-field" && finding.After!.Worst.ConditionId == "in-use");

    private static CompassField Field(BoatModel boat, Func<Cable, Cable> change) => Assert.Single(CompassField.Of(boat.Change("lamp-cable", change).View(), Compass));

    private static Cable Single(string id, string core, string from, string to, string way) => new()
    {
        Id = id,
        AreaMm2 = 2.5,
        InsulationC = 90,
        LengthM = 8,
        Cores = [SmallBoat.Core(core, from, to)],
        Run = [new RunLeg { Way = way, LengthM = 8 }],
    };
}
