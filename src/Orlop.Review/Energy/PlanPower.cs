using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Energy;
using Orlop.Review.Electrics;
using Orlop.Review.Heat;

namespace Orlop.Review.Energy;

/// <summary>What loads take from a plan's battery and what chargers could give it, hour by hour, with what converters and inverters lose on the way.</summary>
internal sealed class PlanPower(ElectricsView view, BatteryBank bank, Condition?[] hours, PlanGaps gaps)
{
    private readonly HashSet<string> _leftOut = new(StringComparer.Ordinal);

    /// <summary>Names of loads that are on by the plan and that the battery does not reach.</summary>
    public ImmutableArray<string> LeftOut => [.. _leftOut.Order(StringComparer.Ordinal)];

    /// <summary>The chargers of a drive that the battery is joined to, with everything closed.</summary>
    public static IEnumerable<Charger> ChargersReaching(ElectricsView view, BatteryBank bank, ChargerDrive drive) =>
        view.Boat.All<Charger>().Where(charger => charger.Drive == drive && view.SourcesReaching([charger.At(TerminalNames.Plus).ToString()]).Contains(bank));

    /// <summary>Every load that the plan has on, and what converters and inverters take to stand ready.</summary>
    public ImmutableArray<HourlyPower> Loads()
    {
        Dictionary<string, double[]> idle = new(StringComparer.Ordinal);
        ImmutableArray<HourlyPower>.Builder powers = ImmutableArray.CreateBuilder<HourlyPower>();
        foreach (ElectricLoad load in view.Boat.All<ElectricLoad>())
        {
            if (load.Uses.Any(use => UseHours.IsHalfGiven(use) && hours.Any(condition => condition?.Id == use.Condition)))
            {
                gaps.InTheWay(load.Id, "uses");
            }

            double[] shares = [.. hours.Select((condition, hour) => UseHours.Share(load, condition, hour))], watts = new double[hours.Length];
            bool isDrawn = false;
            foreach (IGrouping<Condition, int> on in Enumerable.Range(0, hours.Length).Where(hour => shares[hour] > 0).GroupBy(hour => hours[hour]!))
            {
                if (Drawn(load, on, idle) is { } running)
                {
                    isDrawn = true;
                    foreach (int hour in on)
                    {
                        watts[hour] = running * shares[hour];
                    }
                }
            }

            if (isDrawn)
            {
                powers.Add(new HourlyPower(load.Id, [.. watts], [.. new double[hours.Length]], load.IsOnlyInDark == true));
            }
        }

        powers.AddRange(idle.Select(part => new HourlyPower(part.Key, [.. part.Value], [.. new double[hours.Length]])));
        return powers.ToImmutable();
    }

    /// <summary>Chargers that the engine or the shore drives, with what they give in the warmth of their spaces.</summary>
    public ImmutableArray<HourlyPower> Chargers(ChargerDrive drive) =>
    [
        .. ChargersReaching(view, bank, drive).Select(charger => Hourly(charger.Id, hours.OfType<Condition>().Distinct()
            .Where(condition => drive == ChargerDrive.Engine ? condition.EngineRuns : condition.OnShore)
            .ToDictionary(condition => condition.Id, condition => ChargerOutput.ShareFraction(view, charger, [condition], gaps) * charger.LimitA.Value * bank.NominalV.Value, StringComparer.Ordinal))),
    ];

    // Power at the battery while it is on, in hours of one condition; null where it is not the plan's battery that feeds it, or something is missing.
    private double? Drawn(ElectricLoad load, IGrouping<Condition, int> on, Dictionary<string, double[]> idle)
    {
        double? running = load.RunningW?.Value ?? (load.RunningA?.Value * load.NominalV.Value);
        Part[]? way = WayTo(load, on.Key);
        if (way is null)
        {
            _leftOut.Add(load.Title);
            return null;
        }

        if (way[^1].Id != bank.Id)
        {
            return null;
        }

        gaps.Need(running, load.Id, "runningW");
        foreach (Part part in way[..^1])
        {
            running = PlanConversion.Upstream(part, running, gaps);
            if (PlanConversion.IdleW(part, gaps) is { } ready and > 0)
            {
                double[] of = idle.TryGetValue(part.Id, out double[]? known) ? known : idle[part.Id] = new double[hours.Length];
                foreach (int hour in on)
                {
                    of[hour] = ready;
                }
            }
        }

        return running;
    }

    // Converters from the load to the battery, and the battery or shore inlet; null where nothing feeds it.
    private Part[]? WayTo(Part taker, Condition condition)
    {
        List<Part> way = [];
        while (view.WayTo(taker, condition).SourceId is { } id && view.Boat.Find<Part>(id) is { } source)
        {
            way.Add(source);
            if (source is BatteryBank or ShoreInlet || way.Count > view.Boat.Things.Count)
            {
                return [.. way];
            }

            taker = source;
        }

        return null;
    }

    private HourlyPower Hourly(string id, Dictionary<string, double> inCondition) => new(
        id,
        [.. hours.Select(condition => condition is null ? 0 : inCondition.GetValueOrDefault(condition.Id))],
        [.. new double[hours.Length]]);
}
