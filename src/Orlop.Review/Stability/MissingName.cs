using System.Text;
using Orlop.Review.Findings;

namespace Orlop.Review.Stability;

/// <summary>What is not given, named in a sentence of a finding: "KG of bare boat".</summary>
internal static class MissingName
{
    private static readonly string[] Units = ["KgPerM3", "Kg", "Fraction", "Deg", "M2", "M"];

    /// <summary>The field in words, and the thing by its id.</summary>
    public static string Of(FindingInput input) => input is { ThingId: "deadweight", Field: "aboard" } ? "who is aboard" : $"{Field(input.Field)} of {input.ThingId.Replace('-', ' ')}";

    private static string Field(string field) => field switch
    {
        "kgM" => "KG",
        "lcgM" => "LCG",
        "tcgM" => "TCG",
        "fillFraction" or "fills" => "fill",
        "own/most-lifting-heel-deg" or "own/least-flooded-freeboard-m" => "such a limit",
        "liquidKgPerM3" => "density of the liquid",
        _ => Words(Units.FirstOrDefault(unit => field.Length > unit.Length && field.EndsWith(unit, StringComparison.Ordinal)) is { } unit ? field[..^unit.Length] : field),
    };

    private static string Words(string field)
    {
        StringBuilder words = new();
        foreach (char letter in field)
        {
            _ = char.IsUpper(letter) ? words.Append(' ').Append(char.ToLowerInvariant(letter)) : words.Append(letter);
        }

        return words.ToString();
    }
}
