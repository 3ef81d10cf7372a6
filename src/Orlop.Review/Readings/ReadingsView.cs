using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Review.Practices;

namespace Orlop.Review.Readings;

/// <summary>What the checks of readings read: the readings that count, and what each should be.</summary>
public sealed class ReadingsView(BoatModel boat, Practice? practice, Memo memo, CancellationToken token)
{
    private readonly Dictionary<(DateOnly? Day, string? Alteration), BoatModel> _boats = [];
    private readonly Dictionary<(BoatModel Boat, string Condition), ConditionPrediction> _predictions = [];

    public BoatModel Boat => boat;

    /// <summary>The newest reading of each place in each condition, taken at things that are still in the boat.</summary>
    public ImmutableArray<Reading> Newest { get; } =
    [
        .. boat.All<Reading>()
            .GroupBy(reading => (reading.Condition, reading.Plus, reading.Minus, reading.Through))
            .Select(group => group.Index().OrderBy(one => one.Item.On ?? DateOnly.MaxValue).ThenBy(one => one.Index).Last().Item)
            .Where(reading => PlacesOf(reading).All(place => boat.Find(ElementIds.ThingOf(place)) is not null)),
    ];

    /// <summary>The nodes or the element that a reading is taken at.</summary>
    public static IEnumerable<string> PlacesOf(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return new[] { reading.Plus, reading.Minus }.OfType<Terminal>().Select(terminal => terminal.ToString()).Concat(reading.Through is { } through ? [through] : []);
    }

    /// <summary>
    /// What the readings of a reading's condition should be in the boat as she was on its day, or as she is where it has none; null where there is no such condition. A reading that was taken for an
    /// alteration is one of the work as it then stood, whether it was recorded as built by that day or not: all of that alteration is in her.
    /// </summary>
    public ConditionPrediction? PredictionFor(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        BoatModel then = _boats.TryGetValue((reading.On, reading.Alteration), out BoatModel? known) ? known : _boats[(reading.On, reading.Alteration)] = BoatOf(reading);
        if (then.Find<Condition>(reading.Condition) is not { } condition)
        {
            return null;
        }

        if (!_predictions.TryGetValue((then, condition.Id), out ConditionPrediction? prediction))
        {
            _predictions[(then, condition.Id)] = prediction = ConditionPrediction.Of(then, Wiring.Of(then), practice, condition, memo, token);
        }

        return prediction;
    }

    private BoatModel BoatOf(Reading reading)
    {
        BoatModel then = reading.On is { } day ? BoatOnDay.Of(boat, day) : boat;
        IEnumerable<Edit> open = reading.Alteration is { } id && boat.Find<Alteration>(id) is { Status: AlterationStatus.Accepted or AlterationStatus.UnderWay or AlterationStatus.Built } work ? work.Edits.Where(edit => edit.BuiltOn is null || edit.BuiltOn > reading.On) : [];
        return BoatEdits.Apply(then, open).Boat;
    }
}
