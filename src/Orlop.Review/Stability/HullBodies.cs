using System.Collections.Concurrent;
using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Surfaces;

namespace Orlop.Review.Stability;

/// <summary>What holds the boat up: the hull to its deck, and the deckhouses that keep water out.</summary>
/// <param name="Hull">The hull; null without lines, or where they make no closed surface.</param>
/// <param name="Houses">Deckhouses that count.</param>
/// <param name="Problems">What is wrong with the lines; empty when nothing is, or when there are none.</param>
/// <param name="Doubts">Measured points that stand off the run of their neighbours.</param>
public sealed record HullBodies(TriangleMesh? Hull, ImmutableArray<TriangleMesh> Houses, ImmutableArray<FormProblem> Problems, ImmutableArray<FormDoubt> Doubts)
{
    private readonly ConcurrentDictionary<(string Title, Place From, Place To), TriangleMesh?> _cut = [];

    /// <summary>A tank's inside as a closed body: its box, or what of the box lies inside the hull where the hull is its side. Null where nothing of it does, or where that cannot be told.</summary>
    public TriangleMesh? ShapeOf(Tank tank)
    {
        ArgumentNullException.ThrowIfNull(tank);
        Point3 low = WeightLedger.At(tank.From), high = WeightLedger.At(tank.To);
        return !tank.IsHullSided ? Solids.Box(low, high)
            : Hull is null ? null
            : _cut.GetOrAdd((tank.Title, tank.From, tank.To), key => BoxCut.Calculate(key.Title, Hull, low, high).Body);
    }

    /// <summary>All of them; empty without a hull.</summary>
    public ImmutableArray<TriangleMesh> All => Hull is null ? [] : [Hull, .. Houses];

    /// <summary>The bodies of a boat.</summary>
    public static HullBodies Of(BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        return boat.All<HullLines>().FirstOrDefault() is { Stations.Count: > 0 } lines ? Of(lines) : new HullBodies(null, [], [], []);
    }

    /// <summary>The bodies that lines make.</summary>
    public static HullBodies Of(HullLines lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        HullForm form = FormOf(lines);
        HullSurfaceResult surface = HullSurface.Build(form);
        return new HullBodies(
            surface.Surface,
            [.. lines.TightHouses.Select(House)],
            surface.Problems,
            surface.Surface is null ? [] : FormFairness.Find(form));
    }

    /// <summary>The lines as the engine takes them.</summary>
    public static HullForm FormOf(HullLines lines) => new()
    {
        Id = lines.Title,
        Sections = [.. lines.Stations.Select(Section)],
        StarboardSections = [.. lines.StarboardStations.Select(Section)],
    };

    private static HullSection Section(HullStation station) => new()
    {
        Id = station.Name,
        IsSharp = station.IsSharp,
        Points = [.. station.Points.Select(point => new SectionPoint(point.XM, point.HalfBreadthM, point.HeightM, point.Line))],
    };

    // Six faces; the sloping front and back of the roof make it a prism of the side view.
    private static TriangleMesh House(Deckhouse house)
    {
        TriangleMesh box = Solids.Box(new Point3(0, -house.HalfBreadthM, 0), new Point3(1, house.HalfBreadthM, 1));
        return box.Moved(corner =>
        {
            double aft = house.AftXM + (corner.ZM * (house.RoofAftXM - house.AftXM)), fore = house.ForeXM + (corner.ZM * (house.RoofForeXM - house.ForeXM));
            return new Point3(aft + (corner.XM * (fore - aft)), corner.YM, house.FootM + (corner.ZM * (house.RoofM - house.FootM)));
        });
    }
}
