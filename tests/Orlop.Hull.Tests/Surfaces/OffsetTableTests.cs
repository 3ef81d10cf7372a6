using System.Collections.Immutable;
using CsCheck;
using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Hull.Tests.Surfaces;

public sealed class OffsetTableTests
{
    // The inch is 0.0254 m exactly (international yard, 1959); a plus is a sixteenth more (common practice, no source).
    [Theory]
    [InlineData("ft_in_8", "3-4-5", (40 + (5.0 / 8)) * 0.0254)]
    [InlineData("ft_in_8", "3-4-5+", (40 + (11.0 / 16)) * 0.0254)]
    [InlineData("ft_in_8", "0-11-7", (11 + (7.0 / 8)) * 0.0254)]
    [InlineData("ft_in_8", "0", 0)]
    [InlineData("ft", "3.5", 3.5 * 0.3048)]
    [InlineData("in", "41.25", 41.25 * 0.0254)]
    [InlineData("m", "1.25e0", 1.25)]
    public void Read_Lengths_AreMetres(string unit, string cell, double lengthM)
    {
        var form = Read($"station,x_m,half_breadth_{unit},height_m\na,0,{cell},1\n");
        Assert.Equal(lengthM, form.Sections[0].Points[0].HalfBreadthM, 1e-14);
    }

    [Fact]
    public void Read_NegativeFeetInchesEighths_GoesAftAndDown()
    {
        var point = Read("station,x_ft_in_8,half_breadth_m,height_ft_in_8\na,-1-0-4,0,-0-3-0\n").Sections[0].Points[0];
        Assert.Equal(-12.5 * 0.0254, point.XM, 1e-14);
        Assert.Equal(-3 * 0.0254, point.HeightM, 1e-14);
    }

    [Theory]
    [InlineData("3-12-0")]
    [InlineData("3-4-8")]
    [InlineData("3-4")]
    [InlineData("3.5")]
    [InlineData("3'4\"")]
    [InlineData("-3-4-5")]
    [InlineData("")]
    public void Read_NotFeetInchesEighths_IsAProblem(string cell)
    {
        var result = OffsetTable.Read("boat", $"station,x_m,half_breadth_ft_in_8,height_m\na,0,\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\",1\n");
        var problem = Assert.Single(result.Problems);
        Assert.Null(result.Form);
        Assert.Equal((2, "half_breadth_ft_in_8", cell), (problem.LineNumber, problem.Column, problem.Found));
        Assert.Contains("3-4-5", problem.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_ColumnsInAnyOrder_CommentsAndGaps()
    {
        var form = Read("\uFEFF# a comment, with a comma\n\nheight_m , line, sharp, station, half_breadth_m, x_m\r\n0, , 1, aft, 0, 0\r\n# another\n1, chine, , aft, 1, 0\n\n1,,,\"fore, \"\"raked\"\"\",0,5\n");
        Assert.Equal(["aft", "fore, \"raked\""], form.Sections.Select(section => section.Id));
        Assert.Equal([true, false], form.Sections.Select(section => section.IsSharp));
        Assert.Equal([new SectionPoint(0, 0, 0), new SectionPoint(0, 1, 1, "chine")], form.Sections[0].Points);
    }

    [Fact]
    public void Read_EverythingWrong_IsToldAtOnce()
    {
        var result = OffsetTable.Read("boat", "# offsets\nstation,x_m,half_breadth_m,height_m,sharp\na,0,-1,NaN,\n,300,1,1,maybe\na,0,1,1,5,3\nb,1,1e999,,0\n");
        Assert.Null(result.Form);
        Assert.Equal(
        [
            "line 3, half_breadth_m: found \"-1\"; allowed metres; 0 to 200 m",
            "line 3, height_m: found \"NaN\"; allowed metres; -200 to 200 m",
            "line 4, station: found nothing; allowed the station's name",
            "line 4, sharp: found \"maybe\"; allowed 0, 1 or nothing",
            "line 4, x_m: found \"300\"; allowed metres; -200 to 200 m",
            "line 5: found \"6 cells\"; allowed 5, one for each column; decimals take a point, not a comma",
            "line 6, half_breadth_m: found \"1e999\"; allowed metres; 0 to 200 m",
            "line 6, height_m: found nothing; allowed metres; -200 to 200 m",
        ], result.Problems.Select(problem => problem.ToString()));
    }

    [Theory]
    [InlineData("", "line 1: found nothing; allowed a first line of column names")]
    [InlineData("station,x,half_breadth_m,height_m", "line 1, x: found \"x\"; allowed its unit too: x_ft_in_8, x_ft, x_in, x_m")]
    [InlineData("station,x_m,half_breadth_m", "line 1, height: found nothing; allowed a column for height")]
    [InlineData("station,x_m,half_breadth_m,height_m,x_ft", "line 1, x_ft: found \"x_ft\"; allowed one column for x")]
    [InlineData("station,x_m,half_breadth_m,height_m,draught_m", "line 1, draught_m: found \"draught_m\"; allowed station")]
    public void Read_BadHeader_IsAProblem(string text, string message) =>
        Assert.Contains(OffsetTable.Read("boat", text).Problems, problem => problem.ToString().StartsWith(message, StringComparison.Ordinal));

    [Theory]
    [InlineData("a,0,0,0,,\nb,1,0,0,,\na,0,1,1,,", "line 4, station: found \"a\"; allowed all points of a station one after the other")]
    [InlineData("a,0,0,0,,1\na,0,1,1,,0", "line 3, sharp: found \"0\"; allowed the same as on the station's first line, or nothing")]
    [InlineData("a,0,0,0,port,\na,0,1,1,,", "line 3, side: found nothing; allowed port or starboard on every line, once it stands on one")]
    public void Read_LinesThatContradict_AreAProblem(string lines, string message) =>
        Assert.Equal(message, Assert.Single(OffsetTable.Read("boat", $"station,x_m,half_breadth_m,height_m,side,sharp\n{lines}\n").Problems).ToString());

    [Fact]
    public void WriteThenRead_AnyForm_IsTheSame()
    {
        var name = Gen.String[Gen.Char["ab ,\"#\né'0"], 1, 6];
        var length = Gen.Double[-200, 200];
        var point = Gen.Select(length, Gen.Double[0, 200], length, name.Null()).Select((x, half, height, line) => new SectionPoint(x, half, height, line));
        var section = Gen.Select(point.Array[1, 5], Gen.Bool).Select((points, isSharp) => new HullSection { Id = "", Points = [.. points], IsSharp = isSharp });
        var side = section.Array[1, 4].Select(sections => sections.Select((one, i) => one with { Id = $"{i}, \"#{i}\"\n" }).ToImmutableArray());
        Gen.Select(side, side, Gen.Bool).Sample((port, starboard, isTwoSided) =>
        {
            var form = new HullForm { Id = "boat", Sections = port, StarboardSections = isTwoSided ? starboard : [] };
            var again = Read(OffsetTable.Write(form));
            Same(form.Sections, again.Sections);
            Same(form.StarboardSections, again.StarboardSections);
        }, iter: 500);

        static void Same(ImmutableArray<HullSection> expected, ImmutableArray<HullSection> found)
        {
            Assert.Equal(expected.Select(section => (section.Id, section.IsSharp)), found.Select(section => (section.Id, section.IsSharp)));
            Assert.Equal(expected.SelectMany(section => section.Points), found.SelectMany(section => section.Points));
        }
    }

    [Fact]
    public void Read_AnyText_EndsInAFormOrInProblems() =>
        Gen.String[Gen.Char["station,x_m\n\"#-+0123.half_breadth_mheight_m "], 0, 120].Sample(text =>
        {
            var result = OffsetTable.Read("boat", $"station,x_m,half_breadth_m,height_m\n{text}");
            Assert.Equal(result.Form is null, !result.Problems.IsEmpty);
        }, iter: 2000);

    private static HullForm Read(string text)
    {
        var result = OffsetTable.Read("boat", text);
        Assert.Empty(result.Problems);
        return result.Form!;
    }
}
