using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views.Floating;
using Xunit;

namespace Orlop.Presentation.Tests.Views;

/// <summary>A hook below the deck edge is remarked on: the edge rises from 1 m aft to 2 m forward over 10 m, so it is 1.5 m at the middle.</summary>
public sealed class HookPlaceTests
{
    private static readonly BoatModel Boat = new()
    {
        Things = [new HullLines { Id = "hull-lines", Stations = [Station("aft", 0, 1), Station("fore", 10, 2)] }],
    };

    [Theory]
    [InlineData(DeadweightUse.Hung, 1.4, true)]
    [InlineData(DeadweightUse.Hung, 1.6, false)]
    [InlineData(DeadweightUse.Cargo, 1.4, false)]
    public void Remark_StandsForAHookBelowTheEdgeAlone(DeadweightUse use, double heightM, bool isRemarked)
    {
        string? remark = HookPlace.Remark(Boat, new Deadweight { Id = "load", Name = "Load", Use = use, MassKg = 80, Place = new Place(5, 1, heightM) }, DisplayUnits.Metric, CultureInfo.InvariantCulture);

        Assert.Equal(isRemarked, remark is not null);
        Assert.True(remark is null || remark.Contains("1.5", StringComparison.Ordinal), remark);
    }

    private static HullStation Station(string name, double xM, double deckM) => new() { Name = name, Points = [new StationPoint(xM, 0, 0), new StationPoint(xM, 1, deckM)] };
}
