namespace Orlop.Electrics.Heat;

/// <summary>An opening of a space.</summary>
/// <param name="AreaM2">Free area, above 0.</param>
/// <param name="HeightM">Height of its middle over any level, the same for all.</param>
public sealed record AirOpening(double AreaM2, double HeightM);

/// <summary>
/// Air that a warm space draws through its openings. Between low and high ones there is a level at which pressure inside and outside is the same; air comes in below it
/// and leaves above. With two openings: Q = Cd Ae √(2 g h |Ti - To| / Ti), 1/Ae² = 1/A1² + 1/A2².
/// </summary>
public static class NaturalDraught
{
    /// <summary>Discharge coefficient of an opening, 0.65 of 0.65 to 0.70.</summary>
    public const double DischargeFactor = 0.65;

    /// <summary>Where the law comes from.</summary>
    public const string Source = "stack effect of two openings, ASHRAE Fundamentals; discharge coefficient 0.65";

    /// <summary>
    /// What the openings are worth: Σ A √(height over the neutral level) of those above it, which is the same of those below. Two openings give Ae √h. 0 where all are at one height: what air
    /// changes through one opening alone is not counted.
    /// </summary>
    public static double Coefficient(IReadOnlyCollection<AirOpening> openings)
    {
        ArgumentNullException.ThrowIfNull(openings);
        if (openings.Count == 0)
        {
            return 0;
        }

        double low = openings.Min(opening => opening.HeightM), high = openings.Max(opening => opening.HeightM), bottom = low;
        for (int step = 0; step < 200 && high - low > 0; step++)
        {
            double level = low + ((high - low) / 2);
            if (level <= low || level >= high)
            {
                break;
            }

            // Too much above the level: it lies higher.
            (low, high) = Above(openings, level) > Below(openings, level) ? (level, high) : (low, level);
        }

        return high <= bottom ? 0 : Above(openings, low + ((high - low) / 2));
    }

    /// <summary>The level at which neither side presses.</summary>
    /// <param name="lowM2">Area of the low opening.</param>
    /// <param name="highM2">Area of the high one.</param>
    /// <param name="apartM">Height between their middles.</param>
    /// <returns>Its height over the low opening.</returns>
    public static double NeutralLevelM(double lowM2, double highM2, double apartM) => apartM / (1 + (lowM2 * lowM2 / (highM2 * highM2)));

    /// <summary>Air that passes, at the density of the air around, in m³/s.</summary>
    public static double FlowM3PerS(double coefficient, double insideC, double aroundC) =>
        DischargeFactor * coefficient * Math.Sqrt(2 * StillAir.GravityMPerS2 * Math.Abs(insideC - aroundC) / (insideC + StillAir.ZeroK));

    private static double Above(IEnumerable<AirOpening> openings, double levelM) => openings.Where(opening => opening.HeightM > levelM).Sum(opening => opening.AreaM2 * Math.Sqrt(opening.HeightM - levelM));

    private static double Below(IEnumerable<AirOpening> openings, double levelM) => openings.Where(opening => opening.HeightM < levelM).Sum(opening => opening.AreaM2 * Math.Sqrt(levelM - opening.HeightM));
}
