using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Electrics.Conductors;
using Orlop.Electrics.Networks;
using Orlop.Review.Findings;
using Orlop.Review.Heat;
using Orlop.Review.Practices;

namespace Orlop.Review.Networks;

/// <summary>The conductors and contacts of a network, what was missing to make them, and what was assumed.</summary>
internal sealed record ConductorSet(
    ImmutableArray<Conductor> Conductors, ImmutableArray<Contact> Contacts, ImmutableArray<Gap> Gaps, IReadOnlyDictionary<string, FindingInput> Assumed);

/// <summary>Turns edges of the wiring into conductors and contacts of the engine.</summary>
internal sealed class ConductorElements(BoatModel boat, SpaceAir air, Practice? practice, Condition condition, bool isForGreatestFault)
{
    /// <summary>Length that stands in for one that is not given, so that the network stays whole; its results are told as unknown. Nothing, for the greatest fault.</summary>
    private const double StandInLengthM = 1;

    private readonly Dictionary<string, (ConductorHeating? Heating, ImmutableArray<FindingInput> Missing)> _heating = new(StringComparer.Ordinal);

    private readonly ImmutableArray<Conductor>.Builder _conductors = ImmutableArray.CreateBuilder<Conductor>();
    private readonly ImmutableArray<Contact>.Builder _contacts = ImmutableArray.CreateBuilder<Contact>();
    private readonly List<Gap> _gaps = [];
    private readonly Dictionary<string, FindingInput> _assumed = new(StringComparer.Ordinal);

    /// <summary>All that is closed in the condition.</summary>
    public ConductorSet Of(Wiring wiring)
    {
        foreach (WiringEdge edge in wiring.Edges)
        {
            if (edge.IsClosedIn(condition.Id))
            {
                Add(edge);
            }
        }

        return new ConductorSet(_conductors.ToImmutable(), _contacts.ToImmutable(), [.. _gaps], _assumed);
    }

    private void Add(WiringEdge edge)
    {
        if (edge is { Kind: WiringEdgeKind.Core, Owner: Cable cable })
        {
            AddCore(edge, cable, edge.Core!);
            return;
        }

        EdgeContact contact = EdgeContact.Of(edge);
        if (contact.Given is null)
        {
            _assumed[edge.Id] = contact.AssumedInput(edge);
        }

        _contacts.Add(new Contact(edge.Id, edge.A, edge.B, contact.Given?.Value ?? (isForGreatestFault ? 0 : contact.AssumedOhm)));
    }

    private void AddCore(WiringEdge edge, Cable cable, Core core)
    {
        Quantity? length = core.LengthM ?? cable.LengthM;
        if (length is null)
        {
            _gaps.Add(new Gap(edge.Id, new FindingInput(cable.Id, "lengthM", IsMissing: true)));
        }

        // The greatest fault is reckoned with cold conductors, whatever surrounds them.
        if (isForGreatestFault)
        {
            AddCore(edge, cable, length, heating: null);
            return;
        }

        if (!_heating.TryGetValue(cable.Id, out (ConductorHeating? Heating, ImmutableArray<FindingInput> Missing) heating))
        {
            _heating[cable.Id] = heating = HeatingOf(cable);
        }

        _gaps.AddRange(heating.Missing.Select(missing => new Gap(edge.Id, missing)));
        AddCore(edge, cable, length, heating.Heating);
    }

    private void AddCore(WiringEdge edge, Cable cable, Quantity? length, ConductorHeating? heating)
    {
        (double mostOhm, double leastOhm) = ConductorResistance.OfMetreAt20(cable.AreaMm2.Value, StrandOf(cable), IsTinned(cable));
        double ohm = (isForGreatestFault ? leastOhm : mostOhm) * (length?.Value ?? (isForGreatestFault ? 0 : StandInLengthM));
        if (ohm > 0)
        {
            _conductors.Add(new Conductor(edge.Id, edge.A, edge.B, ohm, heating));
        }
        else
        {
            _contacts.Add(new Contact(edge.Id, edge.A, edge.B, 0));
        }
    }

    private (ConductorHeating? Heating, ImmutableArray<FindingInput> Missing) HeatingOf(Cable cable)
    {
        Surroundings surroundings = CoreSurroundings.Of(boat, air, cable, condition);
        ImmutableArray<FindingInput> missing = surroundings.Missing;
        if (cable.InsulationC is null)
        {
            missing = missing.Add(new FindingInput(cable.Id, "insulationC", IsMissing: true));
        }

        if (practice is null || surroundings.AmbientC is not { } ambient || cable.InsulationC is not { } insulation)
        {
            return (null, missing);
        }

        AmpacityLookup row = practice.Ampacities.Lookup(cable.AreaMm2.Value, insulation.Value);
        return row.Row is null
            ? (null, missing)
            : (new ConductorHeating(ambient, row.Row.InsulationC, practice.Ampacities.AmbientC, row.Row.CurrentA), missing);
    }

    internal static Orlop.Electrics.Conductors.StrandClass StrandOf(Cable cable) =>
        cable.Strands is Orlop.Boat.Things.StrandClass.Flexible5 or Orlop.Boat.Things.StrandClass.FlexibleTinned5 ? Orlop.Electrics.Conductors.StrandClass.Class5 : Orlop.Electrics.Conductors.StrandClass.Class2;

    internal static bool IsTinned(Cable cable) =>
        cable.Strands is Orlop.Boat.Things.StrandClass.FlexibleTinned5 or Orlop.Boat.Things.StrandClass.StrandedTinned2;
}
