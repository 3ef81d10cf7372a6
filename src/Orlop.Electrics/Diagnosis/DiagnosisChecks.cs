using Orlop.Electrics.Working;

namespace Orlop.Electrics.Diagnosis;

/// <summary>Refuses a diagnosis without readings or candidates, with unknown candidates, or with readings that are no numbers.</summary>
internal static class DiagnosisChecks
{
    public static void Refuse(DiagnosisInput input)
    {
        if (input.Voltages.IsDefaultOrEmpty && input.Currents.IsDefaultOrEmpty)
        {
            throw new ArgumentException("diagnosis: no reading is given; at least one is needed.", nameof(input));
        }

        if (input.CandidateIds.IsDefaultOrEmpty)
        {
            throw new ArgumentException("diagnosis: no candidate is given; at least one conductor or contact is needed.", nameof(input));
        }

        var known = input.Network.Conductors.Select(conductor => conductor.Id).Concat(input.Network.Contacts.Select(contact => contact.Id)).ToHashSet();
        foreach (var id in input.CandidateIds.Where(id => !known.Contains(id)))
        {
            throw new ArgumentException($"diagnosis: candidate '{id}' is no conductor or contact of the network.", nameof(input));
        }

        foreach (var reading in input.Voltages)
        {
            var where = $"reading {reading.PlusNode} to {reading.MinusNode}";
            Guard.InRange(reading.VoltageV, -10_000, 10_000, "V", where);
            Guard.Positive(reading.StandardUncertaintyV, 1000, "V", where);
        }

        foreach (var reading in input.Currents)
        {
            var where = $"reading in {reading.ElementId}";
            Guard.InRange(reading.CurrentA, -100_000, 100_000, "A", where);
            Guard.Positive(reading.StandardUncertaintyA, 10_000, "A", where);
        }
    }
}
