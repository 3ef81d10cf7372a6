using Orlop.Boat.Format;

namespace Orlop.Presentation.Views;

/// <summary>What a field is called on forms and in comparisons.</summary>
public static class FieldWords
{
    /// <summary>The field's label with the noun that its unit stands for: "Rated current", "Nominal voltage".</summary>
    public static string Label(FieldSchema field)
    {
        string? noun = field.Unit?.Suffix switch { "A" => "current", "V" => "voltage", "W" => "power", "S" => "time", _ => null };
        bool isSaid = noun is null || field.Label.EndsWith(noun, StringComparison.OrdinalIgnoreCase) || field.Label == "Duration" || field.Label.EndsWith("circuit", StringComparison.Ordinal);
        return isSaid ? field.Label : $"{field.Label} {noun}";
    }
}
