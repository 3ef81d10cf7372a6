using Orlop.Boat.Format;
using Orlop.Electrics.Protection;
using Orlop.Presentation.Words;

namespace Orlop.Presentation.Views;

/// <summary>What a field and its choices are called on forms and in comparisons.</summary>
public static class FieldWords
{
    private const string MassOfOne = "Mass of one";

    /// <summary>The field's label in the words of the trade, with the noun that its unit stands for: "Rated current", "Nominal voltage".</summary>
    public static string Label(FieldSchema field)
    {
        if ((field.Name == "means" ? MeansLabel(field) : TradeLabel(field.Name)) is { } label)
        {
            return label;
        }

        if (field is { Name: "massKg", Description: { } said } && said.StartsWith(MassOfOne, StringComparison.Ordinal))
        {
            return MassOfOne;
        }

        string? noun = field.Unit?.Suffix switch { "A" => "current", "V" => "voltage", "W" => "power", "S" => "time", _ => null };
        bool isSaid = noun is null || field.Label.EndsWith(noun, StringComparison.OrdinalIgnoreCase) || field.Label == "Duration" || field.Label.EndsWith("circuit", StringComparison.Ordinal);
        return isSaid ? field.Label : $"{field.Label} {noun}";
    }

    /// <summary>The label within a sentence: "centre of gravity, forward (LCG)".</summary>
    public static string InSentence(FieldSchema field) => Label(field) is var label && (label.Length < 2 || char.IsUpper(label[1])) ? label : $"{char.ToLowerInvariant(label[0])}{label[1..]}";

    /// <summary>The only texts that make sense in a text field, to be chosen from; empty where any words go.</summary>
    public static IReadOnlyList<string> Known(FieldSchema field) => IsGates(field) ? OperatingGateTable.CurveIds : [];

    /// <summary>A known text of a field in plain words: "Strip fuse SF51 (ISO 8820-5)".</summary>
    public static string OfKnown(FieldSchema field, string text) => IsGates(field) ? Wording.OfGates(text) : text;

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

    private static string MeansLabel(FieldSchema field) => field.Choices switch
    {
        var choices when choices.Contains("fuse") => "Fuse or breaker",
        var choices when choices.Contains("ring") => "How it is made off",
        _ => "Kind",
    };

    private static string? TradeLabel(string field) => field switch
    {
        "xM" => "Forward of the after perpendicular",
        "currencyRatio" => "Worth of one unit of built-in prices",
        "terminalMm2" => "Terminals take up to",
        "yM" => "To port of the centre line",
        "zM" => "Above the base line",
        "lcgM" => "Centre of gravity, forward (LCG)",
        "tcgM" => "Centre of gravity, to port (TCG)",
        "kgM" => "Centre of gravity, up (KG)",
        "pitchPeriodS" => "Period of the pitch",
        "heavePeriodS" => "Period of the heave",
        "rollPeriodS" => "Period of the roll (empty: from GM and beam)",
        "motion" => "Stated motion",
        "isBare" => "Nothing of the list was aboard",
        "deviationM" => "One standard deviation of the reading",
        "pieceCount" => "How many",
        "liquidKgPerM3" => "Liquid's density",
        "aftXM" => "After end of the foot, forward of the after perpendicular",
        "foreXM" => "Forward end of the foot, forward of the after perpendicular",
        "roofAftXM" => "After end of the roof, forward of the after perpendicular",
        "roofForeXM" => "Forward end of the roof, forward of the after perpendicular",
        "halfBreadthM" => "Half-breadth from the centre line",
        "footM" => "Foot above the base line",
        "roofM" => "Roof above the base line",
        "fullRatingC" => "Full rating up to",
        "lostPerKFraction" => "Rating lost for each kelvin over that",
        "mostAmbientC" => "May stand in, at most",
        "leastAmbientC" => "Coldest air in it, in use",
        "leastChargeC" => "Coldest to charge at",
        "mostChargeC" => "Warmest to charge at",
        "stopsCharge" => "Its guard stops the charge outside those",
        "isReckoned" => "Its temperature is reckoned",
        "airFrom" => "Its air comes from",
        "fanM3PerH" => "Air its fan moves",
        "vents" => "Openings for air",
        "areaCm2" => "Free area",
        "heatW" => "Heat it gives off",
        "heatIn" => "Gives it off in",
        "heatFraction" => "Share of its power that stays as heat",
        "outsideC" => "Air outside",
        "transmittanceWPerM2K" => "Transmittance (U)",
        "sunWPerM2" => "Sun on it at its worst",
        "absorbedFraction" => "Share of the sun it takes up",
        "openCircuitKnown" => "How the curve is known",
        "openCircuitMethod" => "Where the curve comes from",
        "openCircuit" => "Open-circuit curve",
        "lugMm2" => "Lug made for",
        "studMm" => "Ring made for a thread of",
        "fromFaceCount" => "Place on the stud, 1 on the face",
        "sizeMm" => "Thread",
        "locking" => "Locking",
        "hasWasherUnder" => "A washer lies under or between the rings",
        "seriesCount" => "Batteries or cells in series in it",
        "parallelCount" => "Strings side by side in it",
        "inUseSince" => "In use since",
        "gates" => "Kind of operating times",
        "meltingA2S" => "Melting I²t",
        "clearingA2S" => "Operating I²t",
        "ownTimes" => "Operating times from its own sheet",
        _ => null,
    };
}
