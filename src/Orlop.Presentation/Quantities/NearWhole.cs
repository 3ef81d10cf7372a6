namespace Orlop.Presentation.Quantities;

/// <summary>Percentages near 100: what is over reads as over, what is under as under.</summary>
internal static class NearWhole
{
    private const double WholePercent = 100;

    // What stands at its limit as typed is a hair off in binary, and is at it.
    private const double RoundingPercent = 1e-7;
    private const int MostDecimals = 8;

    /// <summary>Decimals that a percentage is written with: as many as were wanted, and more where it would round to 100 % and is not.</summary>
    /// <param name="percent">In percent: 100.33.</param>
    /// <param name="wanted">Decimals from 0.</param>
    internal static int Decimals(double percent, int wanted)
    {
        int decimals = wanted;
        while (decimals < MostDecimals && Math.Abs(percent - WholePercent) > RoundingPercent && Math.Round(percent, decimals, MidpointRounding.AwayFromZero) == WholePercent)
        {
            decimals++;
        }

        return decimals;
    }
}
