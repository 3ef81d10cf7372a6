using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Hull.Surfaces;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views.Hulls;
using Orlop.Review.Stability;
using Xunit;

namespace Orlop.Presentation.Tests.Views.Hulls;

public sealed class HullEntryTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-GB");

    [Fact]
    public void StartingHull_EveryForm_MakesAWholeFairHull()
    {
        Assert.Equal(Enum.GetValues<StartingShape>().Order(), StartingHull.Shapes.Select(shape => shape.Shape).Order());
        foreach ((StartingShape shape, _, _) in StartingHull.Shapes)
        {
            HullLines? lines = new StartingHull(DisplayUnits.Metric, English) { Shape = shape, Length = "34 ft 9", Beam = "3.1", Depth = "1.5 m" }.Make(null);
            HullBodies bodies = HullBodies.Of(Assert.IsType<HullLines>(lines));
            Assert.Empty(bodies.Problems);
            Assert.Empty(bodies.Doubts);
        }
    }

    // What she was begun with is not asked for again; what the particulars say stays.
    [Fact]
    public void StartingHull_SizesTyped_FillWhatTheParticularsLeftEmpty()
    {
        StartingHull start = new(DisplayUnits.Metric, English) { Length = "5.2 m", Beam = "1.9 m", Depth = "2-8-0" };
        Particulars filled = Assert.IsType<Particulars>(start.Fill(new Particulars { Id = "particulars", LengthOverAllM = 5.25 }));
        Assert.Equal((5.25, 1.9), (filled.LengthOverAllM!.Value, filled.BeamM!.Value));
        Assert.Equal(32 * 0.0254, filled.DepthM!.Value, 1e-12);
        Assert.Null(start.Fill(filled));
    }

    [Fact]
    public void StartingHull_BadSizes_AreRefusedEachByItself()
    {
        StartingHull start = new(DisplayUnits.Metric, English) { Length = "1 m", Beam = "3", Depth = "" };
        Assert.Null(start.Make(null));
        Assert.Equal("Length over all: found 1 m; allowed 2 m to 60 m.", start.LengthRefusal);
        Assert.Null(start.BeamRefusal);
        Assert.StartsWith("Depth amidships: ", start.DepthRefusal, StringComparison.Ordinal);
    }

    // 3 ft 4 5/8 in and a sixteenth: (40 + 5/8 + 1/16) x 0.0254 m.
    [Fact]
    public void OffsetsPaste_FromASpreadsheet_InFeetInchesEighths()
    {
        OffsetsPaste read = OffsetsPaste.Read("station\tx_m\thalf_breadth_ft_in_8\theight_m\naft\t0\t0-0-0\t0\naft\t0\t3-4-5+\t1\nfore\t6\t0-0-0\t0\nfore\t6\t3-0-0\t1\n", null);
        Assert.Empty(read.Problems);
        Assert.Equal((40 + 0.625 + 0.0625) * 0.0254, read.Lines!.Stations[0].Points[1].HalfBreadthM, 1e-12);
    }

    [Fact]
    public void OffsetsPaste_EveryFault_IsNamedWithItsLine()
    {
        OffsetsPaste read = OffsetsPaste.Read("station,x_m,half_breadth_ft_in_8,height_m\naft,0,0-0-0,1,5\naft,0,3-12-0,1\nfore,6,0-0-0,high\n", null);
        Assert.Null(read.Lines);
        Assert.Equal(3, read.Problems.Count);
        Assert.StartsWith("Line 2: found \"5 cells\"", read.Problems[0], StringComparison.Ordinal);
        Assert.StartsWith("Line 3, half_breadth_ft_in_8: found \"3-12-0\"; allowed feet-inches-eighths", read.Problems[1], StringComparison.Ordinal);
        Assert.StartsWith("Line 4, height_m: found \"high\"; allowed metres", read.Problems[2], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("12 mm", 0.012)]
    [InlineData("4 ft 2.5", 1.2827)]
    [InlineData("1.283", 1.283)]
    public void HullCell_AnyUnit_IsRead(string typed, double expectedM)
    {
        Assert.Null(HullCell.Read("halfBreadthM", typed, DisplayUnits.Metric, English, out double m));
        Assert.Equal(expectedM, m, 1e-9);
    }

    [Theory]
    [InlineData("")]
    [InlineData("-1 m")]
    [InlineData("NaN")]
    [InlineData("wide")]
    public void HullCell_Nonsense_IsRefused(string typed) => Assert.NotNull(HullCell.Read("halfBreadthM", typed, DisplayUnits.Metric, English, out _));

    // What the model does not allow is told with what cannot be read, once.
    [Fact]
    public void OffsetsPaste_ModelsLimitsAndFaults_AreToldTogether()
    {
        OffsetsPaste read = OffsetsPaste.Read("station,x_m,half_breadth_m,height_m\naft,0,0,low\naft,0,11,1\nfore,61,0,0\nfore,6,1,1\naft,0,1,2\n", null);

        Assert.Null(read.Lines);
        Assert.Equal(
            ["Line 2, height_m: found \"low\"; allowed metres; -5 to 20 m.", "Line 3, half_breadth_m: found \"11\"; allowed metres; 0 to 10 m.", "Line 4, x_m: found \"61\"; allowed metres; -5 to 60 m.",
                "Line 6, station: found \"aft\"; allowed all points of a station one after the other."],
            read.Problems);
    }

    [Fact]
    public void OffsetsPaste_AColumnAndARow_AreToldTogether()
    {
        OffsetsPaste read = OffsetsPaste.Read("station,x,half_breadth_m,height_m\naft,0,0,low\n", null);

        Assert.Equal(2, read.Problems.Count(problem => problem.StartsWith("Line 1, x", StringComparison.Ordinal) || problem.StartsWith("Line 2, height_m", StringComparison.Ordinal)));
    }

    // 3 ft 4 5/8 in and a sixteenth; the inch is 0.0254 m exactly.
    [Theory]
    [InlineData((40 + 0.625 + 0.0625) * 0.0254, "3-4-5+")]
    [InlineData(-12.5 * 0.0254, "-1-0-4")]
    [InlineData(12 * 0.0254, "1-0-0")]
    [InlineData(0, "0-0-0")]
    public void HullCell_InUsUnits_IsFeetInchesEighthsBothWays(double m, string shown)
    {
        Assert.Equal(shown, HullCell.Text(m, DisplayUnits.Us, English));
        Assert.Null(HullCell.Read("heightM", shown, DisplayUnits.Us, English, out double read));
        Assert.Equal(m, read, 1e-9);
    }
}
