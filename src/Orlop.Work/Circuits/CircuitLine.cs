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
/// <param name="RunningA">Current in the condition at its normal charge, A; null where it is off or cannot be told.</param>
/// <param name="LeastV">Voltage in the condition at the lowest charge, V; null where it is off or cannot be told.</param>
/// <param name="WeakestFaultA">The weakest fault at the end of its last cable, A; null where it cannot be told.</param>
public sealed record CircuitLine(
    Part Taker, Part? From, ImmutableArray<Part> Devices, ImmutableArray<Cable> Cables, double? RunningA, double? LeastV, double? WeakestFaultA)
{
    internal static CircuitLine Of(ElectricsView view, Chain chain, Condition? condition, ILookup<string, FaultRow> faults)
    {
        int bar = chain.Out.ToList().FindLastIndex(item => BarAt(view, item.LeftAt) is not null && item != chain.Out[^1]);
        Thing[] own = [.. chain.Out.Skip(bar + 1).Select(item => item.Thing)];
        Cable[] cables = [.. own.OfType<Cable>()];
        bool isOn = condition is not null && (chain.Taker is not ElectricLoad load || LoadElements.IsOnIn(load, condition.Id));
        return new CircuitLine(
            chain.Taker,
            bar < 0 ? chain.Source : BarAt(view, chain.Out[bar].LeftAt),
            [.. own.Where(thing => thing is Boat.Things.Protection or IsolatorSwitch or Changeover or PlugAndSocket).Cast<Part>()],
            [.. cables],
            isOn && MissingInputs.OfCurrent(view, condition!, chain.Taker.Id).IsEmpty ? view.Solve(condition!, ChargeCase.Normal).LoadA(chain.Taker.Id) : null,
            isOn && MissingInputs.OfVoltage(view, condition!, chain.Taker.Id).IsEmpty ? view.Solve(condition!, ChargeCase.Lowest).LoadV(chain.Taker.Id) : null,
            cables.Length == 0 ? null : faults[cables[^1].Id].Select(row => row.WeakestA).FirstOrDefault());
    }

    private static Busbar? BarAt(ElectricsView view, string node) => view.Boat.Find<Busbar>(ElementIds.ThingOf(node));
}
