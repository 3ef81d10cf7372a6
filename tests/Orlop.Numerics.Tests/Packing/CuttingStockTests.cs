using Orlop.Numerics.Packing;
using Xunit;

namespace Orlop.Numerics.Tests.Packing;

public sealed class CuttingStockTests
{
    /// <summary>Every way of giving pieces to stocks, tried one by one: none is better than the plan, and the plan says that it is proven.</summary>
    [Fact]
    public void Plan_SmallRandomCases_IsTheBestOfAll()
    {
        for (int seed = 0; seed < 80; seed++)
        {
            CuttingInput input = RandomInput(seed);
            CuttingPlan plan = CuttingStock.Plan(input);

            Assert.True(plan.IsProven, $"seed {seed}");
            Assert.Equal(0, Best(input).CompareTo(plan.Score));
            Assert.Equal(0, Score(input, [.. plan.StockOf])!.Value.CompareTo(plan.Score));
        }
    }

    [Fact]
    public void Plan_OffcutThatIsLongEnough_IsTakenBeforeTheReel()
    {
        CuttingPlan plan = CuttingStock.Plan(new CuttingInput { Stocks = [38, 4.1], Pieces = [3.9], UsefulLength = 1 });
        Assert.Equal([0], plan.StockOf.Select(stock => stock ?? -1));

        CuttingPlan snug = CuttingStock.Plan(new CuttingInput { Stocks = [38, 4.1], Pieces = [4.1], UsefulLength = 1 });
        Assert.Equal([1], snug.StockOf.Select(stock => stock ?? -1));
    }

    /// <summary>Fitting the longest piece into the shortest reel first leaves one piece over here; the search finds room for all.</summary>
    [Fact]
    public void Plan_WhereFittingInOrderLeavesAPieceOver_PlacesAll()
    {
        CuttingPlan plan = CuttingStock.Plan(new CuttingInput { Stocks = [10, 9], Pieces = [5, 4, 4, 3, 3] });
        Assert.Equal((0, 0), (plan.Score.Unplaced, plan.Score.Waste));
        Assert.DoesNotContain(null, plan.StockOf);
    }

    /// <summary>A cut between two pieces loses its width: a stock and its pieces, each longer by it, are the same problem without a loss.</summary>
    [Fact]
    public void Plan_CutLoss_IsTheSameProblemWithLongerPieces()
    {
        for (int seed = 300; seed < 330; seed++)
        {
            CuttingInput input = RandomInput(seed) with { UsefulLength = double.PositiveInfinity };
            CuttingPlan with = CuttingStock.Plan(input with { CutLoss = 0.3 });
            CuttingPlan longer = CuttingStock.Plan(input with { Stocks = [.. input.Stocks.Select(stock => stock + 0.3)], Pieces = [.. input.Pieces.Select(piece => piece + 0.3)] });
            Assert.Equal(longer.StockOf.Contains(null), with.Score.Unplaced > 0);
        }
    }

    [Fact]
    public void Plan_PieceLongerThanEveryStock_IsLeftOver_AndAForbiddenStockIsNotUsed()
    {
        Assert.Equal(9, CuttingStock.Plan(new CuttingInput { Stocks = [5, 8], Pieces = [9, 4] }).Score.Unplaced);
        CuttingPlan apart = CuttingStock.Plan(new CuttingInput { Stocks = [5, 8], Pieces = [4, 4], Misfit = (piece, stock) => stock == 0 ? null : 0 });
        Assert.Equal([1, 1], apart.StockOf.Select(stock => stock ?? -1));
    }

    [Theory]
    [InlineData(double.NaN, 1)]
    [InlineData(-1, 1)]
    [InlineData(5, 0)]
    [InlineData(5, double.PositiveInfinity)]
    public void Plan_LengthThatCannotBe_IsRefused(double stock, double piece) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CuttingStock.Plan(new CuttingInput { Stocks = [stock], Pieces = [piece] }));

    private static CuttingInput RandomInput(int seed)
    {
        Random random = new(seed);
        int[] misfits = [.. Enumerable.Range(0, 30).Select(_ => random.Next(4) == 0 ? 1 : 0)];
        return new CuttingInput
        {
            Stocks = [.. Enumerable.Range(0, 2 + random.Next(2)).Select(_ => (double)random.Next(4, 20))],
            Pieces = [.. Enumerable.Range(0, 3 + random.Next(4)).Select(_ => (double)random.Next(1, 9))],
            UsefulLength = random.Next(3) == 0 ? double.PositiveInfinity : random.Next(1, 5),
            Misfit = (piece, stock) => misfits[(piece * 3) + stock],
        };
    }

    private static CuttingScore Best(CuttingInput input)
    {
        CuttingScore? best = null;
        int choices = input.Stocks.Length + 1;
        for (int code = 0; code < (int)Math.Pow(choices, input.Pieces.Length); code++)
        {
            int rest = code;
            int?[] stockOf = new int?[input.Pieces.Length];
            for (int piece = 0; piece < stockOf.Length; piece++)
            {
                stockOf[piece] = rest % choices == input.Stocks.Length ? null : rest % choices;
                rest /= choices;
            }

            if (Score(input, stockOf) is { } score && (best is null || score < best))
            {
                best = score;
            }
        }

        return best!.Value;
    }

    private static CuttingScore? Score(CuttingInput input, int?[] stockOf)
    {
        double waste = 0, opened = 0, unplaced = 0;
        int misfit = 0;
        for (int stock = 0; stock < input.Stocks.Length; stock++)
        {
            int[] cut = [.. Enumerable.Range(0, stockOf.Length).Where(piece => stockOf[piece] == stock)];
            double left = input.Stocks[stock] - cut.Sum(piece => input.Pieces[piece]);
            if (left < 0)
            {
                return null;
            }

            misfit += cut.Sum(piece => input.Misfit(piece, stock)!.Value);
            waste += cut.Length > 0 && left < input.UsefulLength ? left : 0;
            opened += cut.Length > 0 ? input.Stocks[stock] : 0;
        }

        unplaced = Enumerable.Range(0, stockOf.Length).Where(piece => stockOf[piece] is null).Sum(piece => input.Pieces[piece]);
        return new CuttingScore(unplaced, misfit, waste, opened);
    }
}
