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

    // Half-breadths and heights that are cubics of x, keel and knuckle too: Lagrange through four of them gives the fifth exactly.
    private static HullForm Cubic(double bumpM = 0, string? knuckle = null, double knuckleM = 0) => new()
    {
        Id = "cubic",
        Sections =
        [
            .. Enumerable.Range(0, 9).Select(i => HullSection.At($"S{i}", i,
                (0, 0.01 * i * i, null),
                (1.2 + (0.05 * i) - (0.008 * i * i) + (0.0006 * i * i * i) + (i == 4 ? bumpM : 0) + knuckleM, 0.5 + (0.002 * i * i * i), knuckle),
                (1.4 + (0.05 * i) - (0.008 * i * i), 1.5 + (0.01 * i * i), null))),
        ],
    };

    [Fact]
    public void Find_CubicAlongTheBoat_IsFair() => Assert.Empty(FormFairness.Find(Cubic()));

    [Theory]
    [InlineData(0.05)]
    [InlineData(-0.05)]
    public void Find_PointOfACubicDisplaced_IsNamedByAsMuchAndItsSide(double bumpM)
    {
        var doubt = Assert.Single(FormFairness.Find(Cubic(bumpM)));
        Assert.Equal(("S4", 2, FormRun.AlongTheBoat), (doubt.SectionId, doubt.PointNumber, doubt.Run));
        Assert.Equal(0.05, doubt.OffM, 1e-12);
        Assert.Equal((bumpM, 0), (doubt.WideM, doubt.HighM), (one, other) => Math.Abs(one.Item1 - other.Item1) < 1e-12 && Math.Abs(one.Item2 - other.Item2) < 1e-12);
        // Square out of the outline it is a little less: the side leans.
        Assert.InRange(doubt.OutwardM / bumpM, 0.5, 1);
        Assert.Equal(Cubic().Sections[4].Points[1].HalfBreadthM, doubt.ExpectedHalfBreadthM, 1e-12);
    }

    [Fact]
    public void Find_KnuckleOnEverySection_IsNotUnfair() => Assert.Empty(FormFairness.Find(Cubic(knuckle: "knuckle", knuckleM: 0.3)));

    // Points on a parabola, one put off level on the second section, which the run along the boat does not judge; the outline leans 45 degrees there.
    [Fact]
    public void Find_PointOffItsOwnSection_IsNamedRoundTheSection()
    {
        static HullForm Form(double bumpM, string? line) => new()
        {
            Id = "round",
            Sections =
            [
                .. Enumerable.Range(0, 7).Select(i => new HullSection
                {
                    Id = $"S{i}",
                    Points = [.. Enumerable.Range(0, 7).Select(p => new SectionPoint(i, (0.3 * p) + ((line is not null || i == 1) && p == 3 ? bumpM : 0), 0.05 * p * p, p == 3 ? line : null))],
                }),
            ],
        };

        Assert.Empty(FormFairness.Find(Form(0, null)));
        var doubt = Assert.Single(FormFairness.Find(Form(0.06, null)));
        Assert.Equal(("S1", 4, FormRun.RoundTheSection), (doubt.SectionId, doubt.PointNumber, doubt.Run));
        Assert.Equal(0.06 / Math.Sqrt(2), doubt.OutwardM, 0.005);
        Assert.Empty(FormFairness.Find(Form(0.06, "knuckle")));
    }
}
