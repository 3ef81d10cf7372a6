namespace Orlop.Numerics.Packing;

/// <summary>
/// Cuts pieces from stocks with the least waste: a plan by fitting, then a search of all others that leaves out what cannot be better (branch and bound). A small
/// case is searched to its end and proven best; of a large one the plan by fitting may be proven by the bound of Martello and Toth.
/// </summary>
/// <remarks>Martello and Toth, "Knapsack Problems" (1990), chapter 8: bound L2; Gupta and Ho, "A new heuristic algorithm for the one-dimensional bin-packing problem" (1999): least slack.</remarks>
public static class CuttingStock
{
    internal const double Slack = 1e-9;

    /// <summary>The best plan found.</summary>
    public static CuttingPlan Plan(CuttingInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Check(input);
        CuttingState start = new(input);
        CuttingState best = StartingPlans.Of(input).MinBy(plan => plan.Score)!;
        if (best.Score <= LowerBound(input))
        {
            return best.ToPlan(isProven: true);
        }

        CuttingSearch search = new(start, best);
        return search.Run();
    }

    /// <summary>
    /// What no plan can be better than. Where all stocks are of one length and every remainder is waste, it is that of the fewest stocks that hold the pieces (L2);
    /// otherwise that all is placed without waste.
    /// </summary>
    public static CuttingScore LowerBound(CuttingInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (input.Stocks.Length == 0 || !double.IsInfinity(input.UsefulLength) || input.Stocks.Any(stock => Math.Abs(stock - input.Stocks[0]) > Slack))
        {
            return new CuttingScore(0, 0, 0, 0);
        }

        double length = input.Stocks[0];
        double opened = length * FewestStocks(input), pieces = input.Pieces.Sum();
        return new CuttingScore(0, 0, Math.Max(0, opened - pieces), opened);
    }

    /// <summary>Least number of stocks of one length that can hold the pieces: the bound L2 of Martello and Toth.</summary>
    public static int FewestStocks(CuttingInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        double length = input.Stocks[0] + input.CutLoss;
        double[] pieces = [.. input.Pieces.Select(piece => piece + input.CutLoss)];
        int most = (int)Math.Ceiling((pieces.Sum() / length) - Slack);
        foreach (double small in pieces.Where(piece => piece <= length / 2).Append(0).Distinct())
        {
            double[] large = [.. pieces.Where(piece => piece > length - small + Slack)], middle = [.. pieces.Where(piece => piece <= length - small + Slack && piece > (length / 2) + Slack)];
            double rest = pieces.Where(piece => piece <= (length / 2) + Slack && piece >= small - Slack).Sum() - ((middle.Length * length) - middle.Sum());
            most = Math.Max(most, large.Length + middle.Length + Math.Max(0, (int)Math.Ceiling((rest / length) - Slack)));
        }

        return most;
    }

    private static void Check(CuttingInput input)
    {
        if (input.Stocks.Any(stock => !(stock >= 0 && double.IsFinite(stock))) || input.Pieces.Any(piece => !(piece > 0 && double.IsFinite(piece))) || !(input.CutLoss >= 0) || !(input.UsefulLength >= 0))
        {
            throw new ArgumentOutOfRangeException(nameof(input), "Cutting stock: stocks from 0, pieces above 0, both finite; cut loss and useful length from 0.");
        }
    }
}

/// <summary>A plan in the making.</summary>
internal sealed class CuttingState
{
    private readonly CuttingInput _input;
    private readonly int?[] _stockOf;
    private int _misfit;
    private double _unplaced;

    public CuttingState(CuttingInput input)
    {
        _input = input;
        _stockOf = new int?[input.Pieces.Length];
        Left = [.. input.Stocks.Select(stock => stock + input.CutLoss)];
        IsOpen = new bool[Left.Length];
        _unplaced = input.Pieces.Sum();
        Order = [.. Enumerable.Range(0, input.Pieces.Length).OrderByDescending(piece => input.Pieces[piece])];
    }

    /// <summary>The input.</summary>
    public CuttingInput Input => _input;

    /// <summary>Pieces, the longest first.</summary>
    public int[] Order { get; }

    /// <summary>What is left of each stock, a cut's loss included.</summary>
    public double[] Left { get; }

    /// <summary>It is cut into.</summary>
    public bool[] IsOpen { get; }

    /// <summary>How the plan stands, the pieces not yet placed counted as left over.</summary>
    public CuttingScore Score
    {
        get
        {
            double waste = 0, opened = 0;
            for (int stock = 0; stock < Left.Length; stock++)
            {
                double left = Math.Max(0, Left[stock] - _input.CutLoss);
                waste += IsOpen[stock] && left < _input.UsefulLength ? left : 0;
                opened += IsOpen[stock] ? _input.Stocks[stock] : 0;
            }

            return new CuttingScore(_unplaced < CuttingStock.Slack ? 0 : _unplaced, _misfit, waste, opened);
        }
    }

    /// <summary>Misfits so far.</summary>
    public int Misfit => _misfit;

    /// <summary>The piece can be cut from what is left of the stock.</summary>
    public bool Fits(int piece, int stock) => Left[stock] + CuttingStock.Slack >= _input.Pieces[piece] + _input.CutLoss && _input.Misfit(piece, stock) is not null;

    /// <summary>Cuts it; gives back whether the stock was whole.</summary>
    public bool Place(int piece, int stock)
    {
        bool wasWhole = !IsOpen[stock];
        _stockOf[piece] = stock;
        Left[stock] -= _input.Pieces[piece] + _input.CutLoss;
        IsOpen[stock] = true;
        _misfit += _input.Misfit(piece, stock)!.Value;
        _unplaced -= _input.Pieces[piece];
        return wasWhole;
    }

    /// <summary>Takes it back.</summary>
    public void Undo(int piece, int stock, bool wasWhole)
    {
        _stockOf[piece] = null;
        Left[stock] += _input.Pieces[piece] + _input.CutLoss;
        IsOpen[stock] = !wasWhole;
        _misfit -= _input.Misfit(piece, stock)!.Value;
        _unplaced += _input.Pieces[piece];
    }

    /// <summary>The plan.</summary>
    public CuttingPlan ToPlan(bool isProven) => new([.. _stockOf], Score, isProven);
}
