using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;

namespace Orlop.Presentation.Views;

/// <summary>What is asked before a thing is taken out of the boat as built.</summary>
public static class RemovalWords
{
    private const int MostNamed = 3;

    /// <summary>The question, with what a protection device protects or a switch makes dead.</summary>
    public static string Question(BoatModel boat, Thing thing) =>
        $"Take {thing.Title} out of the boat as built? {Duty(boat, thing)}".TrimEnd();

    private static string Duty(BoatModel boat, Thing thing)
    {
        string? does = thing switch
        {
            Protection => "protects the way to",
            IsolatorSwitch => "makes dead",
            _ => null,
        };
        if (does is null)
        {
            return "";
        }

        ImmutableArray<string> behind = CircuitsThrough(boat, thing.Id);
        return behind.Length == 0 ? "No circuit runs through it." : $"It {does} {Named(behind)}.";
    }

    private static ImmutableArray<string> CircuitsThrough(BoatModel boat, string id)
    {
        Wiring wiring = Wiring.Of(boat);
        return
        [
            .. boat.All<Part>().Select(part => Chain.Trace(boat, wiring, part)).OfType<Chain>()
                .Where(chain => chain.Out.Concat(chain.Back).Any(item => item.Thing.Id == id))
                .Select(chain => chain.Taker.Title).Order(StringComparer.OrdinalIgnoreCase),
        ];
    }

    private static string Named(ImmutableArray<string> titles) => titles.Length switch
    {
        1 => titles[0],
        <= MostNamed => $"{string.Join("; ", titles[..^1])} and {titles[^1]}",
        _ => $"{string.Join("; ", titles[..MostNamed])} and {titles.Length - MostNamed} more",
    };
}
