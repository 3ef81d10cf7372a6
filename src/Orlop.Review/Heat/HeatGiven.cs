using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Electrics;
using Orlop.Review.Energy;
using Orlop.Review.Findings;
using Orlop.Review.Networks;

namespace Orlop.Review.Heat;

/// <summary>Heat that a thing sets free where it stands.</summary>
/// <param name="ThingId">The thing.</param>
/// <param name="MostW">With everything on at once.</param>
/// <param name="MeanW">By the share of the time that each load is on.</param>
/// <param name="Missing">What is missing to tell it.</param>
/// <param name="Assumed">What was taken for granted.</param>
public sealed record HeatPart(string ThingId, double MostW, double MeanW, ImmutableArray<FindingInput> Missing, ImmutableArray<string> Assumed);

/// <summary>What each thing of a boat sets free as heat in a condition, from running powers at nominal voltage.</summary>
internal sealed class HeatGiven(ElectricsView view, Condition condition)
{
    private readonly Dictionary<string, List<(double? RunningW, double DutyFraction, string LoadId)>> _behind = Behind(view, condition);

    private CableHeat Cables => field ??= CablesOf();

    /// <summary>Everything in a space that gives heat: what stands in it, and the cables that run there.</summary>
    public IEnumerable<HeatPart> In(Space space)
    {
        IEnumerable<HeatPart?> parts = view.Boat.All<Part>().Where(part => part.Space == space.Id).Select(Of);
        IEnumerable<HeatPart?> gear = view.Boat.All<Gear>().Where(gear => gear.Space == space.Id && gear.HeatW is not null && (gear.HeatIn.Count == 0 || gear.HeatIn.Contains(condition.Id)))
            .Select(gear => new HeatPart(gear.Id, gear.HeatW!.Value, gear.HeatW.Value, [], []));
        return parts.Concat(gear).OfType<HeatPart>().Concat(Cables.In(space));
    }

    private CableHeat CablesOf()
    {
        CableCurrents currents = new(view, condition, id => _behind.GetValueOrDefault(id, []).Sum(load => load.RunningW ?? 0));
        foreach (ElectricLoad load in view.Boat.All<ElectricLoad>().Where(load => LoadElements.IsOnIn(load, condition.Id)))
        {
            currents.AddLoad(load, RunningW(load), Duty(load, condition));
        }

        foreach (Part converter in _behind.Keys.Select(view.Boat.Find<Part>).OfType<Part>().Where(part => part is Inverter or DcConverter))
        {
            currents.AddIdle(converter);
        }

        foreach (Charger charger in view.Boat.All<Charger>().Where(Runs))
        {
            currents.AddCharger(charger);
        }

        return new CableHeat(view, currents);
    }

    private HeatPart? Of(Part part) => part switch
    {
        ElectricLoad load when LoadElements.IsOnIn(load, condition.Id) => OfLoad(load),
        Inverter or DcConverter when _behind.ContainsKey(part.Id) => OfConverter(part),
        Charger charger when Runs(charger) => OfCharger(charger),
        BatteryBank bank => OfBattery(bank),
        _ => null,
    };

    private HeatPart OfLoad(ElectricLoad load)
    {
        PlanGaps gaps = new();
        double? running = RunningW(load);
        gaps.Need(running, load.Id, "runningW");
        if (load.HeatFraction is null)
        {
            gaps.Assume($"all the power of {load.Title} stays as heat where it stands");
        }

        double heat = (running ?? 0) * (load.HeatFraction?.Value ?? 1);
        return Part(load.Id, heat, heat * Duty(load, condition), gaps);
    }

    // Idle + k P of an inverter goes with the mean power, its r P² with the mean of the square; loads are on independently of each other.
    private HeatPart OfConverter(Part part)
    {
        PlanGaps gaps = new();
        double all = 0, mean = 0, spread = 0;
        foreach ((double? running, double duty, string loadId) in _behind[part.Id])
        {
            gaps.Need(running, loadId, "runningW");
            all += running ?? 0;
            mean += duty * (running ?? 0);
            spread += duty * (1 - duty) * (running ?? 0) * (running ?? 0);
        }

        double idle = PlanConversion.IdleW(part, gaps) ?? 0;
        double Lost(double outW) => (PlanConversion.Upstream(part, outW, gaps) ?? outW) - outW;
        return Part(part.Id, idle + Lost(all), idle + Lost(mean) + (part is Inverter { OhmicLossPerW: { } ohmic } ? ohmic.Value * spread : 0), gaps);
    }

    private static HeatPart OfCharger(Charger charger)
    {
        PlanGaps gaps = new();
        gaps.Need(charger.EfficiencyFraction, charger.Id, "efficiencyFraction");
        gaps.Assume($"{charger.Title} gives all it can");
        double heat = charger.EfficiencyFraction is { } efficiency ? charger.LimitA.Value * charger.SetpointV.Value * ((1 / efficiency.Value) - 1) : 0;
        return Part(charger.Id, heat, heat, gaps);
    }

    private HeatPart? OfBattery(BatteryBank bank)
    {
        List<(double? RunningW, double DutyFraction, string LoadId)> drawn = _behind.GetValueOrDefault(bank.Id, []);
        double charging = Enum.GetValues<ChargerDrive>().SelectMany(drive => PlanPower.ChargersReaching(view, bank, drive)).Where(Runs).Sum(charger => charger.LimitA.Value);
        double most = Math.Max(charging, drawn.Sum(load => load.RunningW ?? 0) / bank.NominalV.Value), mean = Math.Max(charging, drawn.Sum(load => load.DutyFraction * (load.RunningW ?? 0)) / bank.NominalV.Value);
        if (most == 0)
        {
            return null;
        }

        PlanGaps gaps = new();
        gaps.Need(bank.InternalResistanceOhm, bank.Id, "internalResistanceOhm");
        double ohm = bank.InternalResistanceOhm?.Value ?? 0;
        return Part(bank.Id, most * most * ohm, mean * mean * ohm, gaps);
    }

    private bool Runs(Charger charger) => ChargerOutput.WorksIn(charger, condition);

    // A load behind each converter on its way and behind the battery at its end, as power out of each.
    private static Dictionary<string, List<(double? RunningW, double DutyFraction, string LoadId)>> Behind(ElectricsView view, Condition condition)
    {
        Dictionary<string, List<(double?, double, string)>> behind = new(StringComparer.Ordinal);
        foreach (ElectricLoad load in view.Boat.All<ElectricLoad>().Where(load => LoadElements.IsOnIn(load, condition.Id)))
        {
            double? running = RunningW(load);
            Part taker = load;
            for (int hop = 0; hop < view.Boat.Things.Count && view.WayTo(taker, condition).SourceId is { } id && view.Boat.Find<Part>(id) is { } source; hop++)
            {
                (behind.TryGetValue(id, out List<(double?, double, string)>? loads) ? loads : behind[id] = []).Add((running, Duty(load, condition), load.Id));
                if (source is not (Inverter or DcConverter))
                {
                    break;
                }

                running = PlanConversion.Upstream(source, running, new PlanGaps()) ?? running;
                taker = source;
            }
        }

        return behind;
    }

    private static double? RunningW(ElectricLoad load) => load.RunningW?.Value ?? (load.RunningA?.Value * load.NominalV.Value);

    private static double Duty(ElectricLoad load, Condition condition) => Math.Min(1, load.Uses.Where(use => use.Condition == condition.Id).Sum(use => use.DutyFraction));

    private static HeatPart Part(string id, double most, double mean, PlanGaps gaps) => new(id, most, mean, gaps.Missing, gaps.Assumed);
}
