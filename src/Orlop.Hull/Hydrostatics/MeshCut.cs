using System.Collections.Immutable;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Working;

namespace Orlop.Hull.Hydrostatics;

/// <summary>One straight piece of a cut.</summary>
public readonly record struct CutPiece(Point3 From, Point3 To);

/// <summary>The line in which a plane cuts a surface, for drawing: sections, profile, waterlines at any attitude. Pieces of a closed surface join end to end into closed lines.</summary>
public static class MeshCut
{
    /// <summary>Square across the boat at x.</summary>
    public static ImmutableArray<CutPiece> AcrossAt(TriangleMesh mesh, double xM) => Cut(mesh, new Point3(1, 0, 0), Guard.InRange(xM, -1000, 1000, "m", "section"));

    /// <summary>Fore and aft, upright, at y from the centre line; the profile at 0.</summary>
    public static ImmutableArray<CutPiece> AlongAt(TriangleMesh mesh, double yM) => Cut(mesh, new Point3(0, 1, 0), Guard.InRange(yM, -1000, 1000, "m", "buttock"));

    /// <summary>The waterline at an attitude, in the boat's axes.</summary>
    public static ImmutableArray<CutPiece> Waterline(TriangleMesh mesh, Attitude attitude)
    {
        var plane = WaterPlane.Of(attitude.Checked("attitude"));
        return Cut(mesh, plane.Up, plane.Draught);
    }

    // A corner on the plane counts to one side, as in Immersion, so that lines close.
    private static ImmutableArray<CutPiece> Cut(TriangleMesh mesh, Point3 normal, double offset)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        mesh.Closed("cut");
        var pieces = ImmutableArray.CreateBuilder<CutPiece>();
        foreach (var triangle in mesh.Triangles)
        {
            var (a, b, c) = (mesh.Corners[triangle.A], mesh.Corners[triangle.B], mesh.Corners[triangle.C]);
            Point3? enters = null, leaves = null;
            Edge(a, b);
            Edge(b, c);
            Edge(c, a);
            if (enters is { } from && leaves is { } to && from != to)
            {
                pieces.Add(new CutPiece(from, to));
            }

            void Edge(Point3 from, Point3 to)
            {
                var (heightFrom, heightTo) = (normal.Dot(from) - offset, normal.Dot(to) - offset);
                if (heightFrom < 0 && heightTo >= 0)
                {
                    leaves = from + (heightFrom / (heightFrom - heightTo) * (to - from));
                }
                else if (heightFrom >= 0 && heightTo < 0)
                {
                    enters = to + (heightTo / (heightTo - heightFrom) * (from - to));
                }
            }
        }

        return pieces.ToImmutable();
    }
}
