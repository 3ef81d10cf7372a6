using System.Globalization;

namespace Orlop.Review.Electrics;

/// <summary>A formula with its numbers, each with as many digits as it takes that working it out by hand gives the result as it is shown.</summary>
internal static class Formula
{
    private const int FewestDigits = 4;
    private const int MostDigits = 12;
    private const int ShownDigits = 3;
    private const int PercentDigits = 2;
    private const decimal LeastPlain = 1e-6m;
    private const decimal MostPlain = 1e9m;
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

            // 999.6 is shown as 1000, but 1000.5 as 1001: past a power of ten there is a digit more before the point.
            double AsShown(double value) => Rounded(value, Math.Max(shown, WholeDigits(value) + shift));
            // 11 350 A is shown as 11.3 kA or 11.4 kA: fewer digits than the number has before its point.
            double wanted = AsShown(result), wantedInThousands = Rounded(result, ShownDigits);
            double[] rounded = new double[values.Length];
            while (digits < MostDigits && calculate(Fill(rounded, values, digits)) is var byHand && (AsShown(byHand) != wanted || Rounded(byHand, ShownDigits) != wantedInThousands))
            {
                digits++;
            }
        }

        object[] numbers = new object[values.Length];
        for (int i = 0; i < values.Length; i++)
        {
            numbers[i] = Plain(values[i].ToString(Formats[digits], CultureInfo.InvariantCulture));
        }

        return string.Format(CultureInfo.InvariantCulture, form, numbers);
    }

    private static readonly string[] Formats = [.. Enumerable.Range(0, MostDigits + 1).Select(digits => $"G{digits}")];

    // 81500, not 8.15E+04, and 0.00003, not 3E-05; what is beyond that stays in powers of ten.
    private static string Plain(string printed) =>
        printed.Contains('E', StringComparison.Ordinal) && decimal.TryParse(printed, NumberStyles.Float, CultureInfo.InvariantCulture, out decimal value) && Math.Abs(value) is >= LeastPlain and < MostPlain
            ? value.ToString("0.##################", CultureInfo.InvariantCulture) : printed;

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
