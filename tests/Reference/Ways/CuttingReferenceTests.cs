using System.Collections.Immutable;
using System.Globalization;
using Orlop.Numerics.Packing;
using Xunit;

namespace Orlop.Reference.Tests.Ways;

/// <summary>Source: OR-Library binpack1 (Falkenauer 1996), an open encyclopedia's example, Chvátal, "Linear Programming". The optima are proven by bound and packing.</summary>
public sealed class CuttingReferenceTests
{
    private static readonly IReadOnlyList<ReferenceRow> Rows = ReferenceCsv.Load("structure-cutting-1d.csv", 259);

    [Theory]
    [InlineData("falkenauer_u120_00")]
    [InlineData("falkenauer_u120_01")]
    [InlineData("falkenauer_u120_02")]
    [InlineData("falkenauer_u120_09")]
    public void Plan_IsTheOptimum_AndProven(string instance)
    {
        (CuttingInput input, int optimum, _) = Read(instance);
        CuttingPlan plan = CuttingStock.Plan(input);

        Assert.Equal(optimum, plan.StockOf.Distinct().Count());
        Assert.True(plan.IsProven);
    }

    // Large cases are not searched to the end: the plan says so, and lies between the bound and what fitting in order gives.
    [Theory]
    [InlineData("paper_rolls_5600")]
    [InlineData("chvatal_100in")]
    public void Plan_OfManyPieces_LiesBetweenBoundAndFittingInOrder(string instance)
    {
        (CuttingInput input, int optimum, int inOrder) = Read(instance);
        CuttingPlan plan = CuttingStock.Plan(input with { MostSteps = 2000 });
        int used = plan.StockOf.Distinct().Count();

        Assert.DoesNotContain(null, plan.StockOf);
        Assert.InRange(used, optimum, inOrder);
        Assert.True(CuttingStock.FewestStocks(input) <= optimum);
        Assert.True(!plan.IsProven || used == optimum);
    }

    private static (CuttingInput Input, int Optimum, int InOrder) Read(string instance)
    {
        ReferenceRow[] rows = [.. Rows.Where(row => row.Text("instance") == instance)];
        double stock = rows[0].Number("stock_length");
        ImmutableArray<double> pieces = [.. rows.SelectMany(row => Enumerable.Repeat(row.Number("piece_length"), (int)row.Number("quantity")))];
        int inOrder = int.Parse(rows[0].Text("ffd_stock_count"), CultureInfo.InvariantCulture);
        return (new CuttingInput { Stocks = [.. Enumerable.Repeat(stock, inOrder)], Pieces = pieces }, int.Parse(rows[0].Text("optimum_stock_count"), CultureInfo.InvariantCulture), inOrder);
    }
}
