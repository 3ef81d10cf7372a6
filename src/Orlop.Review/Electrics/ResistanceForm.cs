namespace Orlop.Review.Electrics;

/// <summary>A formula whose result is a resistance: all its resistances in the one unit in which the result reads well, which stands behind it: <c>(30 + 45) µΩ</c>.</summary>
internal static class ResistanceForm
{
    private const double MilliohmFromOhm = 1e-3;
    private const double OhmFromOhm = 1;

    /// <summary>Resistances added up, ohm.</summary>
    public static string Sum(double[] ohms) =>
        Of(string.Join(" + ", ohms.Select((_, index) => $"{{{index}}}")), values => values.Sum(), ohms.Sum(), (perUnit, _) => perUnit, [.. ohms]);

    /// <summary>Resistances and plain numbers in turn: <c>{0} × {1} × {1} + {2} × {3} × {3}</c>.</summary>
    public static string Of(string form, Func<double[], double> calculate, (double Ohm, double Plain)[] values)
    {
        double[] flat = [.. values.SelectMany(pair => new[] { pair.Ohm, pair.Plain })];
        return Of(form, calculate, calculate(flat), (perUnit, index) => index % 2 == 0 ? perUnit : 1, flat);
    }

    private static string Of(string form, Func<double[], double> calculate, double resultOhm, Func<double, int, double> scale, double[] values)
    {
        (string unit, double perOhm) = Math.Abs(resultOhm) switch { < MilliohmFromOhm => ("µΩ", 1e6), < OhmFromOhm => ("mΩ", 1e3), _ => ("Ω", 1.0) };
        string told = Formula.Of(form, calculate, [.. values.Select((value, index) => value * scale(perOhm, index))]);
        return values.Length == 1 ? $"{told} {unit}" : $"({told}) {unit}";
    }
}
