using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Electrics;
using Orlop.Review.Networks;

namespace Orlop.Work.Circuits;

/// <summary>A circuit, from its source to what takes the power.</summary>
/// <param name="Taker">What takes the power.</param>
/// <param name="From">The last bar on the way to it, or its source; null where nothing feeds it.</param>
/// <param name="Devices">Fuses, breakers, switches and plugs from there on.</param>
/// <param name="Cables">Cables from there on.</param>
/// <param name="RunningA">The greatest current at normal charge, A; null where it is off in all conditions or cannot be told.</param>
/// <param name="LeastV">The least voltage at the lowest charge, V; null where it is off in all conditions or cannot be told.</param>
/// <param name="WeakestFaultA">The weakest fault at the end of its last cable, A; null where it cannot be told.</param>
public sealed record CircuitLine(
    Part Taker, Part? From, ImmutableArray<Part> Devices, ImmutableArray<Cable> Cables, ToldIn? RunningA, ToldIn? LeastV, ToldIn? WeakestFaultA)
{
    internal static CircuitLine Of(ElectricsView view, Chain chain, IReadOnlyList<Condition> conditions, IReadOnlyDictionary<string, ILookup<string, FaultRow>> faults)
    {
        int bar = chain.Out.ToList().FindLastIndex(item => BarAt(view, item.LeftAt) is not null && item != chain.Out[^1]);
        Thing[] own = [.. chain.Out.Skip(bar + 1).Select(item => item.Thing)];
        Cable[] cables = [.. own.OfType<Cable>()];
        bool IsOn(Condition condition) => chain.Taker is not ElectricLoad load || LoadElements.IsOnIn(load, condition.Id);
        double? Weakest(Condition condition) => faults[condition.Id][cables[^1].Id].Select(row => row.WeakestA).FirstOrDefault();
        return new CircuitLine(
            chain.Taker,
            bar < 0 ? chain.Source : BarAt(view, chain.Out[bar].LeftAt),
            [.. own.Where(thing => thing is Boat.Things.Protection or IsolatorSwitch or Changeover or PlugAndSocket).Cast<Part>()],
            [.. cables],
            ToldIn.Of(conditions, IsOn, condition => MissingInputs.OfCurrent(view, condition, chain.Taker.Id).IsEmpty ? view.Solve(condition, ChargeCase.Normal).LoadA(chain.Taker.Id) : null, isGreatest: true),
            ToldIn.Of(conditions, IsOn, condition => MissingInputs.OfVoltage(view, condition, chain.Taker.Id).IsEmpty ? view.Solve(condition, ChargeCase.Lowest).LoadV(chain.Taker.Id) : null, isGreatest: false),
            cables.Length == 0 ? null : ToldIn.Of(conditions, condition => faults[condition.Id].Contains(cables[^1].Id), Weakest, isGreatest: false));
    }

    private static Busbar? BarAt(ElectricsView view, string node) => view.Boat.Find<Busbar>(ElementIds.ThingOf(node));
}
