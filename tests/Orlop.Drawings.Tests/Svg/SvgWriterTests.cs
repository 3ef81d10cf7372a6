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
            LabelWish[] wishes = [.. things.Select((thing, index) => new LabelWish(new string('n', thing.Item3), boxes[index], ""))];
            IReadOnlyList<PlacedLabel> labels = LabelPlacer.Place(wishes, boxes, new Box(0, 0, 320, 170));
            return labels.Count == wishes.Length
                && !labels.Any(one => labels.Any(other => !ReferenceEquals(one, other) && one.Box.Overlaps(other.Box)));
        }, iter: 200);
}
