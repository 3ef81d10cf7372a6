using System.Collections.Frozen;
using Orlop.Boat.Things;

namespace Orlop.Boat.Format;

/// <summary>What a field is called in the words of the trade, with the noun that its unit stands for: "Rated current", "Nominal voltage".</summary>
public static class FieldLabels
{
    private const string MassOfOne = "Mass of one";

    private static readonly Lazy<FrozenDictionary<string, FieldSchema>> ByName = new(AllByName);

    /// <summary>The field's label, with a capital.</summary>
    public static string Of(FieldSchema field)
    {
        ArgumentNullException.ThrowIfNull(field);
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
    public static string InSentence(FieldSchema field) => Of(field) is var label && (label.Length < 2 || char.IsUpper(label[1])) ? label : $"{char.ToLowerInvariant(label[0])}{label[1..]}";

    /// <summary>The label within a sentence of a field that any kind of thing, or a record in one, has by this name; null where none has.</summary>
    /// <param name="name">As in the file: <c>ratedA</c>.</param>
    public static string? InSentence(string name) => ByName.Value.GetValueOrDefault(name) is { } field ? InSentence(field) : null;

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

    // A name means the same wherever it stands but "means", of which what it belongs to says more: any of them will do.
    private static FrozenDictionary<string, FieldSchema> AllByName()
    {
        Dictionary<string, FieldSchema> found = new(StringComparer.Ordinal);
        Queue<RecordSchema> open = new(ThingKinds.ByName.OrderBy(kind => kind.Key, StringComparer.Ordinal).Select(kind => RecordSchema.Of(kind.Value)));
        HashSet<Type> seen = [];
        while (open.TryDequeue(out RecordSchema? schema))
        {
            foreach (FieldSchema field in seen.Add(schema.Type) ? schema.Fields : [])
            {
                found.TryAdd(field.Name, field);
                if (field.Record is { } inner)
                {
                    open.Enqueue(inner);
                }
            }
        }

        return found.ToFrozenDictionary(StringComparer.Ordinal);
    }
}
