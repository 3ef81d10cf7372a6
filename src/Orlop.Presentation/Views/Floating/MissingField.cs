using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>Something that is not given, and where it is typed.</summary>
/// <param name="Text">"mass of Stores".</param>
/// <param name="ThingId">The thing; it may not be there yet.</param>
/// <param name="Field">Its field.</param>
/// <param name="IsThere">The thing is in the boat.</param>
public sealed record MissingField(string Text, string ThingId, string Field, bool IsThere)
{
    /// <summary>One for each input, each once.</summary>
    public static IReadOnlyList<MissingField> Of(ImmutableArray<FindingInput> inputs, BoatModel boat) =>
        [.. inputs.DistinctBy(input => (input.ThingId, input.Field)).Select(input => Of(input, boat))];

    /// <summary>Deadweight that is aboard in no condition, and so counts in none.</summary>
    public static IEnumerable<MissingField> Ashore(BoatModel boat) => boat.All<Deadweight>()
        .Where(deadweight => deadweight.Aboard.All(count => count.PieceCount == 0))
        .Select(deadweight => new MissingField($"how many of {deadweight.Title} are aboard in each condition: so far it counts in none", deadweight.Id, "aboard", true));

    /// <summary>The hull's stations, where there are none.</summary>
    public static IEnumerable<MissingField> Hull(BoatModel boat) =>
        boat.All<HullLines>().FirstOrDefault() is { Stations.Count: > 0 } ? [] : [Of(new FindingInput(boat.All<HullLines>().FirstOrDefault()?.Id ?? "hull-lines", "stations", IsMissing: true), boat)];

    /// <summary>Whether the deck is closed, where there is a hull and nobody has said; and length and breadth of wells.</summary>
    public static IEnumerable<MissingField> Deck(BoatModel boat) => OpeningsGiven.WellsWithoutSides(boat)
        .SelectMany(well => new[] { (well, Field: "clearLengthM", Given: well.ClearLengthM), (well, Field: "clearBreadthM", Given: well.ClearBreadthM) })
        .Where(side => side.Given is not { Value: > 0 })
        .Select(side => Of(new FindingInput(side.well.Id, side.Field, IsMissing: true), boat))
        .Select(field => field with { Text = $"{field.Text} (its sides are taken at the deck edge)" })
        .Concat(OfDeck(boat));

    private static IEnumerable<MissingField> OfDeck(BoatModel boat) =>
        boat.Particulars is { Deck: null } particulars && boat.All<HullLines>().Any(lines => lines.Stations.Count > 0) ? [Of(new FindingInput(particulars.Id, "deck", IsMissing: true), boat)] : [];

    private static MissingField Of(FindingInput input, BoatModel boat)
    {
        bool isThere = boat.Find(input.ThingId) is not null;
        return new MissingField(MissingWords.Of(input, boat), input.ThingId, input.Field, isThere);
    }
}
