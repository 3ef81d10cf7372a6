using Orlop.Boat;
using Orlop.Boat.Things;
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
        Dictionary<string, string> names = ThingNames.Of(boat, subjects);
        return
        [
            .. new[] { new SubjectGroup(alteration?.Title ?? "", [.. subjects.Where(thing => first.Contains(thing.Id)).OrderBy(thing => thing.Id == alteration?.Id ? 0 : 1)], names) }
                .Where(group => group.Things.Count > 0),
            .. subjects.Where(thing => !first.Contains(thing.Id)).GroupBy(thing => Wording.KindOf(ThingKinds.NameOf(thing)))
                .OrderBy(kind => kind.Key, StringComparer.OrdinalIgnoreCase)
                .Select(kind => new SubjectGroup(char.ToUpperInvariant(kind.Key[0]) + kind.Key[1..], [.. kind], names)),
        ];
    }
}
