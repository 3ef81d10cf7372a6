using System.Xml.Linq;
using CsCheck;
using Orlop.Drawings.Svg;
using Xunit;

namespace Orlop.Drawings.Tests.Svg;

public sealed class SvgWriterTests
{
    [Fact]
    public void Text_AnyString_StaysText() => Gen.String.Sample(name =>
    {
        string svg = new SvgWriter().Start("svg").StartThing(name, name, isInteractive: true).End().End().ToString();
        XElement root = XDocument.Parse(svg).Root!;
        return root.Descendants().Count() == 2;
    }, iter: 5000);

    [Fact]
    public void Text_HostileName_IsEscaped()
    {
        const string Hostile = "\"><script>alert('x')</script>&\u0000";
        string svg = new SvgWriter().Start("svg").Text(0, 0, Hostile).StartThing(Hostile, Hostile, isInteractive: false).End().End().ToString();

        Assert.DoesNotContain("<script", svg, StringComparison.Ordinal);
        Assert.Equal("\"><script>alert('x')</script>& ", XDocument.Parse(svg).Root!.Elements().First().Value);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Number_NotFinite_IsRefused(double number) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new SvgWriter().Line(0, 0, number, 0, "fine"));

    [Fact]
    public void ToString_OpenElement_IsRefused() => Assert.Throws<InvalidOperationException>(() => new SvgWriter().Start("svg").ToString());

    [Theory]
    [InlineData(0.31, 0.5)]
    [InlineData(1, 1)]
    [InlineData(1.01, 2)]
    [InlineData(3, 5)]
    [InlineData(700, 1000)]
    public void RoundSteps_AtLeast_IsOneTwoOrFive(double step, double expected) => Assert.Equal(expected, RoundSteps.AtLeast(step), 1e-9);

    [Fact]
    public void Labels_ManyInLittleRoom_NeverOverlap() =>
        Gen.Select(Gen.Double[0, 300], Gen.Double[0, 150], Gen.Int[1, 30]).Array[1, 40].Sample(things =>
        {
            Box[] boxes = [.. things.Select(thing => new Box(thing.Item1, thing.Item2, 12, 8))];
            LabelWish[] wishes = [.. things.Select((thing, index) => new LabelWish("thing", new string('n', thing.Item3), boxes[index], ""))];
            IReadOnlyList<PlacedLabel> labels = LabelPlacer.Place(wishes, new LabelObstacles(boxes, [], []), new Box(0, 0, 320, 170));
            return labels.Count == wishes.Length
                && !labels.Any(one => labels.Any(other => !ReferenceEquals(one, other) && one.Box.Overlaps(other.Box)));
        }, iter: 200);

    [Fact]
    public void Labels_BesideTheirThing_NeverStandOnALine() =>
        Gen.Select(Gen.Double[0, 300], Gen.Double[0, 150], Gen.Double[0, 300], Gen.Double[0, 150]).Array[1, 12].Sample(lines =>
        {
            Segment[] segments = [.. lines.Select(line => new Segment(new(line.Item1, line.Item2), new(line.Item3, line.Item4)))];
            Box[] boxes = [.. segments.Select(line => Box.Around(line.From, 5, 5))];
            LabelWish[] wishes = [.. boxes.Select(box => new LabelWish("thing", "Main fuse", box, "", IsNeeded: false))];
            return LabelPlacer.Place(wishes, new LabelObstacles(boxes, segments, []), new Box(0, 0, 320, 170)).All(label => !segments.Any(line => line.Crosses(label.Box)));
        }, iter: 300);

    [Theory]
    [InlineData(-5, 5, 15, 5, true)] // right through
    [InlineData(2, 2, 3, 3, true)] // inside
    [InlineData(-5, 12, 15, 12, false)] // below
    [InlineData(-5, 5, -1, 5, false)] // ends before it
    [InlineData(-4, 8, 4, 14, false)] // past a corner
    [InlineData(0, 0, 10, 0, false)] // along its edge
    public void Segment_Crosses_OnlyWhatItEnters(double x1, double y1, double x2, double y2, bool expected) =>
        Assert.Equal(expected, new Segment(new(x1, y1), new(x2, y2)).Crosses(new Box(0, 0, 10, 10)));
}
