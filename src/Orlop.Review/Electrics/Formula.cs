using System.Globalization;

namespace Orlop.Review.Electrics;

/// <summary>A formula with its numbers, each with as many digits as it takes that working it out by hand gives the result as it is shown.</summary>
internal static class Formula
{
    private const int FewestDigits = 4;
    private const int MostDigits = 12;
    private const int ShownDigits = 3;

    /// <summary>The formula: <c>Of("{0} ÷ {1}", v => v[0] / v[1], 60, 71)</c>.</summary>
    public static string Of(string form, Func<double[], double> calculate, params double[] values)
    {
        double result = calculate(values);
        int shown = double.IsFinite(result) && result != 0 ? Math.Max(ShownDigits, (int)Math.Floor(Math.Log10(Math.Abs(result))) + 1) : ShownDigits;
        double wanted = Rounded(result, shown);
        int digits = FewestDigits;
        while (digits < MostDigits && double.IsFinite(result) && Rounded(calculate([.. values.Select(value => Rounded(value, digits))]), shown) != wanted)
        {
            digits++;
        }

        return string.Format(CultureInfo.InvariantCulture, form, [.. values.Select(value => (object)value.ToString($"G{digits}", CultureInfo.InvariantCulture))]);
    }

    private static double Rounded(double value, int digits) => double.Parse(value.ToString($"G{digits}", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
