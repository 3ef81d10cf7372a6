using System.Globalization;
using System.Xml.Linq;
using Orlop.Drawings.Charts;
using Orlop.Hull.Floating;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views.Floating;
using Orlop.Review.Stability;
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
        Assert.Contains("floods at 60°: Fore hatch", drawing.Value, StringComparison.Ordinal);
        Assert.Empty(DrawnText.OffTheSheet(drawing));
        Assert.Empty(DrawnText.Overlaps(drawing.Descendants(DrawnText.Svg + "text")));
    }

    [Fact]
    public void Levers_BothSides_RunFromPortToStarboard()
    {
        XElement drawing = DrawnText.Parse(RightingChart.Draw("levers", "At anchor", View(0.3), null, showsBothSides: true, 760, DisplayUnits.Metric, CultureInfo.InvariantCulture));
        double[] across = [.. ((string)drawing.Descendants(DrawnText.Svg + "polyline").First().Attribute("points")!).Split(' ').Select(spot => double.Parse(spot.Split(',')[0], CultureInfo.InvariantCulture))];

        Assert.Equal(across.Order(), across);
        Assert.Equal(across.Distinct(), across);
        Assert.Contains("-40", drawing.Descendants(DrawnText.Svg + "text").Select(text => text.Value));
    }

    // She lists 5° to port, GZ 0.02 m upright: one curve through upright, without a step there.
    [Fact]
    public void Levers_BothSidesOfABoatThatLists_AreOneCurve()
    {
        RightingView listing = View(0.3);
        RightingSide Moved(RightingSide side) => side with { Points = [.. side.Points.Select(point => point with { LeverM = point.LeverM + ((side.IsPort ? -1 : 1) * 0.02) })] };
        XElement drawing = DrawnText.Parse(RightingChart.Draw("levers", "At anchor", listing with { Port = Moved(listing.Port), Starboard = Moved(listing.Starboard) }, null, showsBothSides: true, 760, DisplayUnits.Metric, CultureInfo.InvariantCulture));
        (double X, double Y)[] line = [.. ((string)drawing.Descendants(DrawnText.Svg + "polyline").First().Attribute("points")!).Split(' ')
            .Select(spot => spot.Split(',')).Select(spot => (double.Parse(spot[0], CultureInfo.InvariantCulture), double.Parse(spot[1], CultureInfo.InvariantCulture)))];
        double[] steps = [.. line.Zip(line.Skip(1), (before, after) => before.Y - after.Y)];

        // Upright stands in the middle; the sine rises as much on either side of it.
        Assert.Equal(line.Length, line.Select(spot => spot.X).Distinct().Count());
        Assert.Equal(steps[(line.Length / 2) - 1], steps[line.Length / 2], 0.2);
        Assert.True(steps[line.Length / 2] > 0);
    }

    // Lever and chart share one scale: the level line of the wind crosses the sine at asin(l/most)·80/180.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Levers_WithAHeelingLever_DrawItAsALimitWithItsAngle(bool showsBothSides)
    {
        HeelingLever wind = new(HeelingCause.SteadyWind, "", [new HeelingPoint(0, 0.15), new HeelingPoint(90, 0.15)], 80.0 / 6, "Res. A.749(18) 3.2");
        XElement drawing = DrawnText.Parse(RightingChart.Draw("levers", "At anchor", View(0.3) with { Heeling = [wind] }, null, showsBothSides, 340, DisplayUnits.Metric, CultureInfo.InvariantCulture));

        Assert.Contains(drawing.Descendants(DrawnText.Svg + "polyline"), line => (string?)line.Attribute("class") == "limit");
        Assert.Contains("steady wind to 13.3°", drawing.Value, StringComparison.Ordinal);
        Assert.Empty(DrawnText.OffTheSheet(drawing));
        Assert.Empty(DrawnText.Overlaps(drawing.Descendants(DrawnText.Svg + "text")));
    }

    // The angle comes first: it is not what is cut where a name is too long for a phone.
    [Fact]
    public void Levers_WithALongName_KeepTheAngle()
    {
        RightingView named = View(0.3);
        string drawing = DrawnText.Parse(RightingChart.Draw("levers", "At anchor", named with { Port = named.Port with { FloodingTitle = "deck edge at station 0.4 of the after cabin's long coaming, starboard side" } }, null, showsBothSides: false, 340, DisplayUnits.Metric, CultureInfo.InvariantCulture)).Value;
        Assert.Contains("floods at 60°", drawing, StringComparison.Ordinal);
        Assert.Contains("to port: shorter range; smaller greatest lever to starboard", drawing, StringComparison.Ordinal);
    }

    [Fact]
    public void Levers_OnAPhone_NameEveryMarkWhole()
    {
        RightingView named = View(0.3);
        string drawing = DrawnText.Parse(RightingChart.Draw("levers", "At anchor", named with { Port = named.Port with { FloodingTitle = "After cabin companionway" } }, null, showsBothSides: false, 340, DisplayUnits.Metric, CultureInfo.InvariantCulture)).Value;

        Assert.Contains("floods at 60°: After cabin companionway", drawing, StringComparison.Ordinal);
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
                "Fore hatch", (mostM, sign * 40));
        }

        return new RightingView(
            Side(false), Side(true), IsPortDrawn: true, ShorterRange: WorseSide.Port, SmallerLever: WorseSide.Starboard,
            [
                new DrawnCriterion("area-to-30", "area to 30°", 0, 30, 0.07, 0.055, "MRad", "2008 IS Code"), new DrawnCriterion("area-30-to-40", "area from 30°", 30, 40, 0.04, 0.03, "MRad", "2008 IS Code"),
                new DrawnCriterion("lever-at-30", "lever", 30, 90, mostM, 0.2, "M", "2008 IS Code"),
            ],
            []);
    }
}
