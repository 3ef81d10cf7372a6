using Orlop.Hull.Working;

namespace Orlop.Hull.Surfaces;

/// <summary>
/// Starting forms scaled to length over all, greatest beam and depth amidships (keel to deck edge, at 40 to 50 % of the length from aft): to be corrected section by section with the tape. x runs from 0 at the
/// after end to the length at the stem head, z from 0 at the keel amidships. Each is a table of offsets of a boat of length, beam and depth 1 in the folder Forms.
/// </summary>
public static class StartingForm
{
    public static HullForm Create(string id, StartingShape shape, double lengthM, double beamM, double depthM)
    {
        Guard.Positive(lengthM, 100, "m", id);
        Guard.Positive(beamM, 30, "m", id);
        Guard.Positive(depthM, 20, "m", id);
        var form = OffsetTable.Read(id, Table(id, shape)).Form!;
        return form with { Sections = [.. form.Sections.Select(section => section with { Points = [.. section.Points.Select(Scaled)] })] };

        SectionPoint Scaled(SectionPoint point) => point with { XM = point.XM * lengthM, HalfBreadthM = point.HalfBreadthM * beamM, HeightM = point.HeightM * depthM };
    }

    private static string Table(string id, StartingShape shape)
    {
        var name = shape switch
        {
            StartingShape.Box => "box",
            StartingShape.Barge => "barge",
            StartingShape.FlatBottom => "flat-bottom",
            StartingShape.SingleChine => "single-chine",
            StartingShape.RoundBilge => "round-bilge",
            StartingShape.DoubleEnder => "double-ender",
            _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, $"{id}: shape: allowed {string.Join(", ", Enum.GetNames<StartingShape>())}."),
        };
        using var stream = typeof(StartingForm).Assembly.GetManifestResourceStream($"Forms/{name}.csv")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
