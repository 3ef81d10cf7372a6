using Orlop.Boat.Format;
using Orlop.Review.Electrics;
using Orlop.Review.Networks;

namespace Orlop.Review.Findings;

/// <summary>The words for the field of an input where nothing is known of its thing but an id, in the middle of a sentence.</summary>
public static class InputWords
{
    private static readonly string[] UnitEnds = ["Fraction", "M3PerH", "Ratio", "Count", "Mm2", "Ohm", "Deg", "Ah", "Kg", "Mm", "UT", "A", "V", "W", "C", "S", "M"];

    /// <summary>"rated current" for <c>ratedA</c>, "way or space of run 1" for <c>run/1</c>, "cross-section" for <c>cores/plus/areaMm2</c>; for what is no field, as the name of a limit, the name's own words.</summary>
    /// <param name="path">The field as the finding names it.</param>
    public static string Of(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (CurveGap.ChargeFraction(path) is { } charge)
        {
            return FormattableString.Invariant($"open-circuit voltage at {charge * 100:0.#} % charge, outside the points of its curve,");
        }

        if (GatesGap.Of(path) is { } gap)
        {
            return $"operating time {gap.At}, which its kind has {gap.Only},";
        }

        if (GatesGap.OtherKind(path) is { } other)
        {
            return $"kind of operating times (those given are of {other})";
        }

        if (path.StartsWith("run/", StringComparison.Ordinal))
        {
            return $"way or space of run {path["run/".Length..]}";
        }

        string name = path.Split('/', '.')[^1];
        return FieldLabels.InSentence(name) ?? Parted(name);
    }

    private static string Parted(string name)
    {
        string? unit = UnitEnds.FirstOrDefault(end => name.Length > end.Length && name.EndsWith(end, StringComparison.Ordinal));
        return string.Concat(name[..^(unit?.Length ?? 0)].Select(sign => char.IsUpper(sign) ? $" {char.ToLowerInvariant(sign)}" : sign.ToString()));
    }
}
