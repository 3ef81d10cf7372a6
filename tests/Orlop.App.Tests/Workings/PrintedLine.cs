using System.Globalization;
using System.Text.RegularExpressions;

namespace Orlop.App.Tests.Workings;

/// <summary>A line of a working as it is printed: whether it is arithmetic, and whether the arithmetic gives the number beside it.</summary>
internal static partial class PrintedLine
{
    /// <summary>The arithmetic of an expression; null where it is words. A unit behind a bracket that holds all of it divides what is in it.</summary>
    public static string? Arithmetic(string expression) =>
        expression.Split(", for at least")[0] is var sum && Sum().IsMatch(sum) ? sum
        : InUnit().Match(expression) is { Success: true } told && Sum().IsMatch(told.Groups[1].Value) ? $"({told.Groups[1].Value}) ÷ {(told.Groups[2].Value switch { "µΩ" => "1000000", "mΩ" => "1000", _ => "1" })}"
        : null;

    /// <summary>Worked out by hand it is what is shown, to the digits that are shown.</summary>
    public static bool Gives(string arithmetic, string shown) => Means(shown, Workings.Arithmetic.Of(arithmetic));

    /// <summary>A number is what is shown, to the digits that are shown.</summary>
    public static bool Means(string shown, double number)
    {
        Match result = Shown().Match(shown);
        if (!result.Success)
        {
            return false;
        }

        double printed = double.Parse(result.Groups[1].Value, CultureInfo.InvariantCulture);
        double half = 0.5000001 * Math.Pow(10, -result.Groups[2].Length);
        double scale = result.Groups[3].Value switch { "%" => 100, "mV" or "mΩ" or "mA" => 1000, "µΩ" => 1e6, "kA" or "kW" => 0.001, _ => 1 };
        return Math.Abs((number * scale) - printed) <= half;
    }

    [GeneratedRegex(@"^\(([^()]+)\) (µΩ|mΩ|Ω)$")]
    private static partial Regex InUnit();

    [GeneratedRegex(@"^(?=.*(?:[×÷−√]| \+ ))[\d.E+×÷−√() ]+$")]
    private static partial Regex Sum();

    [GeneratedRegex(@"^(-?\d+(?:\.(\d+))?)\s*(\D*)$")]
    private static partial Regex Shown();
}
