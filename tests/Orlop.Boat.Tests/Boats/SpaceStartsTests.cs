using Orlop.Boat.Things;
using Orlop.Boat.Validation;
using Orlop.Boat.Values;
using Xunit;

namespace Orlop.Boat.Tests.Boats;

public sealed class SpaceStartsTests
{
    private static readonly Particulars Twelve = new() { Id = "particulars", LengthOverAllM = 12, BeamM = 4, DepthM = 2 };

    [Fact]
    public void For_Particulars_EveryBoxLiesInTheBoatAndIsAccepted()
    {
        IReadOnlyList<Space> starts = SpaceStarts.For(Of(Twelve));

        Assert.Contains(starts, space => space.Use == SpaceUse.Engine);
        Assert.Contains(starts, space => space.Use == SpaceUse.Dry);
        Assert.All(starts, space =>
        {
            Assert.True(space.From.XM >= 0 && space.To.XM <= 12 && space.From.YM >= -2 && space.To.YM <= 2 && space.From.ZM >= 0, space.Name);
            Assert.Equal(SpaceStarts.Note, space.Note);
        });
        Assert.Empty(BoatValidation.Check(Of([Twelve, .. starts])));
    }

    // A space that was begun may not bring a temperature with it: what rests on it is unknown until somebody gives one.
    [Fact]
    public void For_NoStart_BringsATemperature() => Assert.All(SpaceStarts.For(Of(Twelve)), space => Assert.True(space is { AmbientC: null, EngineRunningC: null, LeastAmbientC: null }, space.Name));

    [Fact]
    public void For_HullDrawn_GoesByIt()
    {
        Space deck = SpaceStarts.For(Of(Twelve, Box(2, 12, 3, 1.5))).Single(space => space.Use == SpaceUse.OpenDeck);

        Assert.Equal(new Place(2, -1.5, 1.5), deck.From);
        Assert.Equal(12, deck.To.XM);
        Assert.Equal(1.5, deck.To.YM);
    }

    [Fact]
    public void For_NoSizes_IsEmpty()
    {
        Assert.Empty(SpaceStarts.For(Of()));
        Assert.Empty(SpaceStarts.For(Of(Twelve with { DepthM = null })));
    }

    // A box: its size is that of its points.
    [Fact]
    public void HullSize_Box_IsThatOfItsPoints() => Assert.Equal(new HullSize(2, 10, 3, 1.5), HullSize.OfLines(Of(Twelve, Box(2, 12, 3, 1.5))));

    // Deck edge from 1 m aft to 2 m forward: 1.5 m halfway.
    [Fact]
    public void HullSize_Sheer_DepthIsThatHalfwayAlong()
    {
        HullLines lines = Box(0, 10, 3, 1);
        lines = lines with { Stations = [lines.Stations[0], lines.Stations[1] with { Points = [.. lines.Stations[1].Points.Select(point => point with { HeightM = point.HeightM * 2 })] }] };
        Assert.Equal(1.5, HullSize.OfLines(Of(lines))!.DepthM, 9);
    }

    private static HullLines Box(double aftM, double foreM, double breadthM, double depthM) => new() { Id = "hull-lines", Stations = [End("aft", aftM, breadthM / 2, depthM), End("fore", foreM, breadthM / 2, depthM)] };

    private static HullStation End(string name, double xM, double halfM, double depthM) => new() { Name = name, Points = [new StationPoint(xM, halfM, 0), new StationPoint(xM, halfM, depthM)] };

    private static BoatModel Of(params Thing[] things) => new() { Things = [.. things] };
}
