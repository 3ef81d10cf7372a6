using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Hydrostatics;

/// <summary>
/// What lies below a plane, exactly (divergence theorem over the clipped triangles). Volume and its first moment are summed as tetrahedra from a point on the plane, so the
/// cut surface adds nothing; the cut surface itself is summed along its edge (Green). A corner on the plane counts as dry, and the crossing of an edge is computed from its
/// wet to its dry end in both triangles that share it, so a plane through corners, edges or faces leaves no gap.
/// </summary>
internal struct Immersion
{
    private Point3 _foot;
    private double _sixfoldVolume;
    private Point3 _momentTimes24;
    private double _twofoldArea;
    private double _sixfoldMomentAlong;
    private double _sixfoldMomentAcross;
    private double _secondAlongTimes12;
    private double _secondAcrossTimes12;
    private double _productTimes24;

    public readonly double Volume => _sixfoldVolume / 6;

    /// <summary>First moment of the volume about the origin of the axes.</summary>
    public readonly Point3 Moment => ((1.0 / 24) * _momentTimes24) + (Volume * _foot);

    public readonly double Area => _twofoldArea / 2;

    /// <summary>Parts of the surface that lie wholly to one side are taken whole, as summed beforehand; triangles are looked at only near the water.</summary>
    public static Immersion Below(in WaterPlane plane, TriangleMesh mesh)
    {
        var tree = mesh.Tree;
        var footFromCentre = -plane.HeightM(tree.Centre) * plane.Up;
        var sum = new Immersion { _foot = tree.Centre + footFromCentre };
        var wet = default(SurfaceSums);
        var nodes = tree.Nodes;
        var margin = tree.MarginM(plane);
        for (var at = 0; at < nodes.Length;)
        {
            ref readonly var node = ref nodes[at];
            var (middle, reach) = node.Heights(plane);
            if (middle - reach > margin)
            {
                at = node.After;
            }
            else if (middle + reach < -margin)
            {
                wet.Add(node.Sums);
                at = node.After;
            }
            else
            {
                sum.AddTriangles(plane, tree.CornersOf(node));
                at++;
            }
        }

        sum._sixfoldVolume += wet.SixfoldVolume(footFromCentre);
        sum._momentTimes24 += wet.MomentTimes24(footFromCentre);
        return sum;
    }

    /// <summary>Area, first moments along and across, second moments and product of the cut surface about the origin of the axes.</summary>
    public readonly PlaneMoments CutSurface(in WaterPlane plane)
    {
        var (along, across) = (plane.Along.Dot(_foot), plane.Across.Dot(_foot));
        var (area, first, firstAcross) = (Area, _sixfoldMomentAlong / 6, _sixfoldMomentAcross / 6);
        return new PlaneMoments(
            area,
            first + (area * along),
            firstAcross + (area * across),
            (_secondAlongTimes12 / 12) + (2 * along * first) + (area * along * along),
            (_secondAcrossTimes12 / 12) + (2 * across * firstAcross) + (area * across * across),
            (_productTimes24 / 24) + (along * firstAcross) + (across * first) + (area * along * across));
    }

    // Three corners a triangle. One corner of a cut triangle stands alone on its side of the water: the wet part is what is at it, or all but that. A crossing is computed
    // from the wet to the dry end. Numbers one by one, since this is where the time goes.
    private void AddTriangles(in WaterPlane plane, ReadOnlySpan<Point3> corners)
    {
        var (upX, upY, upZ) = (plane.Up.XM, plane.Up.YM, plane.Up.ZM);
        var (footX, footY, footZ) = (_foot.XM, _foot.YM, _foot.ZM);
        var draught = plane.Draught;
        double volume = 0, momentX = 0, momentY = 0, momentZ = 0;
        for (var i = 0; i + 2 < corners.Length; i += 3)
        {
            ref readonly var first = ref corners[i];
            ref readonly var second = ref corners[i + 1];
            ref readonly var third = ref corners[i + 2];
            var heightA = (upX * first.XM) + (upY * first.YM) + (upZ * first.ZM) - draught;
            var heightB = (upX * second.XM) + (upY * second.YM) + (upZ * second.ZM) - draught;
            var heightC = (upX * third.XM) + (upY * third.YM) + (upZ * third.ZM) - draught;
            var wet = (heightA < 0 ? 1 : 0) | (heightB < 0 ? 2 : 0) | (heightC < 0 ? 4 : 0);
            if (wet == 0)
            {
                continue;
            }

            var (ax, ay, az) = (first.XM - footX, first.YM - footY, first.ZM - footZ);
            var (bx, by, bz) = (second.XM - footX, second.YM - footY, second.ZM - footZ);
            var (cx, cy, cz) = (third.XM - footX, third.YM - footY, third.ZM - footZ);
            var sixfold = (ax * ((by * cz) - (bz * cy))) + (ay * ((bz * cx) - (bx * cz))) + (az * ((bx * cy) - (by * cx)));
            if (wet is not (1 or 2 or 4))
            {
                volume += sixfold;
                momentX += sixfold * (ax + bx + cx);
                momentY += sixfold * (ay + by + cy);
                momentZ += sixfold * (az + bz + cz);
                if (wet == 7)
                {
                    continue;
                }
            }

            if (wet is 2 or 5)
            {
                (ax, bx, cx, ay, by, cy, az, bz, cz) = (bx, cx, ax, by, cy, ay, bz, cz, az);
                (heightA, heightB, heightC) = (heightB, heightC, heightA);
            }
            else if (wet is 4 or 3)
            {
                (ax, bx, cx, ay, by, cy, az, bz, cz) = (cx, ax, bx, cy, ay, by, cz, az, bz);
                (heightA, heightB, heightC) = (heightC, heightA, heightB);
            }

            double shareB = heightA / (heightA - heightB), shareC = heightA / (heightA - heightC);
            var corner = (heightA < 0 ? shareB : -shareB) * shareC * sixfold;
            var (pointBx, pointBy, pointBz, pointCx, pointCy, pointCz) = heightA < 0
                ? (ax + (shareB * (bx - ax)), ay + (shareB * (by - ay)), az + (shareB * (bz - az)), ax + (shareC * (cx - ax)), ay + (shareC * (cy - ay)), az + (shareC * (cz - az)))
                : (bx + ((heightB / (heightB - heightA)) * (ax - bx)), by + ((heightB / (heightB - heightA)) * (ay - by)), bz + ((heightB / (heightB - heightA)) * (az - bz)),
                    cx + ((heightC / (heightC - heightA)) * (ax - cx)), cy + ((heightC / (heightC - heightA)) * (ay - cy)), cz + ((heightC / (heightC - heightA)) * (az - cz)));
            volume += corner;
            momentX += corner * (ax + pointBx + pointCx);
            momentY += corner * (ay + pointBy + pointCy);
            momentZ += corner * (az + pointBz + pointCz);
            var (onB, onC) = (new Point3(pointBx, pointBy, pointBz), new Point3(pointCx, pointCy, pointCz));
            if (heightA < 0)
            {
                AddEdge(plane, onC, onB);
            }
            else
            {
                AddEdge(plane, onB, onC);
            }
        }

        _sixfoldVolume += volume;
        _momentTimes24 += new Point3(momentX, momentY, momentZ);
    }

    private void AddEdge(in WaterPlane plane, Point3 from, Point3 to)
    {
        var (x1, y1) = (plane.Along.Dot(from), plane.Across.Dot(from));
        var (x2, y2) = (plane.Along.Dot(to), plane.Across.Dot(to));
        var cross = (x1 * y2) - (x2 * y1);
        _twofoldArea += cross;
        _sixfoldMomentAlong += cross * (x1 + x2);
        _sixfoldMomentAcross += cross * (y1 + y2);
        _secondAlongTimes12 += cross * ((x1 * x1) + (x1 * x2) + (x2 * x2));
        _secondAcrossTimes12 += cross * ((y1 * y1) + (y1 * y2) + (y2 * y2));
        _productTimes24 += cross * ((x1 * y2) + (2 * x1 * y1) + (2 * x2 * y2) + (x2 * y1));
    }
}
