using System.Globalization;
using System.Xml.Linq;
using Orlop.Drawings.Charts;
using Orlop.Hull.Measuring;
using Orlop.Presentation.Quantities;
using Orlop.Review.Stability;
using Xunit;

namespace Orlop.Drawings.Tests.Charts;

public sealed class InclinationChartTests
{
    [Theory]
    [InlineData(620)]
    [InlineData(310)]
    public void Chart_OfATestWithAMisreadShift_CrossesAndNamesIt(double width)
    {
        XElement drawing = DrawnText.Parse(InclinationChart.Draw("inclined", "Test", Found(misreadAt: 3), width, DisplayUnits.Metric, CultureInfo.InvariantCulture));

        Assert.Equal(2 * 2, drawing.Descendants(DrawnText.Svg + "line").Count(line => (string?)line.Attribute("class") == "cross"));
        Assert.Equal(8, drawing.Descendants(DrawnText.Svg + "circle").Count());
        Assert.Contains("r3", drawing.Value, StringComparison.Ordinal);
        Assert.Empty(DrawnText.Overlaps(drawing.Descendants(DrawnText.Svg + "text")));
    }

    [Fact]
    public void Chart_OfAGoodTest_HasALineItsBandAndADotForEachReading()
    {
        XElement drawing = DrawnText.Parse(InclinationChart.Draw("inclined", "Test", Found(misreadAt: null), 620, DisplayUnits.Us, CultureInfo.InvariantCulture));

        Assert.DoesNotContain(drawing.Descendants(DrawnText.Svg + "line"), line => (string?)line.Attribute("class") == "cross");
        Assert.Single(drawing.Descendants(DrawnText.Svg + "polygon"));
        Assert.Contains("lb·ft", drawing.Value, StringComparison.Ordinal);
    }

    private static InclinationFound Found(int? misreadAt)
    {
        double[] moments = [400, 800, 400, 0, -400, -800, -400, 0];
        InclinationInput input = new()
        {
            Subject = "Test",
            DisplacementKg = 12_000,
            DisplacementDeviationKg = 100,
            Readings = [.. moments.Select((moment, i) => new InclinationReading($"r{i}", moment, (moment / (12_000 * 0.9)) + (i % 2 == 0 ? 2e-4 : -2e-4) + (i == misreadAt ? 0.03 : 0)))],
        };
        return new InclinationFound(input, InclinationTest.Calculate(input), 2, 0, 1.1, 0.02);
    }
}
