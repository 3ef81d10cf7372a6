namespace Orlop.Numerics.Packing;

/// <summary>Plans made without a search, to start one from.</summary>
internal static class StartingPlans
{
    // How many fillings of one stock are looked at.
    private const int MostFillings = 20_000;

    // Of what must be left over in a stock on average, this much is taken as good enough: the best filling of one stock may spoil the others.
    private static readonly double[] GoodEnough = [0, 0.1, 0.25, 0.5, 0.75, 1, 1.25, 1.5, 1.75, 2, 3, 4];

    public static IEnumerable<CuttingState> Of(CuttingInput input)
    {
        double spare = input.Stocks.IsEmpty ? 0 : CuttingStock.LowerBound(input).Waste / Math.Max(1, CuttingStock.FewestStocks(input));
        return [BestFit(input), .. GoodEnough.Take(spare > 0 ? GoodEnough.Length : 1).Select(share => LeastSlack(input, share * spare))];
    }

    // The longest piece first, each from the stock that goes with it best and holds it most tightly.
    private static CuttingState BestFit(CuttingInput input)
    {
        CuttingState state = new(input);
        foreach (int piece in state.Order)
        {
            int[] holding = [.. Enumerable.Range(0, state.Left.Length).Where(stock => state.Fits(piece, stock))];
            if (holding.Length > 0)
            {
                state.Place(piece, holding.OrderBy(stock => input.Misfit(piece, stock)).ThenBy(stock => state.Left[stock]).ThenBy(stock => stock).First());
            }
        }

        return state;
    }

    // Stock by stock: the longest piece that is left, and those beside it that leave the least, or little enough.
    private static CuttingState LeastSlack(CuttingInput input, double enough)
    {
        CuttingState state = new(input);
        List<int> open = [.. state.Order];
        foreach (int stock in Enumerable.Range(0, state.Left.Length).OrderBy(stock => state.Left[stock]).ThenBy(stock => stock))
        {
            int first = open.FindIndex(piece => state.Fits(piece, stock) && input.Misfit(piece, stock) == 0);
            if (first < 0)
            {
                continue;
            }

            int leading = open[first];
            double room = state.Left[stock] - input.Pieces[leading] - input.CutLoss;
            int[] beside = [.. open.Where(piece => piece != leading && input.Misfit(piece, stock) == 0)];
            foreach (int piece in new Filling(beside, [.. beside.Select(piece => input.Pieces[piece] + input.CutLoss)], room, enough).Best().Prepend(leading))
            {
                state.Place(piece, stock);
                open.Remove(piece);
            }
        }

        return state;
    }

    // The subset of lengths, the longest first, that fills a room best.
    private sealed class Filling(int[] pieces, double[] lengths, double room, double enough)
    {
        private readonly List<int> _chosen = [];
        private int[] _best = [];
        private double _bestLeft = double.PositiveInfinity;
        private int _steps;

        public IEnumerable<int> Best()
        {
            _bestLeft = room;
            Try(0, room);
            return _best.Select(index => pieces[index]);
        }

        private void Try(int from, double left)
        {
            if (left < _bestLeft - CuttingStock.Slack)
            {
                (_bestLeft, _best) = (left, [.. _chosen]);
            }

            for (int index = from; index < pieces.Length && _bestLeft > enough + CuttingStock.Slack && _steps < MostFillings; index++)
            {
                bool isSameAsSkipped = index > from && Math.Abs(lengths[index] - lengths[index - 1]) < CuttingStock.Slack;
                if (lengths[index] <= left + CuttingStock.Slack && !isSameAsSkipped)
                {
                    _steps++;
                    _chosen.Add(index);
                    Try(index + 1, left - lengths[index]);
                    _chosen.RemoveAt(_chosen.Count - 1);
                }
            }
        }
    }
}
