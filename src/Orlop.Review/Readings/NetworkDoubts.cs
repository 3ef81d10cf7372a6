using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Electrics.Networks;
using Orlop.Review.Networks;

namespace Orlop.Review.Readings;

/// <summary>The ways in which a boat's network may truly differ from what is put down: each doubt as the network at its low and its high end.</summary>
internal sealed class NetworkDoubts(BoatModel boat, Wiring wiring)
{
    // Real copper lies under the largest resistance of IEC 60228 by a few per cent; a core whose heating is not known may be 65 K warmer than 20 °C (from memory).
    private const double LeastCopperFactor = 0.95;
    private const double WarmCopperFactor = 1.25;

    // A rested battery's voltage at a charge is known to about this share (published tables of one chemistry differ by as much).
    private const double OpenCircuitFraction = 0.01;

    // A load from a sheet, without a ±.
    private const double SheetLoadFraction = 0.1;
    private const double SheetContactFraction = 0.2;
    private static readonly Knowing UnmeasuredLoad = new(0.8, 1.2);

    // A battery's resistance changes with charge, cold and age: a sheet's, or one without a ±, is known to about this share (from memory).
    private const double SheetInternalFraction = 0.2;
    private static readonly Knowing UnmeasuredInternal = Knowing.Of(new Quantity(1, Knowledge.Guessed, TypicalBattery.ResistanceDeviationFraction), Knowing.Assumed, SheetInternalFraction);

    /// <summary>Each doubt as one or two networks; the first is not among them.</summary>
    public IEnumerable<ImmutableArray<Network>> Of(Network network)
    {
        yield return [WithContacts(network, knowing => knowing.LeastFactor), WithContacts(network, knowing => knowing.MostFactor)];
        yield return [WithConductors(network, false), WithConductors(network, true)];
        yield return [network with { Conductors = [.. network.Conductors.Select(conductor => conductor with { Heating = null })] }];
        yield return [WithOpenCircuit(network, 1 - OpenCircuitFraction), WithOpenCircuit(network, 1 + OpenCircuitFraction)];
        yield return [WithInternal(network, knowing => knowing.LeastFactor), WithInternal(network, knowing => knowing.MostFactor)];
        yield return [WithLoads(network, knowing => knowing.LeastFactor), WithLoads(network, knowing => knowing.MostFactor)];
        HashSet<string> solar = [.. boat.All<Charger>().Where(charger => charger.Drive == ChargerDrive.Sun).Select(charger => charger.Id)];
        if (network.LimitedSources.Any(source => solar.Contains(source.Id)))
        {
            yield return [network with { LimitedSources = network.LimitedSources.RemoveAll(source => solar.Contains(source.Id)) }];
        }
    }

    private Network WithContacts(Network network, Func<Knowing, double> factor) => network with
    {
        Contacts = [.. network.Contacts.Select(contact => contact with { ResistanceOhm = contact.ResistanceOhm * factor(OfContact(contact.Id)) })],
    };

    private Knowing OfContact(string id) => wiring.Find(id) is { } edge
        ? Knowing.Of(ResistanceOf(edge), Knowing.Assumed, SheetContactFraction)
        : Knowing.Assumed;

    private static Quantity? ResistanceOf(WiringEdge edge) => edge.Owner switch
    {
        Cable when edge.Id.EndsWith("@from", StringComparison.Ordinal) => edge.Core!.FromEnd?.ResistanceOhm,
        Cable => edge.Core!.ToEnd?.ResistanceOhm,
        Link link => link.ResistanceOhm,
        Protection device => device.ResistanceOhm,
        IsolatorSwitch device => device.ResistanceOhm,
        Changeover device => device.ResistanceOhm,
        PlugAndSocket plug => plug.ContactOhm,
        _ => null,
    };

    private Network WithConductors(Network network, bool isHigh) => network with
    {
        Conductors = [.. network.Conductors.Select(conductor => conductor with { ResistanceAt20Ohm = conductor.ResistanceAt20Ohm * OfConductor(conductor, isHigh) })],
    };

    /// <summary>The network with some of its conductors' resistances multiplied.</summary>
    public static Network WithConductors(Network network, HashSet<string> ids, double factor) => network with
    {
        Conductors = [.. network.Conductors.Select(conductor => ids.Contains(conductor.Id) ? conductor with { ResistanceAt20Ohm = conductor.ResistanceAt20Ohm * factor } : conductor)],
    };

    private double OfConductor(Conductor conductor, bool isHigh)
    {
        Quantity? length = wiring.Find(conductor.Id) is { Owner: Cable cable, Core: { } core } ? core.LengthM ?? cable.LengthM : null;
        Knowing knowing = Knowing.Of(length, new Knowing(0.9, 1.1), 0.02);
        return isHigh ? knowing.MostFactor * (conductor.Heating is null ? WarmCopperFactor : 1) : knowing.LeastFactor * LeastCopperFactor;
    }

    private static Network WithOpenCircuit(Network network, double factor) => network with
    {
        Batteries = [.. network.Batteries.Select(battery => battery with { OpenCircuitV = battery.OpenCircuitV * factor })],
    };

    private Network WithInternal(Network network, Func<Knowing, double> factor) => network with
    {
        Batteries = [.. network.Batteries.Select(battery => battery with { InternalOhm = battery.InternalOhm * factor(OfInternal(battery.Id)) })],
    };

    private Knowing OfInternal(string id) => Knowing.Of(boat.Find<BatteryBank>(id)?.InternalResistanceOhm, UnmeasuredInternal, SheetInternalFraction);

    private Network WithLoads(Network network, Func<Knowing, double> factor) => network with
    {
        Loads = [.. network.Loads.Select(load => load with { Amount = load.Amount * factor(OfLoad(load)) })],
    };

    private Knowing OfLoad(Load load) => boat.Find<ElectricLoad>(load.Id) is { } given
        ? Knowing.Of(given.RunningA ?? given.RunningW, UnmeasuredLoad, SheetLoadFraction)
        : UnmeasuredLoad;
}
