using System.Globalization;

namespace Orlop.Review.Electrics;

/// <summary>A formula with its numbers, each with as many digits as it takes that working it out by hand gives the result as it is shown.</summary>
internal static class Formula
{
    private const int FewestDigits = 4;
    private const int MostDigits = 12;
    private const int ShownDigits = 3;
    private const int PercentDigits = 2;
    private const double Rounding = 1e-9;
    private const double NearHalf = 1e-3;

    /// <summary>The formula: <c>Of("{0} ÷ {1}", v => v[0] / v[1], 60, 71)</c>.</summary>
    public static string Of(string form, Func<double[], double> calculate, params double[] values) => Of(form, calculate, 0, values);

    /// <summary>A share, which is shown as a percentage: "60 ÷ 71".</summary>
    public static string Share(double part, double whole) => Share("{0} ÷ {1}", values => values[0] / values[1], part, whole);

    /// <summary>A formula whose result is shown as a percentage.</summary>
    public static string Share(string form, Func<double[], double> calculate, params double[] values) => Of(form, calculate, PercentDigits, values);

    private static string Of(string form, Func<double[], double> calculate, int shift, double[] values)
    {
        double result = calculate(values);
        int digits = FewestDigits;
        if (double.IsFinite(result))
        {
            int shown = Math.Max(ShownDigits, WholeDigits(result) + shift);
            // A share just over or under the whole is shown with as many digits as it takes to read so.
            while (shift > 0 && shown < MostDigits && Math.Abs(result - 1) > Rounding && Rounded(result, shown) == 1)
            {
                shown++;
            }

            // 11 350 A is shown as 11.3 kA or 11.4 kA: fewer digits than the number has before its point.
            double wanted = Rounded(result, shown), wantedInThousands = Rounded(result, ShownDigits);
            double[] rounded = new double[values.Length];
            while (digits < MostDigits && calculate(Fill(rounded, values, digits)) is var byHand && (Rounded(byHand, shown) != wanted || Rounded(byHand, ShownDigits) != wantedInThousands))
            {
                digits++;
            }
        }

        string format = Formats[digits];
        object[] numbers = new object[values.Length];
        for (int i = 0; i < values.Length; i++)
        {
            numbers[i] = values[i].ToString(format, CultureInfo.InvariantCulture);
        }

        return string.Format(CultureInfo.InvariantCulture, form, numbers);
    }

    private static readonly string[] Formats = [.. Enumerable.Range(0, MostDigits + 1).Select(digits => $"G{digits}")];

    private static double[] Fill(double[] rounded, double[] values, int digits)
    {
        for (int i = 0; i < values.Length; i++)
        {
            rounded[i] = Printed(values[i], digits);
        }

        return rounded;
    }

    private static int WholeDigits(double value) => value == 0 ? 0 : (int)Math.Floor(Math.Log10(Math.Abs(value))) + 1;

    // As it is shown: a half is rounded away from nothing.
    private static double Rounded(double value, int digits)
    {
        if (value == 0)
        {
            return 0;
        }

        int places = digits - WholeDigits(value);
        double scale = Math.Pow(10, Math.Abs(places));
        return places >= 0 ? Math.Round(value * scale, MidpointRounding.AwayFromZero) / scale : Math.Round(value / scale, MidpointRounding.AwayFromZero) * scale;
    }

    // The number that its print is. Only near a half does scaling round otherwise than printing, and only there is it printed and read.
    private static double Printed(double value, int digits)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return value;
        }

        int places = digits - WholeDigits(value);
        double scale = Math.Pow(10, Math.Abs(places));
        double scaled = places >= 0 ? value * scale : value / scale;
        return Math.Abs(Math.Abs(scaled - Math.Truncate(scaled)) - 0.5) < NearHalf ? double.Parse(value.ToString(Formats[digits], CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)
            : places >= 0 ? Math.Round(scaled) / scale : Math.Round(scaled) * scale;
    }
}
