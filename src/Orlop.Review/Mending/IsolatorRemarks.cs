using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>Says where a mended way leaves a battery without any isolator. Common practice, no source: what is fed from before the main isolator has one of its own.</summary>
internal static class IsolatorRemarks
{
    /// <summary>One for each load whose way out, with one of these things on it, has no isolator; none on a boat without isolators.</summary>
    public static ImmutableArray<Sentence> Of(BoatModel boat, ImmutableArray<string> thingIds)
    {
        if (!boat.All<IsolatorSwitch>().Any())
        {
            return [];
        }

        Wiring wiring = Wiring.Of(boat);
        string?[] conditions = [.. boat.All<Condition>().Select(condition => condition.Id), null];
        return
        [
            .. boat.All<ElectricLoad>().SelectMany(load => conditions.Select(condition => Chain.Trace(boat, wiring, load, condition))).OfType<Chain>()
                .Where(chain => chain.Source is BatteryBank && chain.Out.Any(item => thingIds.Contains(item.Thing.Id)) && !chain.Out.Any(item => item.Thing is IsolatorSwitch or Changeover))
                .DistinctBy(chain => chain.Taker.Id)
                .Select(chain => Sentence.Of($"{chain.Taker.Title} stays fed from {chain.Source!.Title} with no isolator between: no main isolator makes it dead. What is fed from before the main isolator commonly has an isolator of its own (common practice, no source).")),
        ];
    }
}
