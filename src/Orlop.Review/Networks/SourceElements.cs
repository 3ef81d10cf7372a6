using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Electrics.Networks;
using Orlop.Review.Findings;
using Orlop.Review.Heat;

namespace Orlop.Review.Networks;

/// <summary>Turns batteries, chargers, converters, inverters and the shore inlet into sources of the engine.</summary>
internal sealed class SourceElements(Condition condition, ChargeCase charge)
{
    // Stand-ins that keep the network whole where a value is missing; results that rest on them are told as unknown.
    private const double StandInInternalOhm = 0.01;
    private const double StandInEfficiencyFraction = 0.85;
    private const double StandInShoreOhm = 0.5;

    // A regulated output sags by this share of its voltage from no load to rated load (from memory; small against every limit).
    private const double RegulationFraction = 0.002;

    // A shore supply is not limited at its rating; its protection opens. This multiple, or what its resistance lets through, only keeps the number finite.
    private const double ShoreLimitRatio = 20;

    public ImmutableArray<Battery>.Builder Batteries { get; } = ImmutableArray.CreateBuilder<Battery>();

    public ImmutableArray<LimitedSource>.Builder Limited { get; } = ImmutableArray.CreateBuilder<LimitedSource>();

    public ImmutableArray<Converter>.Builder Converters { get; } = ImmutableArray.CreateBuilder<Converter>();

    public List<Gap> Gaps { get; } = [];

    /// <summary>Batteries of which something is guessed.</summary>
    public Dictionary<string, GuessedBattery> Guessed { get; } = new(StringComparer.Ordinal);

    public void Add(Part part)
    {
        switch (part)
        {
            case BatteryBank battery:
                AddBattery(battery);
                break;
            case Charger charger when charge != ChargeCase.Lowest && ChargerOutput.WorksIn(charger, condition):
                Limited.Add(new LimitedSource(
                    charger.Id, Node(charger, TerminalNames.Plus), Node(charger, TerminalNames.Minus), charger.SetpointV.Value, charger.LimitA.Value,
                    RegulationFraction * charger.SetpointV.Value / charger.LimitA.Value));
                break;
            case ShoreInlet inlet when condition.OnShore:
                Limited.Add(new LimitedSource(
                    inlet.Id, Node(inlet, TerminalNames.Live), Node(inlet, TerminalNames.Neutral), inlet.SupplyV.Value,
                    Math.Max(inlet.RatedA.Value * ShoreLimitRatio, inlet.SupplyV.Value / (inlet.SourceOhm?.Value ?? StandInShoreOhm)),
                    Given(inlet, inlet.SourceOhm, "sourceOhm", StandInShoreOhm)));
                break;
            case DcConverter converter:
                AddConverter(converter);
                break;
            case Inverter inverter:
                AddInverter(inverter);
                break;
        }
    }

    private void AddBattery(BatteryBank battery)
    {
        Quantity? fraction = charge switch
        {
            ChargeCase.Full => 1.0,
            ChargeCase.Lowest => condition.LowestChargeFraction,
            _ => condition.ChargeFraction,
        };
        if (fraction is null)
        {
            string field = charge == ChargeCase.Lowest ? "lowestChargeFraction" : "chargeFraction";
            Gaps.Add(new Gap(battery.Id, new FindingInput(condition.Id, field, IsMissing: true)));
        }

        if (GuessedBattery.Of(battery) is { } guess)
        {
            Guessed[battery.Id] = guess;
        }

        double? openCircuit = fraction is null ? null : OpenCircuitV(battery, fraction.Value);
        if (fraction is not null && openCircuit is null)
        {
            Gaps.Add(new Gap(battery.Id, new FindingInput(battery.Id, CurveGap.Field(battery, fraction.Value), IsMissing: true)));
        }

        Batteries.Add(new Battery(
            battery.Id, Node(battery, TerminalNames.Plus), Node(battery, TerminalNames.Minus), openCircuit ?? battery.NominalV.Value,
            Given(battery, battery.InternalResistanceOhm, "internalResistanceOhm", StandInInternalOhm)));
    }

    /// <summary>Open-circuit voltage by straight lines between the points; null outside them or with fewer than two.</summary>
    internal static double? OpenCircuitV(BatteryBank battery, double chargeFraction)
    {
        for (int i = 1; i < battery.OpenCircuit.Count; i++)
        {
            ChargePoint low = battery.OpenCircuit[i - 1], high = battery.OpenCircuit[i];
            if (chargeFraction >= low.ChargeFraction && chargeFraction <= high.ChargeFraction && high.ChargeFraction > low.ChargeFraction)
            {
                double share = (chargeFraction - low.ChargeFraction) / (high.ChargeFraction - low.ChargeFraction);
                return low.OpenCircuitV + (share * (high.OpenCircuitV - low.OpenCircuitV));
            }
        }

        return null;
    }

    private void AddConverter(DcConverter converter)
    {
        double ratedW = converter.OutputV.Value * converter.RatedA.Value;
        double idleW = converter.IdleW?.Value ?? 0;
        double efficiency = Given(converter, converter.EfficiencyFraction, "efficiencyFraction", StandInEfficiencyFraction);
        double proportional = Math.Max(0, ((ratedW / efficiency) - ratedW - idleW) / ratedW);
        Converters.Add(new Converter(
            converter.Id, Node(converter, TerminalNames.InPlus), Node(converter, TerminalNames.InMinus), Node(converter, TerminalNames.OutPlus), Node(converter, TerminalNames.OutMinus),
            converter.OutputV.Value, RegulationFraction * converter.OutputV.Value / converter.RatedA.Value, idleW, proportional, 0, ratedW,
            converter.LeastInputV?.Value ?? 0, !converter.IsIsolated));
    }

    private void AddInverter(Inverter inverter)
    {
        double volts = inverter.OutputV.Value;
        Converters.Add(new Converter(
            inverter.Id, Node(inverter, TerminalNames.InPlus), Node(inverter, TerminalNames.InMinus), Node(inverter, TerminalNames.Live), Node(inverter, TerminalNames.Neutral),
            volts, RegulationFraction * volts * volts / inverter.RatedW.Value,
            Given(inverter, inverter.IdleW, "idleW", 0),
            Given(inverter, inverter.ProportionalLossFraction, "proportionalLossFraction", 1 - StandInEfficiencyFraction),
            Given(inverter, inverter.OhmicLossPerW, "ohmicLossPerW", 0),
            inverter.RatedW.Value, inverter.CutOffV?.Value ?? 0, false));
    }

    private double Given(Part part, Quantity? quantity, string field, double standIn)
    {
        if (quantity is null)
        {
            Gaps.Add(new Gap(part.Id, new FindingInput(part.Id, field, IsMissing: true)));
        }

        return quantity?.Value ?? standIn;
    }

    private static string Node(Part part, string terminal) => part.At(terminal).ToString();
}
