using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Review.Findings;

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
    [
        .. inputs.DistinctBy(input => (input.ThingId, input.Field)).Select(input => new MissingField(MissingWords.Of(input, boat), input.ThingId, input.Field, boat.Find(input.ThingId) is not null)),
    ];
}
