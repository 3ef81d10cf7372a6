using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Conductors;
using Orlop.Review.Findings;
using Orlop.Review.Networks;

namespace Orlop.Review.Electrics.AcSide;

/// <summary>The resistance of a way: its cores at a temperature, with all joints and devices.</summary>
/// <param name="Ohm">Null where something is missing.</param>
/// <param name="LengthM">Length of its cores.</param>
/// <param name="Missing">What is not given.</param>
/// <param name="Assumed">What is taken for resistances that nobody gave.</param>
internal sealed record WayResistance(double? Ohm, double LengthM, ImmutableArray<FindingInput> Missing, ImmutableArray<FindingInput> Assumed)
{
    /// <summary>With each conductor as hot as its insulation is rated for.</summary>
    public static WayResistance Hot(IEnumerable<WiringEdge> edges) => Of(edges, cable => cable.InsulationC?.Value);

    /// <summary>With every conductor at 20 °C, as a meter reads it.</summary>
    public static WayResistance Cold(IEnumerable<WiringEdge> edges) => Of(edges, _ => 20);

    private static WayResistance Of(IEnumerable<WiringEdge> edges, Func<Cable, double?> temperatureC)
    {
        double ohm = 0, lengthM = 0;
        List<FindingInput> missing = [], assumed = [];
        foreach (WiringEdge edge in edges)
        {
            if (edge is { Kind: WiringEdgeKind.Core, Owner: Cable cable })
            {
                (double core, double coreM) = OfCore(cable, edge.Core!, temperatureC(cable), missing);
                (ohm, lengthM) = (ohm + core, lengthM + coreM);
                continue;
            }

            EdgeContact contact = EdgeContact.Of(edge);
            ohm += contact.Given?.Value ?? contact.AssumedOhm;
            if (contact.Given is null)
            {
                assumed.Add(contact.AssumedInput(edge));
            }
        }

        return new WayResistance(missing.Count == 0 ? ohm : null, lengthM, [.. missing.Distinct()], [.. assumed.Distinct()]);
    }

    private static (double Ohm, double LengthM) OfCore(Cable cable, Core core, double? conductorC, List<FindingInput> missing)
    {
        if ((core.LengthM ?? cable.LengthM) is not { } length)
        {
            missing.Add(new FindingInput(cable.Id, "lengthM", IsMissing: true));
            return (0, 0);
        }

        if (conductorC is null)
        {
            missing.Add(new FindingInput(cable.Id, "insulationC", IsMissing: true));
            return (0, length.Value);
        }

        ConductorResistanceResult resistance = ConductorResistance.Calculate(new ConductorResistanceInput
        {
            Subject = $"cable '{cable.Id}'",
            AreaMm2 = cable.AreaMm2.Value,
            LengthM = length.Value,
            Strand = ConductorElements.StrandOf(cable),
            IsTinned = ConductorElements.IsTinned(cable),
            ConductorC = conductorC.Value,
        });
        return (resistance.ResistanceOhm, length.Value);
    }
}
