using Orlop.Boat.Things;
using Orlop.Hull.Surfaces;
using Orlop.Presentation.Views.Hulls;
using Xunit;

namespace Orlop.Presentation.Tests.Views.Hulls;

public sealed class HullEditTests
{
    private static readonly HullLines Lines = HullEdit.Of(StartingForm.Create("hull", StartingShape.SingleChine, 10, 3, 1.5), null, 3);

    private static bool IsClosed(HullLines lines) => HullFacts.Of(lines, null, 1025).Bodies.Hull is not null;

    [Fact]
    public void AddPoint_IsHalfWayToTheNext()
    {
        HullLines added = HullEdit.AddPoint(Lines, new HullSpot(false, 5, 0));
        HullStation was = Lines.Stations[5], station = added.Stations[5];
        Assert.Equal(was.Points.Count + 1, station.Points.Count);
        Assert.Equal((was.Points[0].HalfBreadthM + was.Points[1].HalfBreadthM) / 2, station.Points[1].HalfBreadthM, 0.0006);
        Assert.Null(station.Points[1].Line);
        Assert.Equal(Lines, HullEdit.RemovePoint(added, new HullSpot(false, 5, 1)));
    }

    [Fact]
    public void AddStation_LiesOnTheSurface_AndIsFair()
    {
        HullLines added = HullEdit.AddStation(Lines, 4)!;
        Assert.Equal(Lines.Stations.Count + 1, added.Stations.Count);
        HullStation made = added.Stations[5];
        Assert.Equal(4.5, made.Points[0].XM, 0.001);
        Assert.Equal("chine", made.Points[1].Line);
        HullFacts facts = HullFacts.Of(added, 0.7, 1025);
        Assert.Empty(facts.Bodies.Problems);
        Assert.Empty(facts.Bodies.Doubts);
        // The form is the same but for what the curve makes of one more point.
        Assert.Equal(HullFacts.Of(Lines, 0.7, 1025).AtDraught!.VolumeM3, facts.AtDraught!.VolumeM3, 0.01);
        Assert.Equal(Lines, HullEdit.RemoveStation(added, 5));
    }

    [Fact]
    public void AddStation_WhereNoSurfaceCanBeLaid_GivesNone() =>
        Assert.Null(HullEdit.AddStation(HullEdit.WithPoint(Lines, new HullSpot(false, 3, 1), Lines.Stations[3].Points[0]), 4));

    [Fact]
    public void MoveStation_MovesAllItsPointsOnBothSides()
    {
        HullLines moved = HullEdit.MoveStation(HullEdit.SplitSides(Lines), 5, 5.2);
        Assert.All(moved.Stations[5].Points, point => Assert.Equal(5.2, point.XM, 1e-9));
        Assert.All(moved.StarboardStations[5].Points, point => Assert.Equal(5.2, point.XM, 1e-9));
        Assert.True(IsClosed(moved));
    }

    [Fact]
    public void SidesApart_AreCorrectedEachForItself_AndJoinedAsPort()
    {
        HullLines apart = HullEdit.SplitSides(Lines);
        HullSpot spot = new(true, 5, 1);
        HullLines mended = HullEdit.WithPoint(apart, spot, HullEdit.At(apart, spot)! with { HeightM = 0.5 });
        Assert.Equal(Lines.Stations, mended.Stations);
        Assert.Equal(0.5, HullEdit.At(mended, spot)!.HeightM);
        Assert.True(IsClosed(mended));
        Assert.Equal(Lines, HullEdit.JoinSides(mended));
    }

    [Fact]
    public void At_NoSuchPoint_IsNull() => Assert.Null(HullEdit.At(Lines, new HullSpot(false, 5, 9)));
}
