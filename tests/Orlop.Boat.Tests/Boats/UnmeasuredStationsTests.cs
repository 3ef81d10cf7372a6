using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Xunit;

namespace Orlop.Boat.Tests.Boats;

public sealed class UnmeasuredStationsTests
{
    private const StationOrigin Form = StationOrigin.Form, Between = StationOrigin.Between, Measured = StationOrigin.Measured;

    public static TheoryData<StationOrigin?[], string?> Told { get; } = new()
    {
        { [Form, Form, Measured], "2 of 3 stations are the form's, not measured" },
        { [Measured, Between, Measured], "1 of 3 stations is laid between others, not measured" },
        { [Form, Between, Measured], "2 of 3 stations are the form's or laid between others, not measured" },
        { [Measured, Measured, Measured], null },
        { [null, null, null], null },
        { [null, Form, null], "1 of 3 stations is the form's, not measured" },
    };

    [Theory, MemberData(nameof(Told))]
    public void Of_CountsWhatNobodyMeasured(StationOrigin?[] origins, string? said) => Assert.Equal(said, UnmeasuredStations.Of(Lines(origins)));

    [Fact]
    public void Of_TwoSides_CountsAStationOnce() =>
        Assert.Equal("1 of 2 stations is the form's, not measured", UnmeasuredStations.Of(Lines([Measured, Measured]) with { StarboardStations = Lines([Form, Measured]).Stations }));

    [Fact]
    public void Of_NoLines_SaysNothing() => Assert.Null(UnmeasuredStations.Of(null));

    // An older file has no such field.
    [Fact]
    public void File_KeepsIt_AndReadsWithoutItAsNotTold()
    {
        string json = BoatJson.Write(new BoatModel { Things = [Lines([Form, null])] });
        HullLines read = BoatJson.Read(json).Boat!.All<HullLines>().Single();

        Assert.Equal([Form, null], read.Stations.Select(station => station.Origin));
        Assert.Single(json.Split("\"origin\"").Skip(1));
    }

    private static HullLines Lines(StationOrigin?[] origins) => new()
    {
        Id = "hull-lines",
        Stations = [.. origins.Select((origin, index) => new HullStation { Name = $"station {index}", Origin = origin, Points = [new StationPoint(index, 1, 0), new StationPoint(index, 1, 1)] })],
    };
}
