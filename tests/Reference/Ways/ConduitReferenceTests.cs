using Orlop.Electrics.Ways;
using Orlop.Review.Practices;
using Xunit;

namespace Orlop.Reference.Tests.Ways;

/// <summary>Source: US NFPA 70 (NEC), chapter 9, and worked examples from it.</summary>
public sealed class ConduitReferenceTests
{
    private const double Mm2PerIn2 = 645.16;

    private static readonly IReadOnlyList<ReferenceRow> Rows = ReferenceCsv.Load("work-conduit-cases.csv", 10);

    [Theory]
    [InlineData("percent_one_conductor", LimitIds.ConduitFillOneFraction)]
    [InlineData("percent_two_conductors", LimitIds.ConduitFillTwoFraction)]
    [InlineData("percent_over_two", LimitIds.ConduitFillMoreFraction)]
    [InlineData("percent_nipple_up_to_24in", LimitIds.ConduitFillShortFraction)]
    public void Limit_OfEveryPractice_IsThePublished(string quantity, string limit)
    {
        ReferenceRow row = Row(quantity);
        Assert.All(PracticeFiles.ById.Values, practice => row.Agrees(row.Number("expected"), 100 * practice.Limits[limit].Value, 1e-9));
    }

    [Fact]
    public void Examples_Agree()
    {
        double[] mixed = [0.0133, 0.0211, 0.0366, 0.0366, 0.0366];
        ReferenceRow total = Row("total_conductor_area_in2"), size = Row("smallest_trade_size_in"), used = Row("used_percent"), left = Row("remaining_useful_percent");
        total.Agrees(total.Number("expected"), Fraction(1, mixed), total.Number("tolerance"));
        (double Size, double LimitIn2)[] conduits = [(0.5, 0.125), (0.75, 0.220)];
        size.Agrees(size.Number("expected"), conduits.First(conduit => Fraction(conduit.LimitIn2, mixed) <= 1).Size, 0);
        double six = 100 * Fraction(0.864, Enumerable.Repeat(0.0243, 6));
        used.Agrees(used.Number("expected"), six, used.Number("tolerance"));
        left.Agrees(left.Number("expected"), (100 * PracticeFiles.ById["us-federal"].Limits[LimitIds.ConduitFillMoreFraction].Value) - six, left.Number("tolerance"));
    }

    private static double Fraction(double insideIn2, IEnumerable<double> cablesIn2) => ConduitFill.Fraction(insideIn2 * Mm2PerIn2, cablesIn2.Select(area => area * Mm2PerIn2));

    private static ReferenceRow Row(string quantity) => Rows.Single(row => row.Text("quantity") == quantity);
}
