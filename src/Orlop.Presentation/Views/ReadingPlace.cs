using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;

namespace Orlop.Presentation.Views;

/// <summary>Where a reading is taken, and what of that is not yet part of the boat as built.</summary>
public static class ReadingPlace
{
    /// <summary>The parts and cables at which it is taken that are not recorded as built; a reading can be kept only of what is.</summary>
    /// <param name="asAltered">To name them.</param>
    /// <param name="through">The element whose current is read, or null.</param>
    public static ImmutableArray<Thing> Unbuilt(BoatModel asBuilt, BoatModel asAltered, Terminal? plus, Terminal? minus, string? through)
    {
        IEnumerable<string> terminals = new[] { plus, minus }.OfType<Terminal>().Where(end => !Has(asBuilt, end)).Select(end => end.Part);
        IEnumerable<string> elements = new[] { through }.OfType<string>().Select(ElementIds.ThingOf).Where(id => asBuilt.Find(id) is null);
        return [.. terminals.Concat(elements).Distinct(StringComparer.Ordinal).Select(asAltered.Find).OfType<Thing>()];
    }

    // A node inside a cable's joint belongs to the cable.
    private static bool Has(BoatModel asBuilt, Terminal end) => asBuilt.Find(end.Part) is { } thing && (thing is not Part part || part.TerminalNames.Contains(end.Name));
}
