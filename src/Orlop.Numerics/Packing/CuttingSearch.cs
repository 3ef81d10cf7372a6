namespace Orlop.Numerics.Packing;

/// <summary>Looks at every plan that may be better than the best so far, piece by piece, the longest first.</summary>
internal sealed class CuttingSearch(CuttingState state, CuttingState start)
{
    // Stocks that every piece goes with alike have the same number.
    private readonly int[] _likeness = LikenessOf(state.Input);
    private CuttingPlan _best = start.ToPlan(isProven: false);
    private double _leftOut;
    private int _steps;

    public CuttingPlan Run()
    {
        Try(0);
        return _best with { IsProven = _steps < state.Input.MostSteps };
    }

    private void Try(int index)
    {
        if (index == state.Order.Length)
        {
            if (state.Score < _best.Score)
            {
                _best = state.ToPlan(isProven: false);
            }

            return;
        }

        if (_steps++ >= state.Input.MostSteps || !(Reachable(index) < _best.Score))
        {
            return;
        }

        int piece = state.Order[index];
        HashSet<(double Left, double Length, int Likeness, bool IsOpen)> tried = [];
        foreach (int stock in Enumerable.Range(0, state.Left.Length).Where(stock => state.Fits(piece, stock)).OrderBy(stock => state.Input.Misfit(piece, stock)).ThenBy(stock => state.Left[stock]))
        {
            // Stocks that are alike give the same plans.
            if (tried.Add((state.Left[stock], state.Input.Stocks[stock], _likeness[stock], state.IsOpen[stock])))
            {
                bool wasWhole = state.Place(piece, stock);
                Try(index + 1);
                state.Undo(piece, stock, wasWhole);
            }
        }

        double length = state.Input.Pieces[piece];
        _leftOut += length;
        Try(index + 1);
        _leftOut -= length;
    }

    // No plan from here on is better than this: what is left out stays so; a remainder shorter than every piece to come, and too short to keep, is waste.
    private CuttingScore Reachable(int index)
    {
        double shortest = state.Input.Pieces[state.Order[^1]] + state.Input.CutLoss, waste = 0, opened = 0, room = 0;
        for (int stock = 0; stock < state.Left.Length; stock++)
        {
            double left = Math.Max(0, state.Left[stock] - state.Input.CutLoss);
            bool isSpent = state.Left[stock] + CuttingStock.Slack < shortest;
            waste += state.IsOpen[stock] && isSpent && left < state.Input.UsefulLength ? left : 0;
            opened += state.IsOpen[stock] ? state.Input.Stocks[stock] : 0;
            room += state.IsOpen[stock] && !isSpent ? state.Left[stock] : 0;
        }

        double toCome = 0;
        for (int k = index; k < state.Order.Length; k++)
        {
            toCome += state.Input.Pieces[state.Order[k]] + state.Input.CutLoss;
        }

        double more = toCome > room + CuttingStock.Slack ? LeastWhole() : 0;
        return new CuttingScore(_leftOut, state.Misfit, waste, opened + more);
    }

    // The shortest stock that is still whole: at least that much is opened where the pieces to come do not fit into what is.
    private double LeastWhole()
    {
        double least = double.PositiveInfinity;
        for (int stock = 0; stock < state.Left.Length; stock++)
        {
            least = state.IsOpen[stock] ? least : Math.Min(least, state.Input.Stocks[stock]);
        }

        return double.IsInfinity(least) ? 0 : least;
    }

    private static int[] LikenessOf(CuttingInput input)
    {
        Dictionary<string, int> seen = new(StringComparer.Ordinal);
        return [.. Enumerable.Range(0, input.Stocks.Length).Select(stock =>
        {
            string misfits = string.Join(',', Enumerable.Range(0, input.Pieces.Length).Select(piece => input.Misfit(piece, stock)));
            return seen.TryGetValue(misfits, out int number) ? number : seen[misfits] = seen.Count;
        })];
    }
}
