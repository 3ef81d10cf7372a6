using System.Collections.Immutable;
using Orlop.Electrics.Networks;

namespace Orlop.Electrics.Diagnosis;

/// <summary>A voltage read between two nodes.</summary>
/// <param name="VoltageV">Potential of <paramref name="PlusNode"/> over <paramref name="MinusNode"/>.</param>
/// <param name="StandardUncertaintyV">One standard deviation, meter and unsteadiness together; above 0.</param>
public sealed record VoltageReading(string PlusNode, string MinusNode, double VoltageV, double StandardUncertaintyV);

/// <summary>A current read in a conductor, contact, load or source.</summary>
/// <param name="CurrentA">Positive as the network counts it.</param>
/// <param name="StandardUncertaintyA">One standard deviation; above 0.</param>
public sealed record CurrentReading(string ElementId, double CurrentA, double StandardUncertaintyA);

/// <summary>A network as it should be, what was read on it, and where a bad joint may sit.</summary>
public sealed record DiagnosisInput
{
    public required Network Network { get; init; }

    public ImmutableArray<VoltageReading> Voltages { get; init; } = [];

    public ImmutableArray<CurrentReading> Currents { get; init; } = [];

    /// <summary>Ids of conductors and contacts, at least one.</summary>
    public required ImmutableArray<string> CandidateIds { get; init; }
}
