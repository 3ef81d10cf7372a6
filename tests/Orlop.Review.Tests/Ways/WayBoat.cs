using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using Orlop.Review.Ways;
using Xunit;

namespace Orlop.Review.Tests.Ways;

/// <summary>A boat of three dry spaces with a sump below, a fuse aft, lamps forward, and three ways from the one to the other: high, straight through a bulkhead without a hole, and low.</summary>
internal static class WayBoat
{
    public static BoatModel Make(WayPreferences? preferences = null)
    {
        BoatModel boat = SmallBoat.OneLamp().Without("cabin").With(
            Box("aft", SpaceUse.Dry, 0, 2, 0, 2), Box("mid", SpaceUse.Dry, 2, 6, 0, 2), Box("fore", SpaceUse.Dry, 6, 8, 0, 2), Box("sump", SpaceUse.Bilge, 0, 8, -0.5, 0.1),
            Line("high", WayKind.Lining, "mid", new(1, 0.8, 1.8), new(7, 0.8, 1.8)),
            Line("straight", WayKind.Lining, "mid", new(1.2, 0, 1), new(6.8, 0, 1)) with { Holes = [new WayHole { Where = "Middle bulkhead", Place = new Place(4, 0, 1), Guard = EdgeGuard.Grommet, IsMade = false }] },
            Line("drop-aft", WayKind.Lining, "aft", new(1, 0, 1), new(1, 0, 0.05)),
            Line("low", WayKind.Bilge, "sump", new(1, 0, 0.05), new(7, 0, 0.05)),
            Line("drop-fore", WayKind.Lining, "fore", new(7, 0, 0.05), new(7, 0, 1)),
            SmallBoat.Lamp("second", 5) with { Place = new Place(7, 0.1, 1), Space = "fore" },
            SmallBoat.LampCable("second-cable", "second") with { OuterDiameterMm = 9, Run = [] });
        boat = boat
            .Change<ElectricLoad>("lamp", lamp => lamp with { Place = new Place(7, 0, 1), Space = "fore" })
            .Change<Protection>("fuse", fuse => fuse with { Space = "aft" })
            .Change<BatteryBank>("bank", bank => bank with { Place = new Place(1, 0, 0.9), Space = "aft" })
            .Change<Cable>("lamp-cable", cable => cable with { OuterDiameterMm = 9, Run = [] });
        return preferences is null ? boat : boat.With(preferences);
    }

    public static WayPreferences Preferences => new() { Id = "way-preferences" };

    public static Way Line(string id, WayKind means, string? space, params Place[] points) => new() { Id = id, Means = means, Space = space, Points = [.. points] };

    public static WaysView View(this BoatModel boat)
    {
        Memo memo = new();
        return new WaysView(boat, Practice.Of(boat, memo), memo, TestContext.Current.CancellationToken);
    }

    public static CableRoutes Routes(this BoatModel boat, string cable = "lamp-cable") => RouteFinder.Find(boat.View(), boat.Find<Cable>(cable)!);

    public static Finding WayFinding(this BoatModel boat, string checkId, string subjectId) =>
        Assert.Single(WayFindings(boat), finding => finding.CheckId == checkId && finding.SubjectId == subjectId).Shown;

    public static IReadOnlyList<PairedFinding> WayFindings(this BoatModel boat) => new ReviewEngine([new WaysDiscipline()]).Review(boat, TestContext.Current.CancellationToken).Findings;

    /// <summary>The boat with the lamp's cable along ways.</summary>
    public static BoatModel RunAlong(this BoatModel boat, params string[] ways) =>
        boat.Change<Cable>("lamp-cable", cable => cable with { Run = ways.Select(way => new RunLeg { Way = way, LengthM = 2 }).ToValueList() });

    private static Space Box(string id, SpaceUse use, double aftM, double foreM, double lowM, double highM) =>
        new() { Id = id, Use = use, From = new Place(aftM, -1, lowM), To = new Place(foreM, 1, highM), AmbientC = 25 };
}
