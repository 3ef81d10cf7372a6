using Orlop.Hull.Floating;
using Orlop.Hull.Surfaces;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability;

/// <summary>How heel and trim at rest follow from the two centres, as lines of working: at rest G lies plumb over or under B, at any angle.</summary>
internal static class RestLines
{
    private const double DegPerRad = 180 / Math.PI;
    private const string Source = "G plumb over B, in the boat's own axes; liquids where they lie at rest";

    /// <summary>The heel, positive to starboard.</summary>
    public static IEnumerable<WorkingLine> Heel(FloatingPosition at)
    {
        (Point3 g, Point3 b) = (at.CentreOfGravity, at.CentreOfBuoyancy);
        return [.. Centres(at), new WorkingLine("Heel at rest", FormattableString.Invariant($"atan(({g.YM:0.0000} − {b.YM:0.0000})/({g.ZM:0.0000} − {b.ZM:0.0000})), to starboard above 0"), Deg(Math.Atan((g.YM - b.YM) / (g.ZM - b.ZM)) * DegPerRad), Source)];
    }

    /// <summary>The trim, positive by the stern.</summary>
    public static IEnumerable<WorkingLine> Trim(FloatingPosition at)
    {
        (Point3 g, Point3 b) = (at.CentreOfGravity, at.CentreOfBuoyancy);
        double across = Math.Sqrt(Math.Pow(g.YM - b.YM, 2) + Math.Pow(g.ZM - b.ZM, 2));
        double up = Math.CopySign(across, g.ZM - b.ZM);
        return [.. Centres(at), new WorkingLine("Trim at rest", FormattableString.Invariant($"atan(({g.XM:0.0000} − {b.XM:0.0000})/{up:0.0000}), G over B across and up together; by the stern above 0"), Deg(Math.Atan((g.XM - b.XM) / up) * DegPerRad), Source)];
    }

    private static WorkingLine[] Centres(FloatingPosition at) =>
    [
        new WorkingLine("G at rest", FormattableString.Invariant($"({at.CentreOfGravity.XM:0.0000}, {at.CentreOfGravity.YM:0.0000}, {at.CentreOfGravity.ZM:0.0000}) m"), null, "list and berth tests together, with tank liquids"),
        new WorkingLine("B at rest", FormattableString.Invariant($"({at.CentreOfBuoyancy.XM:0.0000}, {at.CentreOfBuoyancy.YM:0.0000}, {at.CentreOfBuoyancy.ZM:0.0000}) m"), null, "hydrostatics"),
    ];
}
