using Orlop.Boat.Things;
using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Hulls;

/// <summary>What a hull's lines make.</summary>
/// <param name="Lines">The lines.</param>
/// <param name="Bodies">The surface, what keeps it from closing, and the doubtful points.</param>
/// <param name="Curves">The curves as drawn.</param>
/// <param name="DraughtM">Height of the designed waterline over the base line; null where none is given.</param>
/// <param name="AtDraught">The hull at it, level and upright; null where there is no draught, no surface, or the hull does not reach it.</param>
public sealed record HullFacts(HullLines Lines, HullBodies Bodies, FormCurves Curves, double? DraughtM, HydrostaticRow? AtDraught)
{
    /// <summary>Works it out.</summary>
    public static HullFacts Of(HullLines lines, double? draughtM, double waterKgPerM3)
    {
        HullBodies bodies = HullBodies.Of(lines);
        return new HullFacts(lines, bodies, FormCurves.Of(HullBodies.FormOf(lines)), draughtM, bodies.Hull is { } hull && draughtM is { } draught ? At(hull, draught, waterKgPerM3) : null);
    }

    /// <summary>Point of a doubt.</summary>
    public HullSpot SpotOf(FormDoubt doubt) =>
        new(doubt.IsStarboard, HullEdit.Side(Lines, doubt.IsStarboard).Select((station, index) => (station, index)).First(pair => pair.station.Name == doubt.SectionId).index, doubt.PointNumber - 1);

    private static HydrostaticRow? At(TriangleMesh hull, double draughtM, double waterKgPerM3) => draughtM <= hull.Lowest.ZM || draughtM >= hull.Highest.ZM ? null : HydrostaticTable.Calculate(new HydrostaticInput
    {
        Subject = "hull",
        Hull = hull,
        DraughtsM = [draughtM],
        WaterKgPerM3 = waterKgPerM3,
        TrimLengthM = hull.Highest.XM - hull.Lowest.XM,
    }).Rows[0];
}
