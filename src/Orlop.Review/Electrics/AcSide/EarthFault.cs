using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Protection;
using Orlop.Review.Findings;

namespace Orlop.Review.Electrics.AcSide;

/// <summary>The fault to earth at the far end of a circuit of alternating current, fed by one source.</summary>
/// <param name="Circuit">The circuit.</param>
/// <param name="Bonds">Where the neutral is joined to earth meanwhile.</param>
/// <param name="Earth">The way of the fault back, from the taker on; null where the taker's earth is joined to nothing that leads back.</param>
/// <param name="Input">What was reckoned; null where something is missing.</param>
/// <param name="Result">How it ends; null where something is missing.</param>
/// <param name="ColdOhm">The loop as a meter reads it, conductors at 20 °C; null where something is missing.</param>
/// <param name="EarthColdOhm">The protective conductor alone at 20 °C; null where something is missing.</param>
/// <param name="IsRatingForLimit">The source does not say what it gives into a short circuit, so no more than its rating is counted on.</param>
/// <param name="Missing">What is not given.</param>
/// <param name="Assumed">What is taken for resistances that nobody gave.</param>
internal sealed record EarthFault(
    AcCircuit Circuit, NeutralBonds Bonds, ImmutableArray<WiringEdge>? Earth, EarthFaultInput? Input, EarthFaultResult? Result, double? ColdOhm, double? EarthColdOhm,
    bool IsRatingForLimit, ImmutableArray<FindingInput> Missing, ImmutableArray<FindingInput> Assumed)
{
    // Devices without a rating above 0 take no part.
    private ImmutableArray<Protection> Rated => [.. Circuit.Devices.Where(device => device.RatedA.Value > 0)];

    /// <summary>What ends the fault: a device, or the source itself; null where nothing may, or it cannot be told.</summary>
    public Part? EndedBy => Result?.EndsS is null ? null : Result.EndedByIndex is { } index ? Rated[index] : Circuit.Source;

    /// <summary>Reckons a circuit's fault.</summary>
    public static EarthFault Of(ElectricsView view, AcCircuit circuit)
    {
        NeutralBonds bonds = NeutralBonds.Of(view, circuit.Source, circuit.Condition);
        NeutralBond? said = NeutralBonds.Said(circuit.Source);
        bool isOnBoard = said == NeutralBond.Never && !bonds.OnBoard.IsEmpty;
        string back = circuit.Source.At(isOnBoard ? TerminalNames.Neutral : TerminalNames.Earth).ToString();
        ImmutableArray<WiringEdge>? earth = EarthWay.Between(view, circuit.Condition, circuit.Taker.At(TerminalNames.Earth).ToString(), back);
        WayResistance live = WayResistance.Hot(circuit.Live), hot = WayResistance.Hot(earth ?? []);
        FindingInput[] missing = [.. live.Missing, .. hot.Missing, .. said is null ? [new FindingInput(circuit.Source.Id, "neutralBond", IsMissing: true)] : Array.Empty<FindingInput>(), .. MissingOf(circuit.Source)];
        EarthFault fault = new(circuit, bonds, earth, null, null, null, WayResistance.Cold(earth ?? []).Ohm, false, [.. missing.Distinct()], [.. live.Assumed.Concat(hot.Assumed).Distinct()]);
        if (missing.Length > 0 || earth is null || !(SystemVoltage.NominalV(circuit.Source) is > 50 and <= 400 and var nominalV))
        {
            return fault;
        }

        EarthFaultInput input = new()
        {
            Subject = circuit.Taker.Id,
            NominalV = nominalV,
            Return = said switch { NeutralBond.Never when !isOnBoard => EarthReturn.None, NeutralBond.OwnEarth => EarthReturn.Ground, _ => EarthReturn.Neutral },
            SourceOhm = (circuit.Source as ShoreInlet)?.SourceOhm?.Value ?? 0,
            LimitA = circuit.Source is Inverter inverter ? inverter.ShortCircuitA?.Value ?? inverter.RatedW.Value / inverter.OutputV.Value : null,
            ShutsDownS = (circuit.Source as Inverter)?.ShutsDownS?.Value,
            LiveOhm = live.Ohm!.Value,
            EarthOhm = hot.Ohm!.Value,
            Devices = [.. fault.Rated.Select(Device)],
        };
        double? cold = circuit.Source is ShoreInlet ? input.SourceOhm + WayResistance.Cold(circuit.Live).Ohm + fault.EarthColdOhm : null;
        return fault with { Input = input, Result = EarthFaultLoop.Calculate(input), ColdOhm = cold, IsRatingForLimit = circuit.Source is Inverter { ShortCircuitA: null } };
    }

    /// <summary>The same fault with the least and with the most resistance of a shore supply that nobody measured; none where it is in no doubt.</summary>
    public IEnumerable<EarthFault> InDoubt() => Input is { } input && Circuit.Source is ShoreInlet { SourceOhm: { } ohm } && OhmBand.IsDoubted(ohm)
        ? new[] { OhmBand.Least(ohm), OhmBand.Most(ohm) }.Select(sourceOhm => input with { SourceOhm = sourceOhm }).Select(doubted => this with { Input = doubted, Result = EarthFaultLoop.Calculate(doubted) })
        : [];

    private static IEnumerable<FindingInput> MissingOf(Part source) =>
        source is ShoreInlet { SourceOhm: null } ? [new FindingInput(source.Id, "sourceOhm", IsMissing: true)] : [];

    private static EarthFaultDevice Device(Protection device) => new()
    {
        Subject = device.Title,
        RatingA = device.RatedA.Value,
        Curve = DeviceGates.Of(device),
        ResidualA = device.ResidualA?.Value,
        ResidualOpensS = device.ResidualOpensS?.Value,
    };
}
