using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Hull.Tests.Surfaces;

public sealed class FormFairnessTests
{
    public static TheoryData<StartingShape> Shapes => [.. Enum.GetValues<StartingShape>()];

    [Theory, MemberData(nameof(Shapes))]
    public void Find_StartingForms_AreFair(StartingShape shape) => Assert.Empty(FormFairness.Find(StartingForm.Create("start", shape, 12, 4, 2)));

    [Theory]
    [InlineData(3, 2, 0.08)]
    [InlineData(5, 1, -0.08)]
    [InlineData(6, 2, 0.06)]
    [InlineData(7, 1, 0.12)]
    public void Find_OnePointMisread_IsNamedAndPutRight(int section, int point, double errorM)
    {
        var form = StartingForm.Create("start", StartingShape.SingleChine, 12, 4, 2);
        var measured = form.Sections[section].Points[point];
        var points = form.Sections[section].Points.SetItem(point, measured with { HalfBreadthM = measured.HalfBreadthM + errorM });
        var doubt = Assert.Single(FormFairness.Find(form with { Sections = form.Sections.SetItem(section, form.Sections[section] with { Points = points }) }));
        Assert.Equal(form.Sections[section].Id, doubt.SectionId);
        Assert.Equal(point + 1, doubt.PointNumber);
        Assert.Equal(measured.HalfBreadthM, doubt.ExpectedHalfBreadthM, 0.02);
        Assert.Equal(Math.Abs(errorM), doubt.OffM, 0.02);
    }

    [Fact]
    public void Find_FaultyForm_LeavesTheFaultToTheCheck()
    {
        var form = StartingForm.Create("start", StartingShape.SingleChine, 12, 4, 2);
        Assert.Empty(FormFairness.Find(form with { Sections = form.Sections[..3] }));
        var broken = form.Sections[2] with { Points = form.Sections[2].Points.SetItem(0, new SectionPoint(double.NaN, 0, 0)) };
        Assert.Empty(FormFairness.Find(form with { Sections = form.Sections.SetItem(2, broken) }));
    }
}
