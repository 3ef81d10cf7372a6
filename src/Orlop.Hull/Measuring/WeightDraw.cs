namespace Orlop.Hull.Measuring;

/// <summary>One weight out of a spread: kg and m.</summary>
internal readonly record struct WeightDraw(double Mass, double Lcg, double Tcg, double Kg)
{
    /// <summary>Draws by Cholesky's factor and normal numbers in pairs (Box and Muller).</summary>
    public static WeightDraw[] Many(WeightSpread spread, int count, int seed)
    {
        var factor = FourUnknowns.Factor(spread.Covariance);
        var random = new Random(seed);
        var draws = new WeightDraw[count];
        Span<double> normal = stackalloc double[4];
        Span<double> off = stackalloc double[4];
        for (var i = 0; i < count; i++)
        {
            for (var pair = 0; pair < 4; pair += 2)
            {
                var length = Math.Sqrt(-2 * Math.Log(1 - random.NextDouble()));
                var (sin, cos) = Math.SinCos(Math.Tau * random.NextDouble());
                (normal[pair], normal[pair + 1]) = (length * cos, length * sin);
            }

            for (var row = 0; row < 4; row++)
            {
                off[row] = 0;
                for (var k = 0; k <= row; k++)
                {
                    off[row] += factor[row, k] * normal[k];
                }
            }

            draws[i] = new WeightDraw(spread.MassKg + off[0], spread.Centre.XM + off[1], spread.Centre.YM + off[2], spread.Centre.ZM + off[3]);
        }

        return draws;
    }
}
