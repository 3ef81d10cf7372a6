using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;

namespace Orlop.Presentation.Views;

/// <summary>Reads what is typed between two things of a chain: "fuse 200 A", "breaker 10 A", "isolator".</summary>
/// <param name="Device">The device to put in; null when the text was refused.</param>
/// <param name="Refusal">What was found and what may be typed.</param>
public sealed record ChainEntry(Part? Device, string? Refusal)
{
    private const string Examples = "Type for example: fuse 200 A, breaker 10 A, isolator 300 A.";

    /// <summary>Reads an entry for the chain of a load.</summary>
    public static ChainEntry Read(string typed, BoatModel boat, Part taker, DisplayUnits units, CultureInfo culture)
    {
        string text = typed.Trim();
        string word = text.Split(' ', 2)[0].ToLowerInvariant();
        string rest = text.Length > word.Length ? text[word.Length..].Trim() : "";
        if (word is not ("fuse" or "breaker" or "isolator" or "switch"))
        {
            return new ChainEntry(null, $"'{text}' is not understood. {Examples}");
        }

        QuantityReading? rating = rest.Length == 0 ? null : QuantityText.Parse(rest, "A", units, culture);
        if (rating is { Quantity: null })
        {
            return new ChainEntry(null, $"{rating.Refusal} {Examples}");
        }

        string id = ReadableId.Of($"{taker.Title} {word}", taken => boat.Find(taken) is not null), name = taker.Title.EndsWith($" {word}", StringComparison.OrdinalIgnoreCase) ? taker.Title : $"{taker.Title} {word}";
        return word is "isolator" or "switch"
            ? new ChainEntry(new IsolatorSwitch { Id = id, Name = name, RatedA = rating?.Quantity, IsIsolator = word == "isolator" }, null)
            : rating?.Quantity is { } ratedA
                ? new ChainEntry(new Protection { Id = id, Name = name, Means = word == "fuse" ? ProtectionMeans.Fuse : ProtectionMeans.Breaker, RatedA = ratedA }, null)
                : new ChainEntry(null, $"Give the rating of the {word} too. {Examples}");
    }
}
