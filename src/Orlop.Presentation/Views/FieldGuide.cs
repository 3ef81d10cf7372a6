using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Presentation.Views;

/// <summary>How a value is come by, where its name alone does not tell, and the caution that belongs to it.</summary>
public static class FieldGuide
{
    /// <summary>What measuring at a battery asks for; common practice, no source.</summary>
    public const string BatteryCaution =
        "Measuring at a battery: it drives thousands of amperes through anything laid across its posts. Rings and watch off, no bare tool near both posts, goggles on, the meter on volts and its lead not in the ampere socket. "
        + "Lead-acid gives off gas that explodes: air, no sparks. Where you are not sure, leave it to someone licensed. Common practice, no source.";

    /// <summary>How the field's value is found out; null where nothing needs saying.</summary>
    public static string? How(FieldSchema field) => field.Name switch
    {
        "internalResistanceOhm" =>
            "From its maker's sheet, or measured: read the volts at the posts, switch on a load of known current, read again after a few seconds. The volts lost over the amperes are the ohms: 0.12 V lost at 30 A is 4 mΩ. The load's wires go on before the meter's, and switching is done at its switch, not at the post.",
        "isMinusBonded" => "Follow the thick minus lead: bolted to the engine block, a metal hull or an earth plate, it is.",
        "neutralBond" or "earthIsolation" or "showsPolarity" or "residualType" or "shutsDownS" or "isDoubleInsulated" => field.Description,
        "sourceOhm" => "Read by a licensed electrician with a loop tester at the end of the cord, from live to earth; or of the marina. Nothing is to be tried out with anything else.",
        "shortCircuitA" => "On its sheet. Most inverters give once to twice their rating; left out, no more than the rating is counted on.",
        "keying" or "arrangement" => field.Description,
        "capacityAh" => "On its label, for 20 hours: 100 Ah.",
        "permeabilityFraction" => "To see her with this space flooded, say how much of it water can fill: from 60 % where it is packed with stores, 85 % around an engine, to 95 % where it is empty or lived in (SOLAS II-1 regulation 7-3, from memory).",
        "clearLengthM" or "clearBreadthM" => field.Description,
        "massKg" => "Say how it is known: 20 kg ± 0.5 kg where it was weighed, about 20 kg where it is estimated, 20 kg? where it is guessed. A number alone counts as a guess.",
        "windAreaM2" or "windCentreM" or "bilgeKeelAreaM2" or "isSharpBilge" or "mostDisplacementKg" or "peopleCount" or "peopleBreadthM" or "cockpitLengthM" or "waters" or "loopTop" => field.Description,
        _ => null,
    };

    /// <summary>The words of a plug's key and poles that are used on board already, to be chosen from: equal words mate. None for other fields.</summary>
    public static IReadOnlyList<string> UsedWords(FieldSchema field, BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(field);
        ArgumentNullException.ThrowIfNull(boat);
        IEnumerable<PlugAndSocket> plugs = boat.All<PlugAndSocket>();
        IEnumerable<string?> used = field.Name switch
        {
            "keying" => plugs.Select(plug => plug.Keying).Concat(boat.All<StockItem>().Select(item => item.Keying)),
            "arrangement" => plugs.Select(plug => plug.Arrangement),
            _ => [],
        };
        return [.. used.OfType<string>().Distinct().Order(StringComparer.Ordinal)];
    }

    /// <summary>A value is kept, but how well it is known was not said, and a weight rests on it.</summary>
    public static bool LeavesOpen(FieldSchema field, object? value) => field.Name == "massKg" && value is Quantity { Known: Knowledge.Exact, PlusMinus: null };

    /// <summary>The caution that stands beside the field; null where it needs none.</summary>
    public static string? Caution(FieldSchema field) => field.Name == "internalResistanceOhm" ? BatteryCaution : null;
}
