using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Presentation.Words;

/// <summary>What things are called in a list to choose from, where no two may be called the same.</summary>
public static class ThingNames
{
    /// <summary>The name of each by its id: its title; where another shares that, with where it runs or stands; where that is shared too, with its id.</summary>
    public static Dictionary<string, string> Of(BoatModel boat, IEnumerable<Thing> things)
    {
        ArgumentNullException.ThrowIfNull(things);
        Thing[] listed = [.. things];
        Dictionary<string, string> names = listed.ToDictionary(thing => thing.Id, thing => thing.Title, StringComparer.Ordinal);
        Lazy<PartWords> words = new(() => new PartWords(boat));
        foreach (Func<Thing, string> more in new Func<Thing, string>[] { thing => Where(words.Value, thing), thing => thing.Id })
        {
            foreach (Thing thing in listed.GroupBy(thing => names[thing.Id], StringComparer.OrdinalIgnoreCase).Where(same => same.Count() > 1).SelectMany(same => same).ToArray())
            {
                names[thing.Id] = more(thing) is { Length: > 0 } said ? $"{names[thing.Id]} ({said})" : names[thing.Id];
            }
        }

        return names;
    }

    private static string Where(PartWords words, Thing thing) => thing switch
    {
        Link link => Between(words, link.From, link.To),
        Cable { Cores: [var core, ..] } => Between(words, core.From, core.To),
        _ => words.SpaceOf(thing.Id) ?? "",
    };

    private static string Between(PartWords words, Terminal from, Terminal to) => $"{words.At(from)} to {words.At(to)}";
}
