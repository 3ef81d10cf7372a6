using System.Globalization;
using System.Xml.Linq;
using Orlop.Drawings.Charts;
using Orlop.Hull.Floating;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views.Floating;
using Xunit;

namespace Orlop.Drawings.Tests.Charts;

public sealed class RightingChartTests
{
    [Theory]
    [InlineData(760, false, DisplayUnits.Metric)]
    [InlineData(340, false, DisplayUnits.Metric)]
    [InlineData(760, true, DisplayUnits.Us)]
    [InlineData(340, true, DisplayUnits.Metric)]
    public void Levers_WithADraft_ShowAsBuiltDashedFeaturesLimitsAndDoubt(double widthPx, bool showsBothSides, DisplayUnits units)
    {
        XElement drawing = DrawnText.Parse(RightingChart.Draw("levers", "At anchor", View(0.3), View(0.25), showsBothSides, widthPx, units, CultureInfo.InvariantCulture));
        string[] styles = [.. drawing.Descendants().Select(element => (string?)element.Attribute("class")).OfType<string>()];

        Assert.Contains("outline dashed", styles);
        Assert.Contains("limit", styles);
        Assert.Equal(3, drawing.Descendants(DrawnText.Svg + "polygon").Count());
        Assert.Contains("vanishes at 80°", drawing.Value, StringComparison.Ordinal);
        Assert.Contains("Fore hatch under at 60°", drawing.Value, StringComparison.Ordinal);
        Assert.Empty(DrawnText.OffTheSheet(drawing));
        Assert.Empty(DrawnText.Overlaps(drawing.Descendants(DrawnText.Svg + "text")));
    }

    [Fact]
    public void Levers_BothSides_RunFromPortToStarboard()
    {
        XElement drawing = DrawnText.Parse(RightingChart.Draw("levers", "At anchor", View(0.3), null, showsBothSides: true, 760, DisplayUnits.Metric, CultureInfo.InvariantCulture));
        double[] across = [.. ((string)drawing.Descendants(DrawnText.Svg + "polyline").First().Attribute("points")!).Split(' ').Select(spot => double.Parse(spot.Split(',')[0], CultureInfo.InvariantCulture))];

        Assert.Equal(across.Order(), across);
        Assert.Contains("-40", drawing.Descendants(DrawnText.Svg + "text").Select(text => text.Value));
    }

    // A lever of a sine from 0° to 80°, falling off beyond.
    private static RightingView View(double mostM)
    {
        RightingSide Side(bool isPort)
        {
            int sign = isPort ? -1 : 1;
            return new RightingSide(
                isPort,
                [.. Enumerable.Range(0, 19).Select(step => 10.0 * step).Select(heel => new LeverPoint(sign * heel, mostM * Math.Sin(heel * Math.PI / 80), isPort ? 0.02 : null))],
                new RightingFeatures { GreatestGzM = mostM, GreatestGzDeg = sign * 40, LollDeg = 0, VanishingDeg = sign * 80, DownfloodingDeg = sign * 60, DownfloodingOpening = "hatch" },
                "Fore hatch");
        }

        return new RightingView(
            Side(false), Side(true), IsPortWeaker: true,
            [
                new DrawnCriterion("area-to-30", "area to 30°", 0, 30, 0.07, 0.055, "MRad", "2008 IS Code"), new DrawnCriterion("area-30-to-40", "area from 30°", 30, 40, 0.04, 0.03, "MRad", "2008 IS Code"),
                new DrawnCriterion("lever-at-30", "lever", 30, 90, mostM, 0.2, "M", "2008 IS Code"),
            ]);
    }
}
