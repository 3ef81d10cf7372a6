using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Words;

namespace Orlop.Presentation.Views;

/// <summary>Things of one kind that a photograph can show, by name.</summary>
/// <param name="Title">What they have in common: an alteration, or their kind.</param>
/// <param name="Things">The things.</param>
/// <param name="Names">What each is called in the list, by its id; no two are the same.</param>
public sealed record SubjectGroup(string Title, IReadOnlyList<Thing> Things, IReadOnlyDictionary<string, string> Names)
{
    /// <summary>What can be photographed: what belongs to the alteration first, then the rest by kind, all by name.</summary>
    public static IReadOnlyList<SubjectGroup> Of(BoatModel boat, Alteration? alteration)
    {
        HashSet<string> first = alteration is null ? [] : [alteration.Id, .. alteration.Edits.Select(edit => edit.Id)];
        Thing[] subjects = [.. boat.Things.Where(thing => thing is Part or Cable or Gear or Space or Way or Link or Alteration).OrderBy(thing => thing.Title, StringComparer.OrdinalIgnoreCase)];
        Dictionary<string, string> names = Named(boat, subjects);
        return
        [
            .. new[] { new SubjectGroup(alteration?.Title ?? "", [.. subjects.Where(thing => first.Contains(thing.Id)).OrderBy(thing => thing.Id == alteration?.Id ? 0 : 1)], names) }
                .Where(group => group.Things.Count > 0),
            .. subjects.Where(thing => !first.Contains(thing.Id)).GroupBy(thing => Wording.KindOf(ThingKinds.NameOf(thing)))
                .OrderBy(kind => kind.Key, StringComparer.OrdinalIgnoreCase)
                .Select(kind => new SubjectGroup(char.ToUpperInvariant(kind.Key[0]) + kind.Key[1..], [.. kind], names)),
        ];
    }

    // What shares its name says where it runs or stands as well, and what shares that too its id.
    private static Dictionary<string, string> Named(BoatModel boat, IReadOnlyList<Thing> subjects)
    {
        PartWords words = new(boat);
        Dictionary<string, string> names = subjects.ToDictionary(thing => thing.Id, thing => thing.Title, StringComparer.Ordinal);
        foreach (Func<Thing, string> more in new Func<Thing, string>[] { thing => Where(words, thing), thing => thing.Id })
        {
            foreach (Thing thing in subjects.GroupBy(thing => names[thing.Id], StringComparer.OrdinalIgnoreCase).Where(same => same.Count() > 1).SelectMany(same => same).ToArray())
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
