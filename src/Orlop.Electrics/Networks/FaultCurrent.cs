using System.Collections.Immutable;

namespace Orlop.Electrics.Networks;

/// <summary>Under which conditions a fault current is reckoned.</summary>
/// <param name="IsHot">Conductors at their rated temperature (where <see cref="Conductor.Heating"/> gives one) instead of 20 °C.</param>
/// <param name="CountsLimitedSources">Whether limited sources and converters add their limit.</param>
public sealed record FaultConditions(bool IsHot, bool CountsLimitedSources)
{
    /// <summary>Cold conductors and every source: what a device must be able to break.</summary>
    public static FaultConditions Greatest { get; } = new(IsHot: false, CountsLimitedSources: true);

    /// <summary>Hot conductors and batteries alone: what must still open a device. Give the batteries their lowest voltage.</summary>
    public static FaultConditions Least { get; } = new(IsHot: true, CountsLimitedSources: false);
}

/// <summary>The prospective current of a bolted fault between two nodes, positive from plus to minus through the fault.</summary>
/// <param name="CurrentA">All sources together: <c>OpenCircuitV / SourceOhm + LimitedA</c>, or what the limits allow where no battery feeds.</param>
/// <param name="OpenCircuitV">Voltage between the nodes before the fault, without loads.</param>
/// <param name="SourceOhm">Resistance between the nodes, sources included; infinite when no metal joins them.</param>
/// <param name="LimitedA">What limited sources and converters add at their limits.</param>
/// <param name="IsFedByBatteries">Whether metal joins the fault to a battery, so that its current follows from voltage and resistance; else the limits are all there is.</param>
public sealed record FaultCurrentResult(double CurrentA, double OpenCircuitV, double SourceOhm, double LimitedA, bool IsFedByBatteries);

/// <summary>
/// What one element is of the resistance between two nodes of a fault: its own resistance times the square of its share of the current, since the power that a current gives off in
/// the whole is the sum of that in the parts. On a way without branches the share is 1.
/// </summary>
/// <param name="Id">Conductor, contact or battery.</param>
/// <param name="Ohm">Its own resistance, above 0.</param>
/// <param name="ShareFraction">Its part of the current that the batteries of the same voltage would drive through the fault, from 0.</param>
public sealed record FaultPiece(string Id, double Ohm, double ShareFraction)
{
    /// <summary>What it is of the resistance between the nodes.</summary>
    public double PartOhm => Ohm * ShareFraction * ShareFraction;
}

/// <summary>
/// Prospective short-circuit current by the theorem of Thévenin: loads removed, batteries behind their internal resistance, limited
/// sources and converters as currents (a converter's limit is its rated power over its output voltage). Steady state, no inductance.
/// </summary>
public static class FaultCurrent
{
    /// <summary>The fault between two nodes, under the greatest conditions unless others are given.</summary>
    /// <exception cref="ArgumentException">A node is not in the network, the two are one, or the network has bad values or a shorted source.</exception>
    public static FaultCurrentResult At(Network network, string plusNode, string minusNode, FaultConditions? conditions = null) =>
        AtEach(network, [(plusNode, minusNode)], conditions)[0] ?? throw new ArgumentException(
            $"Nodes '{plusNode}' and '{minusNode}' are joined with no resistance; a fault needs two separate nodes.", nameof(plusNode));

    /// <summary>
    /// The fault between each pair of nodes, one at a time; the network is factored once. Null for a pair that is joined with no resistance: there is nothing to
    /// short.
    /// </summary>
    /// <exception cref="ArgumentException">A node is not in the network, or the network has bad values or a shorted source.</exception>
    public static ImmutableArray<FaultCurrentResult?> AtEach(
        Network network, IReadOnlyList<(string PlusNode, string MinusNode)> faults, FaultConditions? conditions = null)
    {
        ArgumentNullException.ThrowIfNull(faults);
        var (found, wiring) = NetworkCheck.Examine(network);
        var preventing = found.FirstOrDefault(f => f.Kind is not (NetworkFaultKind.Floating or NetworkFaultKind.EnergyLoop));
        if (preventing is not null || wiring is null)
        {
            throw new ArgumentException(preventing?.Message, nameof(network));
        }

        var prepared = new PreparedFaults(wiring, conditions ?? FaultConditions.Greatest);
        return [.. faults.Select(fault => prepared.Between(fault.PlusNode, fault.MinusNode))];
    }
}
