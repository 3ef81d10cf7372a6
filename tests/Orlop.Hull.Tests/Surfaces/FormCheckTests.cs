using System.Collections.Immutable;
using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Hull.Tests.Surfaces;

/// <summary>Bad hulls are refused with the place and the reason.</summary>
public sealed class FormCheckTests
{
    private static readonly HullForm Good = StartingForm.Create("good", StartingShape.SingleChine, 12, 4, 2);

    [Fact]
    public void Build_OneSection_IsRefused() =>
        AssertRefused(Good with { Sections = Good.Sections[..1] }, "good", "1 sections; at least 2");

    [Fact]
    public void Build_NoSections_IsRefused() =>
        AssertRefused(Good with { Sections = default }, "good", "0 sections");

    [Fact]
    public void Build_SectionOfOnePoint_IsRefused() =>
        AssertRefused(WithPoints(3, points => points[..1]), "station 0.3", "1 points; at least 2");

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-0.1)]
    [InlineData(3000)]
    public void Build_ImpossibleHalfBreadth_IsRefusedAtThePoint(double halfBreadthM) =>
        AssertRefused(WithPoints(4, points => points.SetItem(1, points[1] with { HalfBreadthM = halfBreadthM })), "station 0.4, point 2", "half-breadth");

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(1500)]
    public void Build_ImpossibleHeight_IsRefusedAtThePoint(double heightM) =>
        AssertRefused(WithPoints(4, points => points.SetItem(2, points[2] with { HeightM = heightM })), "station 0.4, point 3", "height");

    [Fact]
    public void Build_SectionsOutOfOrder_NamesTheSection() =>
        AssertRefused(Good with { Sections = Good.Sections.SetItem(3, Good.Sections[5]).SetItem(5, Good.Sections[3]) }, "station 0.4", "not forward of station 0.5");

    [Fact]
    public void Build_TwoSectionsAtOnePlaceThatDiffer_NamesTheSection()
    {
        var wider = Good.Sections[4] with { Id = "again", Points = [.. Good.Sections[4].Points.Select(point => point with { HalfBreadthM = 1.1 * point.HalfBreadthM })] };
        AssertRefused(Good with { Sections = Good.Sections.Insert(5, wider) }, "again", "not forward of station 0.4");
    }

    [Fact]
    public void Build_UpsideDown_NamesTheSection() =>
        AssertRefused(WithPoints(2, points => [.. points.Reverse()]), "station 0.2, point 1", "highest point");

    [Fact]
    public void Build_PointTwice_NamesThePoint() =>
        AssertRefused(WithPoints(2, points => points.Insert(1, points[0])), "station 0.2, point 2", "lies on the point before it");

    [Fact]
    public void Build_CrossedOutline_NamesThePoint()
    {
        var knot = HullSection.At("knot", 0, (0, 0, null), (2, 0.5, null), (1, 1.5, null), (1, 0.1, null), (2, 1.8, null));
        AssertRefused(new HullForm { Id = "h", Sections = [knot, HullSection.At("fore", 5, (0, 0, null), (2, 2, null))] }, "knot, point 3", "crosses");
    }

    [Fact]
    public void Build_LinesInAnotherOrder_IsRefused()
    {
        var one = HullSection.At("one", 0, (0, 0, null), (1, 0.5, "low"), (2, 1, "high"), (2, 2, null));
        var two = HullSection.At("two", 5, (0, 0, null), (1, 0.5, "high"), (2, 1, "low"), (2, 2, null));
        AssertRefused(new HullForm { Id = "h", Sections = [one, two] }, "h", "do not keep one order");
    }

    [Fact]
    public void Build_NoBreadthAnywhere_IsRefused()
    {
        var flat = HullSection.Profile("one", (0, 0, null), (0, 1, null));
        AssertRefused(new HullForm { Id = "h", Sections = [flat, HullSection.Profile("two", (5, 0, null), (5, 1, null))] }, "h", "no point has any breadth");
    }

    [Fact]
    public void Build_SidesThatDoNotMeet_NamesThePoint()
    {
        var starboard = Good.Sections.SetItem(2, Good.Sections[2] with { Points = Good.Sections[2].Points.SetItem(0, new SectionPoint(2.4, 0, 0.2)) });
        AssertRefused(Good with { StarboardSections = starboard }, "station 0.2, point 1", "does not meet");
    }

    [Fact]
    public void Build_SidesOfOtherCounts_IsRefused() =>
        AssertRefused(Good with { StarboardSections = Good.Sections[1..] }, "good", "each needs its other half");

    [Fact]
    public void Build_EqualSidesGivenApart_IsTheSymmetricHull()
    {
        var apart = HullSurface.Build(Good with { StarboardSections = Good.Sections }).Surface!;
        var together = HullSurface.Build(Good).Surface!;
        Assert.Equal(together.SignedVolumeM3, apart.SignedVolumeM3, 1e-12);
    }

    [Fact]
    public void Build_WiderToStarboard_HasHalfOfEachVolume()
    {
        HullSection Wider(HullSection section) => section with { Points = [.. section.Points.Select(point => point with { HalfBreadthM = 1.5 * point.HalfBreadthM })] };
        var wide = Good with { StarboardSections = [.. Good.Sections.Select(Wider)] };
        var built = HullSurface.Build(wide);
        Assert.Empty(built.Problems);
        Assert.Equal(1.25 * HullSurface.Build(Good).Surface!.SignedVolumeM3, built.Surface!.SignedVolumeM3, 0.01);
    }

    [Fact]
    public void Build_LineThatRunsOut_IsPlacedByItsShareOfTheGirth()
    {
        var noChineForward = Good.Sections.SetItem(9, Good.Sections[9] with { Points = [.. Good.Sections[9].Points.Select(point => point with { Line = null })] });
        var built = HullSurface.Build(Good with { Sections = noChineForward });
        Assert.Empty(built.Problems);
        Assert.Equal(HullSurface.Build(Good).Surface!.SignedVolumeM3, built.Surface!.SignedVolumeM3, 0.3);
    }

    private static HullForm WithPoints(int section, Func<ImmutableArray<SectionPoint>, ImmutableArray<SectionPoint>> change) =>
        Good with { Sections = Good.Sections.SetItem(section, Good.Sections[section] with { Points = change(Good.Sections[section].Points) }) };

    private static void AssertRefused(HullForm form, string place, string reason)
    {
        var built = HullSurface.Build(form);
        Assert.Null(built.Surface);
        Assert.Contains(built.Problems, problem => problem.ToString().StartsWith(place, StringComparison.Ordinal) && problem.Message.Contains(reason, StringComparison.Ordinal));
    }
}
