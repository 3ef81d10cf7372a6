using System.Globalization;
using System.Xml.Linq;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Drawings.Boats;
using Orlop.Presentation.Quantities;
using Xunit;

namespace Orlop.Drawings.Tests.Boats;

public sealed class BoatLabelTests
{
    public static TheoryData<double, bool, DisplayUnits> Sheets => new()
    {
        { 340, false, DisplayUnits.Metric }, { 340, true, DisplayUnits.Us }, { 760, false, DisplayUnits.Metric }, { 760, true, DisplayUnits.Us },
        { 1400, true, DisplayUnits.Metric }, { 3100, false, DisplayUnits.Metric },
    };

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Words_ExampleAndItsDrafts_NeitherOverlapNorLeaveTheSheet(double width, bool showsSpaces, DisplayUnits units)
    {
        BoatDrawingOptions options = new() { WidthPx = width, ShowsSpaces = showsSpaces, Units = units, IsInteractive = true };

        Assert.True(SampleBoats.ExampleDrafts.Count > 1);
        foreach (BoatModel? draft in SampleBoats.ExampleDrafts)
        {
            XElement drawing = DrawnText.Parse(BoatDrawing.All(SampleBoats.Example, draft, options));

            Assert.Empty(DrawnText.Overlaps(drawing.Descendants(DrawnText.Svg + "text")));
            Assert.Empty(DrawnText.OffTheSheet(drawing));
        }
    }

    [Theory]
    [InlineData(100)]
    [InlineData(50)]
    public void Words_OnPaper_NeitherOverlapNorLeaveTheSheet(double denominator)
    {
        XElement drawing = DrawnText.Parse(BoatDrawing.All(SampleBoats.Example, SampleBoats.ExampleDrafts[^1], new BoatDrawingOptions { ScaleDenominatorRatio = denominator }));

        Assert.Empty(DrawnText.Overlaps(drawing.Descendants(DrawnText.Svg + "text")));
        Assert.Empty(DrawnText.OffTheSheet(drawing));
    }

    [Fact]
    public void Zoomed_TheExample_NamesMore()
    {
        int[] named = [.. new[] { 340.0, 760, 1400, 3000 }.Select(width => NamedIds(width, null).Count)];

        Assert.Equal(named.Order(), named);
        Assert.True(named[^1] > 2 * named[0]);
    }

    [Theory]
    [InlineData(340)]
    [InlineData(760)]
    public void LeftOut_IsCountedOnTheSheet(double width)
    {
        int things = SampleBoats.Example.Things.Count(thing => thing is Part { Place: not null } or Gear { Place: not null } or Compass { Place: not null } or Deadweight { Place: not null } or Tank or HullOpening { Place: not null });
        string count = (things - NamedIds(width, null).Count).ToString(CultureInfo.InvariantCulture);

        Assert.Contains($"{count} more named when zoomed in.", BoatDrawing.All(SampleBoats.Example, null, Options(width, null)), StringComparison.Ordinal);
        Assert.Contains($"{count} things are drawn without a name", BoatDrawing.All(SampleBoats.Example, null, Options(width, null) with { IsInteractive = false }), StringComparison.Ordinal);
    }

    [Fact]
    public void Chosen_IsAlwaysNamed()
    {
        string[] hidden = [.. SampleBoats.Example.Things.Where(thing => thing is Part { Place: not null }).Select(thing => thing.Id).Except(NamedIds(340, null))];

        Assert.NotEmpty(hidden);
        Assert.All(hidden.Where((_, index) => index % 12 == 0), id => Assert.Contains(id, NamedIds(340, id)));
    }

    [Fact]
    public void Legend_SaysWhatTheMarksAre_OnlyWhereThereAreAny()
    {
        string[] words = ["added or changed", "taken out", "moved"];
        XElement draft = DrawnText.Parse(BoatDrawing.All(SampleBoats.Example, SampleBoats.ExampleDrafts[^1], new BoatDrawingOptions()));
        XElement legend = draft.Descendants(DrawnText.Svg + "g").Single(group => ((string?)group.Attribute("class"))?.Contains("legend", StringComparison.Ordinal) == true);

        Assert.All(words, word => Assert.Contains(word, legend.Value, StringComparison.Ordinal));
        Assert.DoesNotContain(words[1], BoatDrawing.All(SampleBoats.Example, null, new BoatDrawingOptions()), StringComparison.Ordinal);
    }

    [Fact]
    public void Names_OfThings_HoldWhatIsDrawnBesideThem()
    {
        XElement drawing = DrawnText.Parse(BoatDrawing.All(SampleBoats.Example, null, Options(1400, null)));
        Dictionary<string, string> names = drawing.Descendants(DrawnText.Svg + "g").Where(group => group.Attribute("aria-label") is not null)
            .GroupBy(group => (string)group.Attribute("data-id")!).ToDictionary(group => group.Key, group => (string)group.First().Attribute("aria-label")!);
        XElement[] labels = [.. drawing.Descendants(DrawnText.Svg + "text").Where(text => text.Attribute("data-names") is not null)];

        Assert.NotEmpty(labels);
        Assert.All(labels, label => Assert.Contains(label.Value.Split('…')[0].Split(" and ")[0], names[(string)label.Attribute("data-names")!], StringComparison.Ordinal));
    }

    private static HashSet<string> NamedIds(double width, string? selectedId) =>
        [.. DrawnText.Parse(BoatDrawing.All(SampleBoats.Example, null, Options(width, selectedId))).Descendants(DrawnText.Svg + "text").Select(text => (string?)text.Attribute("data-names")).OfType<string>()];

    private static BoatDrawingOptions Options(double width, string? selectedId) => new() { WidthPx = width, SelectedId = selectedId, IsInteractive = true, SectionsXM = [] };
}
