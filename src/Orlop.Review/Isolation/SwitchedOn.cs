using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;

namespace Orlop.Review.Isolation;

/// <summary>
/// What must be on for a voltage to stand at a point: the breakers, switches and change-overs on the way with the fewest of them from a battery, or from a converter that one feeds. Whoever switches off
/// all that runs may have opened any of them. Fuses and plugs are taken to be in.
/// </summary>
public sealed class SwitchedOn
{
    // A relay or a switch that is open in some condition is not meant to be put on for a reading; it is only where nothing else leads there.
    private const int PlainCost = 1, OtherCost = 20;

    private readonly Wiring _wiring;
    private readonly Func<string, bool> _mayPass;
    private readonly Dictionary<string, Part> _plus = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Part> _minus = new(StringComparer.Ordinal);
    private readonly string? _reference;

    /// <param name="boat">The boat as she stands.</param>
    /// <param name="wiring">Her wiring.</param>
    /// <param name="mayPass">Whether a device may be passed, by its id; null where each may.</param>
    public SwitchedOn(BoatModel boat, Wiring wiring, Func<string, bool>? mayPass = null)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(wiring);
        (_wiring, _mayPass) = (wiring, mayPass ?? (_ => true));
        foreach (PolePair poles in boat.All<Part>().Where(part => part is BatteryBank or DcConverter).Select(Poles.Giving).OfType<PolePair>())
        {
            _plus.TryAdd(poles.Plus, poles.Part);
            _minus.TryAdd(poles.Minus, poles.Part);
        }

        _reference = Bonds.Of(boat.All<Part>()).Concat(boat.All<BatteryBank>().Select(battery => battery.At(TerminalNames.Minus))).Select(terminal => terminal.ToString()).FirstOrDefault();
    }

    /// <summary>The devices between two points and what feeds them, the nearest to the source first; null where neither battery nor converter stands behind them, whatever is on.</summary>
    /// <param name="node">One point.</param>
    /// <param name="otherNode">The other; null for the hull's bond.</param>
    public ImmutableArray<string>? Between(string node, string? otherNode) =>
        (otherNode ?? _reference) is not { } other ? null
        : Way(node, _plus, []) is { } plus ? Joined(plus, Way(other, _minus, []))
        : Joined(Way(other, _plus, []), Way(node, _minus, []));

    private static ImmutableArray<string>? Joined(ImmutableArray<string>? plus, ImmutableArray<string>? minus) =>
        plus is { } one && minus is { } other ? [.. one.Concat(other).Distinct(StringComparer.Ordinal)] : null;

    // From the point to the nearest pole, and on through a converter to what feeds it.
    private ImmutableArray<string>? Way(string from, Dictionary<string, Part> poles, ImmutableHashSet<string> converters)
    {
        PriorityQueue<(string Node, ImmutableArray<string> Passed), int> open = new([((from, []), 0)]);
        HashSet<string> seen = [];
        while (open.TryDequeue(out (string Node, ImmutableArray<string> Passed) at, out int cost))
        {
            if (!seen.Add(at.Node))
            {
                continue;
            }

            if (poles.TryGetValue(at.Node, out Part? source) && !converters.Contains(source.Id) && Feeding(source, converters) is { } feeding)
            {
                return [.. feeding, .. at.Passed];
            }

            foreach (WiringEdge edge in _wiring.At(at.Node))
            {
                int more = Cost(edge.Owner);
                if (more == 0 || _mayPass(edge.Owner.Id))
                {
                    open.Enqueue((edge.Other(at.Node), more == 0 || at.Passed.Contains(edge.Owner.Id) ? at.Passed : at.Passed.Insert(0, edge.Owner.Id)), cost + more);
                }
            }
        }

        return null;
    }

    private ImmutableArray<string>? Feeding(Part source, ImmutableHashSet<string> converters) => source is not DcConverter ? []
        : Poles.Taking(source) is { } taking ? Joined(Way(taking.Plus, _plus, converters.Add(source.Id)), Way(taking.Minus, _minus, converters.Add(source.Id))) : null;

    private static int Cost(Thing owner) => owner switch
    {
        Protection { Means: ProtectionMeans.Breaker } or IsolatorSwitch { IsIsolator: true, OpenIn.Count: 0 } => PlainCost,
        IsolatorSwitch or Changeover => OtherCost,
        _ => 0,
    };
}
