using Orlop.Boat.Format;
using Orlop.Electrics.Protection;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Words;

namespace Orlop.Presentation.Views;

/// <summary>What a field and its choices are called on forms and in comparisons.</summary>
public static class FieldWords
{
    /// <summary>The only texts that make sense in a text field, to be chosen from; empty where any words go.</summary>
    public static IReadOnlyList<string> Known(FieldSchema field) => IsGates(field) ? OperatingGateTable.CurveIds : OwnLimits.IsName(field) ? LimitWords.Choosable : [];

    /// <summary>A known text of a field in plain words: "Strip fuse SF51 (ISO 8820-5)".</summary>
    public static string OfKnown(FieldSchema field, string text) => IsGates(field) ? Wording.OfGates(text) : OwnLimits.IsName(field) ? LimitWords.Of(text) : text;

    /// <summary>A known text of a field in a list to choose from: a limit with its unit.</summary>
    public static string ToChoose(FieldSchema field, string text, DisplayUnits units) => OwnLimits.IsName(field) ? OwnLimits.Choice(text, units) : OfKnown(field, text);

    /// <summary>A choice in plain words: "flexible, tinned (class 5)".</summary>
    public static string OfChoice(string choice) => choice switch
    {
        "absorbed-glass-mat" => "absorbed glass mat (AGM)",
        "lithium-iron-phosphate" => "lithium iron phosphate (LiFePO4)",
        "stranded2" => "stranded (class 2)",
        "flexible5" => "flexible (class 5)",
        "stranded-tinned2" => "stranded, tinned (class 2)",
        "flexible-tinned5" => "flexible, tinned (class 5)",
        "general-intact" => "general criteria, areas and levers (2008 IS Code A 2.2)",
        "weather" => "severe wind and rolling, made for ships of 24 m and more (Res. A.749(18) 3.2)",
        "simplified-united" => "simplified proof test, people and wind, to 19.8 m (46 CFR 178.330)",
        "small-craft" => "everyone at one side, small craft to 24 m (ISO 12217-1)",
        "open-boat" => "everyone at one side, open workboat (MGN 280 11.4)",
        _ => choice.Replace('-', ' '),
    };

    /// <summary>The keys a phone offers for a field, as the <c>inputmode</c> of its box: digits for a whole number that is not negative. Any other number may be typed with a sign, a unit, ± or ?, and is left the letters; null there.</summary>
    public static string? Keypad(FieldSchema field) => field is { Type: FieldType.Count, Allowed.Least: >= 0 } ? "numeric" : null;

    /// <summary>How many a list field holds, in the word for one of them: "7 stretches".</summary>
    public static string Count(FieldSchema list, int count)
    {
        (string one, string many) = list.Name switch
        {
            "cores" => ("core", "cores"),
            "run" => ("stretch", "stretches"),
            "openCircuit" or "ownTimes" or "overloads" => ("point", "points"),
            "uses" or "openIn" or "positions" => ("condition", "conditions"),
            "heatIn" => ("condition", "conditions"),
            "studs" => ("stud", "studs"),
            "walls" => ("side", "sides"),
            "vents" => ("opening", "openings"),
            "own" => ("limit of the owner", "limits of the owner"),
            _ => ("entry", "entries"),
        };
        return $"{count} {(count == 1 ? one : many)}";
    }

    private static bool IsGates(FieldSchema field) => field is { Type: FieldType.Text, Name: "gates" };
}
