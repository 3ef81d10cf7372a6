using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Hull.Tests.Surfaces;

public sealed class FormCurvesTests
{
    public static TheoryData<StartingShape> Shapes => [.. Enum.GetValues<StartingShape>()];

    [Theory, MemberData(nameof(Shapes))]
    public void Of_EveryStartingForm_PassesThroughItsPoints(StartingShape shape)
    {
        var form = StartingForm.Create("start", shape, 12, 4, 2);
        var curves = FormCurves.Of(form);
        Assert.True(curves.IsSmooth);
        Assert.Same(curves.Port, curves.Starboard);
        Assert.Equal("keel", curves.Port.Lines[0].Name);
        Assert.Equal("deck edge", curves.Port.Lines[^1].Name);
        foreach (var (section, curve) in form.Sections.Zip(curves.Port.Sections))
        {
            Assert.All(section.Points.Where(point => point.Line is not null).Append(section.Points[0]).Append(section.Points[^1]),
                point => Assert.Contains(curve, on => (on - new Point3(point.XM, point.HalfBreadthM, point.HeightM)).LengthM < 1e-12));
        }
    }

    // A box 12 m long and 4 m wide, its ends square.
    [Fact]
    public void Waterline_OfABox_IsItsSide()
    {
        var line = Assert.Single(FormCurves.Of(StartingForm.Create("box", StartingShape.Box, 12, 4, 2)).Port.Waterline(0.8));
        Assert.All(line, point => Assert.Equal(2, point.YM, 1e-12));
        Assert.Equal((0, 12), (line[0].XM, line[^1].XM));
        Assert.Empty(FormCurves.Of(StartingForm.Create("box", StartingShape.Box, 12, 4, 2)).Port.Waterline(2.5));
    }

    // The barge's bottom rises on a straight rake from the foot at 1.44 m to 1.2 m high at x 0: at height 0.6 m the waterline begins half way.
    [Fact]
    public void Waterline_OfABarge_EndsOnTheRake()
    {
        var line = Assert.Single(FormCurves.Of(StartingForm.Create("barge", StartingShape.Barge, 12, 4, 2)).Port.Waterline(0.6));
        Assert.Equal(0.72, line[0].XM, 1e-9);
    }

    [Fact]
    public void Of_FaultyForm_IsDrawnStraight()
    {
        var form = StartingForm.Create("start", StartingShape.SingleChine, 12, 4, 2);
        var broken = form with { Sections = form.Sections.SetItem(3, form.Sections[3] with { Points = [new SectionPoint(3, -1, 0), new SectionPoint(3, 2, 1)] }) };
        var curves = FormCurves.Of(broken);
        Assert.False(curves.IsSmooth);
        Assert.Equal(broken.Sections.Length, curves.Port.Sections.Length);
    }

    // Station 4 of a hull 12 m long, moved on its neighbours, past them and far off: curves along it would have no numbers.
    [Theory]
    [InlineData(0)]
    [InlineData(2.4)]
    [InlineData(4.8)]
    [InlineData(8)]
    [InlineData(-3)]
    public void Of_SectionsOutOfOrder_AreDrawnStraightAndFinite(double xM)
    {
        var form = StartingForm.Create("start", StartingShape.RoundBilge, 12, 4, 2);
        var moved = form with { Sections = form.Sections.SetItem(3, form.Sections[3] with { Points = [.. form.Sections[3].Points.Select(point => point with { XM = xM })] }) };
        var curves = FormCurves.Of(moved);
        Assert.False(curves.IsSmooth);
        Assert.All(curves.Port.Lines.SelectMany(line => line.Points), point => Assert.True(point.IsFinite));
        Assert.NotEmpty(HullSurface.Build(moved).Problems);
    }

    [Fact]
    public void Of_SectionsThatAreTheSame_IsRefusedAndDrawnFinite()
    {
        var form = StartingForm.Create("start", StartingShape.RoundBilge, 12, 4, 2);
        var twice = form with { Sections = form.Sections.Insert(4, form.Sections[4] with { Id = "again" }) };
        Assert.False(FormCurves.Of(twice).IsSmooth);
        Assert.Contains(HullSurface.Build(twice).Problems, problem => problem.Message.Contains("not forward of", StringComparison.Ordinal));
    }
}
