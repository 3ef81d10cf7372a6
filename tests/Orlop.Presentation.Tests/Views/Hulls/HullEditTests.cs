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

    // One point typed, or the station moved, leaves what is left of it the form's: it is measured once that is said of all of it.
    [Fact]
    public void StationOfAForm_IsMeasuredOnceThatIsSaidOfAllOfIt()
    {
        HullLines form = new StartingHull(Orlop.Presentation.Quantities.DisplayUnits.Metric, System.Globalization.CultureInfo.InvariantCulture) { Length = "10 m", Beam = "3 m", Depth = "1.5 m" }.Make(null)!;
        HullSpot spot = new(false, 5, 1);
        StationPoint point = HullEdit.At(form, spot)!;
        StationOrigin? Origin(HullLines lines) => lines.Stations[5].Origin;

        Assert.All(form.Stations, station => Assert.Equal(StationOrigin.Form, station.Origin));
        Assert.Equal(StationOrigin.Form, Origin(HullEdit.WithPoint(form, spot, point with { HeightM = point.HeightM + 0.01 })));
        Assert.Equal(StationOrigin.Form, Origin(HullEdit.MoveStation(form, 5, 5.2)));
        Assert.Equal(StationOrigin.Measured, Origin(HullEdit.Measured(form, 5)));
        Assert.Equal(StationOrigin.Measured, Origin(HullEdit.WithPoint(HullEdit.Measured(form, 5), spot, point with { HeightM = point.HeightM + 0.01 })));
        Assert.Equal((true, false), (HullWords.HowToMeasure(StationOrigin.Form) is not null, HullWords.HowToMeasure(StationOrigin.Measured) is not null));
        Assert.Equal(StationOrigin.Form, Origin(HullEdit.AddPoint(form, spot)));
        Assert.Equal(StationOrigin.Between, Origin(HullEdit.AddStation(form, 4)!));
        Assert.Equal(form.Stations.Count - 1, UnmeasuredStations.CountOf(HullEdit.Measured(form, 5)));
    }

    // Copied out as it is and pasted back, a form is still a form, and with one point changed in the table too; a station of which every point is another is somebody's.
    [Fact]
    public void PastedTable_IsMeasured_ButForStationsOfWhichAPointComesBackAsItStood()
    {
        HullLines form = HullEdit.Of(StartingForm.Create("hull", StartingShape.SingleChine, 10, 3, 1.5), null, 3, StationOrigin.Form);
        HullSpot spot = new(false, 5, 1);
        string Table(HullLines lines) => OffsetTable.Write(Orlop.Review.Stability.HullBodies.FormOf(lines));
        string table = Table(HullEdit.WithPoint(form, spot, HullEdit.At(form, spot)! with { HeightM = 0.5 }));

        Assert.Equal(form.Stations.Count, UnmeasuredStations.CountOf(OffsetsPaste.Read(table, form).Lines!));
        Assert.Equal(form.Stations.Count - 1, UnmeasuredStations.CountOf(OffsetsPaste.Read(Table(HullEdit.MoveStation(form, 5, 5.2)), form).Lines!));
        Assert.Equal(0, UnmeasuredStations.CountOf(OffsetsPaste.Read(table, null).Lines!));
    }

    [Fact]
    public void At_NoSuchPoint_IsNull() => Assert.Null(HullEdit.At(Lines, new HullSpot(false, 5, 9)));
}
