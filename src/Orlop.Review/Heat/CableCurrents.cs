using Orlop.Boat.Things;
using Orlop.Review.Electrics;
using Orlop.Review.Energy;

namespace Orlop.Review.Heat;

/// <summary>
/// The currents of conductors in a condition by running powers at nominal voltage, each on its shortest way: of loads and what stands ready from the battery or the shore, of chargers to the battery that they reach by the shortest way. No circuit is solved for them and no temperature asked, so that
/// nothing goes round in a circle.
/// </summary>
/// <param name="view">The boat.</param>
/// <param name="condition">The condition.</param>
/// <param name="outW">What is given on in all by a converter or an inverter, W, by its id.</param>
internal sealed class CableCurrents(ElectricsView view, Condition condition, Func<string, double> outW)
{
    /// <summary>A current by an element: of what, A (null where that is not known), and the share of the time that it flows.</summary>
    internal sealed record Drawn(string ThingId, double? CurrentA, double DutyFraction);

    private readonly Dictionary<string, List<Drawn>> _drawn = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double> _chargingA = new(StringComparer.Ordinal);

    /// <summary>What loads draw through an element.</summary>
    public IReadOnlyList<Drawn> DrawnThrough(string elementId) => _drawn.GetValueOrDefault(elementId, []);

    /// <summary>What chargers send through an element, A.</summary>
    public double ChargingThroughA(string elementId) => _chargingA.GetValueOrDefault(elementId);

    /// <summary>Notes a load along its way to the battery or the shore, through its converters.</summary>
    public void AddLoad(ElectricLoad load, double? runningW, double dutyFraction)
    {
        Part taker = load;
        double? watts = runningW / (load.IsAc && load.RunningW is not null ? load.PowerFactor?.Value ?? 1 : 1);
        for (int hop = 0; hop < view.Boat.Things.Count && view.WayTo(taker, condition) is { SourceId: { } id } way && view.Boat.Find<Part>(id) is { } source && SystemVoltage.NominalV(source) is { } volts; hop++)
        {
            Note(way, new Drawn(load.Id, watts / volts, dutyFraction));
            if (source is not (Inverter or DcConverter))
            {
                return;
            }

            // All that is on together: an inverter's loss grows with the square.
            watts = hop == 0 ? runningW : watts;
            watts *= outW(id) is > 0 and var all && PlanConversion.Upstream(source, all, new PlanGaps()) is { } taken ? taken / all : 1;
            taker = source;
        }
    }

    /// <summary>Notes what a converter or an inverter takes to stand ready.</summary>
    public void AddIdle(Part converter)
    {
        if (PlanConversion.IdleW(converter, new PlanGaps()) is > 0 and var idle && view.WayTo(converter, condition) is { SourceId: { } id } way && view.Boat.Find<Part>(id) is { } source && SystemVoltage.NominalV(source) is { } volts)
        {
            Note(way, new Drawn(converter.Id, idle / volts, 1));
        }
    }

    /// <summary>Notes a charger that works, at its full output, to the nearest battery and back, and what one on the shore takes there.</summary>
    public void AddCharger(Charger charger)
    {
        if (charger.ShoreA is { } shore && view.WayTo(charger, condition) is { SourceId: not null } fromShore)
        {
            Note(fromShore, new Drawn(charger.Id, shore.Value, 1));
        }

        foreach (string id in view.Boat.All<BatteryBank>().Select(bank => (Out: Way(charger, bank, TerminalNames.Plus), Back: Way(charger, bank, TerminalNames.Minus)))
            .Where(way => way.Out is not null).OrderBy(way => way.Out!.Length).Take(1).SelectMany(way => way.Out!.Concat(way.Back ?? [])))
        {
            _chargingA[id] = _chargingA.GetValueOrDefault(id) + charger.LimitA.Value;
        }
    }

    private string[]? Way(Charger charger, BatteryBank bank, string pole) =>
        ClosedWay.Between(view, condition, charger.At(pole).ToString(), bank.At(pole).ToString(), [])?.Select(edge => edge.Id).ToArray();

    private void Note(ShortestWay way, Drawn drawn)
    {
        foreach (string id in way.Out.Concat(way.Back))
        {
            (_drawn.TryGetValue(id, out List<Drawn>? through) ? through : _drawn[id] = []).Add(drawn);
        }
    }
}
