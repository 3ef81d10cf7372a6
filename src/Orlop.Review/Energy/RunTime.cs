using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Electrics.Energy;

namespace Orlop.Review.Energy;

/// <summary>What a visit's spare energy runs: one thing at a time, and nothing else besides the plan.</summary>
/// <param name="ThingId">The tool or load.</param>
/// <param name="Title">Its name.</param>
/// <param name="RunS">How long it runs; null for packs, or where it cannot be told.</param>
/// <param name="PackCount">How many packs can be filled, whole ones; null for others.</param>
/// <param name="WhyNot">Why it cannot run or be told; null where it can.</param>
public sealed record RunTime(string ThingId, string Title, double? RunS, int? PackCount, string? WhyNot)
{
    // A pack's own charger: common practice, no source.
    private const double PackChargerFraction = 0.8;

    /// <summary>Each tool with a lead or packs, and each load with a power, in the owner's order. By Peukert it counts as beside the plan's greatest hour; packs fill slowly and count as they are.</summary>
    public static ImmutableArray<RunTime> Of(BoatModel boat, double spareWh, EnergyInput? input = null)
    {
        ArgumentNullException.ThrowIfNull(boat);
        double besideW = input is null ? 0 : Enumerable.Range(0, 24).Max(hour => input.Loads.Sum(load => load.InUseW[hour]));
        double Quick(double watts) => input?.Battery.CountsForW(watts, besideW) ?? watts;
        Inverter? inverter = boat.All<Inverter>().MaxBy(one => one.RatedW.Value);
        return
        [
            .. boat.All<Tool>().Where(tool => tool.RunningW is not null || tool.PackWh is not null).Select(tool => OfTool(tool, inverter, spareWh, Quick)),
            .. boat.All<ElectricLoad>().Where(load => !load.IsCrankingMotor).Select(load => OfLoad(load, inverter, spareWh, Quick)),
        ];
    }

    private static RunTime OfTool(Tool tool, Inverter? inverter, double spareWh, Func<double, double> quick)
    {
        if (tool.RunningW is { } running)
        {
            return Running(tool.Id, tool.Title, running.Value, isAc: true, inverter, spareWh, quick);
        }

        double? taken = inverter is null ? null : MainsW(inverter, tool.PackWh!.Value / PackChargerFraction) - inverter.IdleW?.Value;
        return taken is > 0
            ? new RunTime(tool.Id, tool.Title, null, (int)Math.Floor(spareWh / taken.Value), null)
            : new RunTime(tool.Id, tool.Title, null, null, inverter is null ? "no inverter" : "the inverter's losses are not given");
    }

    private static RunTime OfLoad(ElectricLoad load, Inverter? inverter, double spareWh, Func<double, double> quick) =>
        (load.RunningW?.Value ?? (load.RunningA?.Value * load.NominalV.Value)) is { } running and > 0
            ? Running(load.Id, load.Title, running, load.IsAc, inverter, spareWh, quick)
            : new RunTime(load.Id, load.Title, null, null, "its power is not given");

    private static RunTime Running(string id, string title, double watts, bool isAc, Inverter? inverter, double spareWh, Func<double, double> quick)
    {
        if (!isAc)
        {
            return new RunTime(id, title, 3600 * spareWh / quick(watts), null, null);
        }

        if (inverter is null)
        {
            return new RunTime(id, title, null, null, "no inverter");
        }

        if (watts > inverter.RatedW.Value)
        {
            return new RunTime(id, title, null, null, "more than the inverter's rating");
        }

        return MainsW(inverter, watts) is { } drawn
            ? new RunTime(id, title, 3600 * spareWh / quick(drawn), null, null)
            : new RunTime(id, title, null, null, "the inverter's losses are not given");
    }

    private static double? MainsW(Inverter inverter, double watts) =>
        inverter.IdleW?.Value + (watts * (1 + inverter.ProportionalLossFraction?.Value)) + (inverter.OhmicLossPerW?.Value * watts * watts);
}
