using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Drawings.Svg;

namespace Orlop.Drawings.Boats;

/// <summary>From where the boat is seen: from starboard with the bow to the right, from above, or from aft at a cut.</summary>
internal enum ViewKind { Profile, Plan, Section }

/// <summary>Part of a plane that a view shows, in metres: to the right on the drawing and up.</summary>
internal sealed record Extent(double LeastAcrossM, double MostAcrossM, double LeastUpM, double MostUpM)
{
    internal double WidthM => MostAcrossM - LeastAcrossM;

    internal double HeightM => MostUpM - LeastUpM;

    internal Extent Grown(double byM) => new(LeastAcrossM - byM, MostAcrossM + byM, LeastUpM - byM, MostUpM + byM);
}

/// <summary>Puts places of the boat on the drawing, to scale.</summary>
internal sealed class BoatView(ViewKind kind, Extent extent, double pixelsPerM, Spot corner)
{
    private const double LeastSide = 5;

    internal ViewKind Kind => kind;

    internal Extent Extent => extent;

    internal double PixelsPerM => pixelsPerM;

    internal Box Frame => new(corner.X, corner.Y, extent.WidthM * pixelsPerM, extent.HeightM * pixelsPerM);

    internal double Across(double acrossM) => corner.X + ((acrossM - extent.LeastAcrossM) * pixelsPerM);

    internal double Up(double upM) => corner.Y + ((extent.MostUpM - upM) * pixelsPerM);

    internal Spot At(Place place) => new(Across(AcrossOf(kind, place.XM, place.YM)), Up(UpOf(kind, place.YM, place.ZM)));

    internal Spot At(OutlinePoint point, int side = 1) => At(new Place(point.XM, side * point.HalfBreadthM, point.HeightM));

    internal Spot At(double xM, double yM, double zM) => At(new Place(xM, yM, zM));

    /// <summary>The box around a thing; at least a few units wide so that it can be seen and hit.</summary>
    internal Box BoxOf(Place place, BoxSize? size)
    {
        double width = kind == ViewKind.Section ? size?.BreadthM ?? 0 : size?.LengthM ?? 0;
        double height = kind == ViewKind.Plan ? size?.BreadthM ?? 0 : size?.HeightM ?? 0;
        return Box.Around(At(place), Math.Max(width * pixelsPerM, LeastSide), Math.Max(height * pixelsPerM, LeastSide));
    }

    internal bool Shows(Place place)
    {
        double across = AcrossOf(kind, place.XM, place.YM), up = UpOf(kind, place.YM, place.ZM);
        return across >= extent.LeastAcrossM && across <= extent.MostAcrossM && up >= extent.LeastUpM && up <= extent.MostUpM;
    }

    internal static double AcrossOf(ViewKind kind, double xM, double yM) => kind == ViewKind.Section ? -yM : xM;

    internal static double UpOf(ViewKind kind, double yM, double zM) => kind == ViewKind.Plan ? yM : zM;
}
