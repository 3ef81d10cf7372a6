using System.Globalization;
using System.Xml.Linq;
using Orlop.Drawings.Charts;
using Orlop.Presentation.Quantities;
using Xunit;

namespace Orlop.Drawings.Tests.Charts;

public sealed class ChartTests
{
    private static readonly ChainPoint[] Winch =
    [
        new("Bank", 0, 26.1, 24.0), new("Fuse", 0.12, 25.9, 23.4), new("Isolator", 0.6, 25.9, 23.3), new("Plug", 5.2, 25.2, 21.9), new("Winch", 6.7, 25.1, 21.6),
    ];

    [Theory]
    [InlineData(DisplayUnits.Metric, 620)]
    [InlineData(DisplayUnits.Us, 360)]
    public void ChainVoltage_Winch_HasTwoLinesAndTheLeastVoltage(DisplayUnits units, double width)
    {
        XElement drawing = DrawnText.Parse(ChainVoltage.Draw("chain", "winch feed", Winch, 20, width, units, CultureInfo.InvariantCulture));

        Assert.Equal(2, drawing.Descendants(DrawnText.Svg + "polyline").Count());
        Assert.Single(drawing.Descendants(DrawnText.Svg + "line"), line => (string?)line.Attribute("class") == "limit");
        Assert.Contains("least 20 V", drawing.Value, StringComparison.Ordinal);
        Assert.Contains("Starting: from 24 V to 21.6 V, least 21.6 V, most 24 V.", drawing.Element(DrawnText.Svg + "desc")!.Value, StringComparison.Ordinal);
        Assert.Empty(DrawnText.Overlaps(drawing.Descendants(DrawnText.Svg + "text")));
    }

    [Fact]
    public void Chart_Heights_AreOnTheScaleOfTheTicks()
    {
        XElement drawing = DrawnText.Parse(ChainVoltage.Draw("chain", "winch feed", Winch, 20, 620, DisplayUnits.Metric, CultureInfo.InvariantCulture));
        double Tick(string number) => drawing.Descendants(DrawnText.Svg + "text").Single(text => text.Value == number).Number("y") - 4;
        double perVolt = (Tick("22") - Tick("26")) / 4;
        string first = ((string)drawing.Descendants(DrawnText.Svg + "polyline").First().Attribute("points")!).Split(' ')[0];

        Assert.Equal(Tick("26") - (0.1 * perVolt), double.Parse(first.Split(',')[1], CultureInfo.InvariantCulture), 0.05);
    }

    [Fact]
    public void Chart_UnknownPoint_BreaksTheLine()
    {
        ChainPoint[] points = [.. Winch.Select(point => point.Name == "Isolator" ? point with { RunningV = null } : point)];
        XElement drawing = DrawnText.Parse(ChainVoltage.Draw("chain", "winch feed", points, null, 620, DisplayUnits.Metric, CultureInfo.InvariantCulture));

        Assert.Equal(3, drawing.Descendants(DrawnText.Svg + "polyline").Count());
    }

    [Fact]
    public void Chart_DashedCurves_DifferInTheirStrokes_AndALongLimitKeepsInside()
    {
        XElement drawing = DrawnText.Parse(new Chart
        {
            Id = "start",
            Title = "Voltage",
            Across = new("Time", "S"),
            Up = new("Voltage", "V"),
            Series = [.. Enumerable.Range(0, 3).Select(k => new ChartSeries($"Load {k}", [new(0, 20 + k), new(1, 22 + k)], IsDashed: true))],
            Limits = [new($"least of {new string('n', 90)}", 19)],
            WidthPx = 340,
        }.Draw());

        Assert.Equal(["outline dashed", "outline dots", "outline long"], drawing.Descendants(DrawnText.Svg + "polyline").Select(line => (string?)line.Attribute("class")));
        XElement limit = drawing.Descendants(DrawnText.Svg + "text").Single(text => text.Value.EndsWith("19 V", StringComparison.Ordinal));
        Assert.True(DrawnText.RoomOf(limit).X > drawing.Descendants(DrawnText.Svg + "line").Min(line => line.Number("x1")));
    }

    // The slim chart of a phone of 390 px: long names go on in lines below; nothing of them is cut off, and all of it is on the sheet.
    [Theory]
    [InlineData(345)]
    [InlineData(620)]
    public void Chart_LongNames_AreToldWholeAndOnTheSheet(double widthPx)
    {
        string[] names =
        [
            "GZ: turns her to port above 0, else to starboard, when she heels", "Heel: to port below 0, to starboard above, as the test was read", "Sampling winch feed from the after plus bar bears it",
            "Main fuse of the house bank beside the isolator, from memory", "least of Sampling winch, Inverter 1.6 kVA, Bilge pump of the engine space and Drying fan", "Wheelhouse door, starboard, with its sill under at 48°",
            "Charge with the draft and with the sun of a mean October day in port", "A band of what is usual aboard with everything on that there is",
        ];
        XElement drawing = DrawnText.Parse(new Chart
        {
            Id = "long",
            Title = "Long names",
            Across = new(names[1], "Ratio"),
            Up = new(names[0], "Ratio"),
            Series = [new(names[2], [new(0, 1), new(10, 5)], IsNamedOnLine: true), new(names[3], [new(0, 2), new(10, 8)], IsNamedOnLine: true), new(names[6], [new(0, 3), new(10, 4)]), new("Other", [new(0, 6), new(10, 4)])],
            Limits = [new(names[4], 7)],
            Marks = [new(names[5], 1), new("vanishes at 63°", 9)],
            Bands = [new(names[7], 2, 3)],
            WidthPx = widthPx,
        }.Draw());
        string told = string.Join(' ', drawing.Descendants(DrawnText.Svg + "text").Select(text => text.Value));

        Assert.DoesNotContain("…", told, StringComparison.Ordinal);
        Assert.All(names, name => Assert.Contains(name, told, StringComparison.Ordinal));
        Assert.Empty(DrawnText.OffTheSheet(drawing));
    }

    [Fact]
    public void Chart_NothingKnown_SaysSo()
    {
        string svg = ChainVoltage.Draw("chain", "winch feed", [new("Bank", 0, null, null), new("Winch", 3, double.NaN, null)], 20, 620, DisplayUnits.Metric, CultureInfo.InvariantCulture);

        Assert.Contains("Not known", svg, StringComparison.Ordinal);
        Assert.Empty(DrawnText.Parse(svg).Descendants(DrawnText.Svg + "polyline"));
    }

    [Fact]
    public void ChainVoltage_ALengthNotKnown_SaysThatPartsStandInOrder()
    {
        ChainPoint[] points = [.. Winch.Select(point => point.Name == "Plug" ? point with { AlongM = null } : point)];
        XElement drawing = DrawnText.Parse(ChainVoltage.Draw("chain", "winch feed", points, 20, 620, DisplayUnits.Metric, CultureInfo.InvariantCulture));
        double[] across = [.. ((string)drawing.Descendants(DrawnText.Svg + "polyline").First().Attribute("points")!).Split(' ').Select(pair => double.Parse(pair.Split(',')[0], CultureInfo.InvariantCulture))];

        Assert.Contains("Parts in order; lengths not known", drawing.Value, StringComparison.Ordinal);
        Assert.DoesNotContain("Along the run", drawing.Value, StringComparison.Ordinal);
        Assert.All(across.Zip(across.Skip(1), (one, next) => next - one), step => Assert.Equal(across[1] - across[0], step, 0.02));
        Assert.DoesNotContain(drawing.Descendants(DrawnText.Svg + "line"), line => (string?)line.Attribute("class") == "axis" && line.Number("x1") == line.Number("x2")); // no tick, no length to read off
    }

    [Fact]
    public void ChainVoltage_LengthsKnown_AreOnTheAxis()
    {
        XElement drawing = DrawnText.Parse(ChainVoltage.Draw("chain", "winch feed", Winch, 20, 620, DisplayUnits.Metric, CultureInfo.InvariantCulture));

        Assert.Contains("Along the run, m", drawing.Value, StringComparison.Ordinal);
        Assert.DoesNotContain("lengths not known", drawing.Value, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(25.6, 25.6)]
    [InlineData(0, 0)]
    [InlineData(25.6, 25.6000001)]
    [InlineData(-12, -12)]
    [InlineData(230000, 230000.001)]
    [InlineData(24.99, 25.01)]
    public void Scale_EmptyOrNearlyEmptyRange_HasAFewDifferentTicks(double least, double most)
    {
        ChartScale scale = new(AxisUnit.For("V", DisplayUnits.Metric), [least, most], 186, 26, 30, isRounded: true);
        string[] ticks = [.. scale.Ticks().Select(tick => tick.Number.ToString("0.######", CultureInfo.InvariantCulture))];

        Assert.InRange(ticks.Length, 2, 8);
        Assert.Equal(ticks.Distinct(), ticks);
        Assert.InRange(scale.At(least), 26 - 1e-6, 186 + 1e-6);
        Assert.InRange(scale.At(most), 26 - 1e-6, 186 + 1e-6);
    }

    [Fact]
    public void Chart_TooNarrow_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ChainVoltage.Draw("chain", "winch feed", Winch, 20, double.NaN, DisplayUnits.Metric, CultureInfo.InvariantCulture));
}
