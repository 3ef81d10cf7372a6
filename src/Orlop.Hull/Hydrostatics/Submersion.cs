using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Hydrostatics;

/// <summary>Volume, centres, waterplane and wetted surface of a closed body at any draught, trim and heel: exact for the triangles given (divergence theorem and Green).</summary>
public static class Submersion
{
    public static ImmersedPart Calculate(TriangleMesh body, Attitude attitude)
    {
        ArgumentNullException.ThrowIfNull(body);
        body.Closed("body");
        var plane = WaterPlane.Of(attitude.Checked("attitude"));
        var immersion = Immersion.Below(plane, body);
        var cut = immersion.CutSurface(plane);
        var about = cut.Centroidal();
        var (length, breadth) = WaterlineReach.Measure(plane, body);
        return new ImmersedPart
        {
            VolumeM3 = immersion.Volume,
            CentreOfBuoyancy = immersion.Volume > 0 ? (1 / immersion.Volume) * immersion.Moment : null,
            WaterplaneAreaM2 = cut.Area,
            CentreOfFlotation = cut.Area > 0
                ? (plane.Draught * plane.Up) + (cut.Along / cut.Area * plane.Along) + (cut.Across / cut.Area * plane.Across)
                : null,
            LongitudinalSecondMomentM4 = about.SecondAlong,
            TransverseSecondMomentM4 = about.SecondAcross,
            ProductMomentM4 = about.Product,
            WaterlineLengthM = length,
            WaterlineBreadthM = breadth,
            WettedAreaM2 = WettedSurface.AreaM2(plane, body),
        };
    }
}
