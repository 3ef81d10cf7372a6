using System.Globalization;
using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Reference.Tests.Hull;

/// <summary>Published offsets read as tables of text: the 21 ft launch of Amateur Work vol. 4 (about 1905) and the two analytic hulls.</summary>
public sealed class OffsetTableReferenceTests
{
    // Half-breadths as printed, in inches (value_in), against the metres beside them, which carry four decimals.
    [Fact]
    public void Read_LaunchInInches_AreTheMetresOfTheTable()
    {
        var rows = Launch();
        var form = Read("station,x_m,height_m,half_breadth_in\n" + string.Concat(rows.Select(row => $"{row.Text("mould")},{row.Text("x_m_from_lwl_forward_end")},{row.Text("z_m_above_base")},{row.Text("value_in")}\n")));
        Agree(rows, form, 5e-5);
    }

    // The same in feet, inches and eighths: every printed value is a whole number of eighths.
    [Fact]
    public void Read_LaunchInFeetInchesEighths_AreTheMetresOfTheTable()
    {
        var rows = Launch();
        var form = Read("station,x_m,height_m,half_breadth_ft_in_8\n" + string.Concat(rows.Select(row => $"{row.Text("mould")},{row.Text("x_m_from_lwl_forward_end")},{row.Text("z_m_above_base")},{Threefold(row.Number("value_in"))}\n")));
        Agree(rows, form, 5e-5);

        static string Threefold(double inches)
        {
            Assert.Equal(Math.Round(8 * inches), 8 * inches);
            var eighths = (int)(8 * inches);
            return string.Create(CultureInfo.InvariantCulture, $"{eighths / 96}-{eighths / 8 % 12}-{eighths % 8}");
        }
    }

    // Exact hydrostatics: hull-closed-form.csv, the rows of L=12; agreement as in OffsetsReferenceTests. The file is read as it is, but for the name of its height and the crease at the waterline.
    [Theory]
    [InlineData("hull-wigley-offsets.csv", 17.28, 28.8, 4e-4)]
    [InlineData("hull-wigley-full-offsets.csv", 21.801225974, 29.952, 1e-3)]
    public void Read_AnalyticOffsets_GiveTheExactVolume(string file, double volumeM3, double areaM2, double share)
    {
        var lines = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "data", file))
            .Select(line => line.Replace("z_m,half_breadth_m", "height_m,half_breadth_m,line", StringComparison.Ordinal))
            .Select(line => line.StartsWith('#') || line.EndsWith("line", StringComparison.Ordinal) ? line : $"{line},{(line.Contains(",0.900,", StringComparison.Ordinal) ? "topside" : "")}");
        var form = Read(string.Join('\n', lines));
        Assert.Equal(252, form.Sections.Sum(section => section.Points.Length));
        var built = HullSurface.Build(form, new FormFineness(8, 8));
        Assert.Empty(built.Problems);
        var part = Submersion.Calculate(built.Surface!, Attitude.Upright(0.9));
        Assert.Equal(volumeM3, part.VolumeM3, share * volumeM3);
        Assert.Equal(areaM2, part.WaterplaneAreaM2, share * areaM2);
    }

    private static List<ReferenceRow> Launch() =>
        [.. ReferenceCsv.Load("hull-launch-21ft-offsets.csv", expectedRows: 74).Where(row => row.Has("half_breadth_m")).OrderBy(row => row.Text("mould"), StringComparer.Ordinal)];

    private static void Agree(List<ReferenceRow> rows, HullForm form, double tolerance)
    {
        Assert.Equal(8, form.Sections.Length);
        var points = form.Sections.SelectMany(section => section.Points).ToList();
        Assert.Equal(rows.Count, points.Count);
        Assert.All(rows.Zip(points), pair => pair.First.Agrees(pair.First.Number("half_breadth_m"), pair.Second.HalfBreadthM, tolerance));
    }

    private static HullForm Read(string text)
    {
        var result = OffsetTable.Read("hull", text);
        Assert.Empty(result.Problems);
        return result.Form!;
    }
}
