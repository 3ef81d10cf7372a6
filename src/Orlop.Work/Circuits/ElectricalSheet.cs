using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review;
using Orlop.Review.Electrics;
using Orlop.Review.Electrics.AcSide;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using Orlop.Review.Readings.Checks;

namespace Orlop.Work.Circuits;

/// <summary>What the owner's electrical pages tell: every circuit, the wiring in one line, what protects it and by how much, and how each is made dead.</summary>
public sealed record ElectricalSheet
{
    /// <summary>The alteration; null for the boat as built.</summary>
    public required Alteration? Alteration { get; init; }

    /// <summary>The boat that the pages are about: as altered, or as built without an alteration.</summary>
    public required BoatModel Boat { get; init; }

    /// <summary>The boat as built.</summary>
    public required BoatModel AsBuilt { get; init; }

    /// <summary>The wiring, solved when asked.</summary>
    public required ElectricsView View { get; init; }

    /// <summary>The condition that heat and protection are drawn in; null where the boat has none.</summary>
    public required Condition? Condition { get; init; }

    /// <summary>The conditions over which currents, voltages and faults are told: the one asked for, else all.</summary>
    public required ImmutableArray<Condition> Conditions { get; init; }

    /// <summary>The way to each part that takes power, in the boat's order.</summary>
    public required ImmutableArray<Chain> Chains { get; init; }

    /// <summary>A line for each circuit, in the boat's order.</summary>
    public required ImmutableArray<CircuitLine> Circuits { get; init; }

    /// <summary>A line for each fuse and breaker, in the boat's order.</summary>
    public required ImmutableArray<ProtectionLine> Protection { get; init; }

    /// <summary>A line for each AC circuit and each source that feeds it.</summary>
    public required ImmutableArray<AcRow> AcSide { get; init; }

    /// <summary>The readings on record that are outside what they should be.</summary>
    public required ImmutableArray<Finding> ReadingsOutside { get; init; }

    /// <summary>What the boat is called.</summary>
    public string BoatTitle => Boat.Particulars?.Title is { Length: > 0 } title ? title : "Boat";

    /// <summary>Makes the pages of a boat.</summary>
    /// <param name="engine">Reviews the boat; what it solved before is not solved again.</param>
    /// <param name="alteration">The alteration; null for the boat as built.</param>
    /// <param name="conditionId">The condition that all is told in; null for currents, voltages and faults over all, heat in the first and protection where each circuit runs at most.</param>
    public static ElectricalSheet Make(ReviewEngine engine, BoatModel asBuilt, Alteration? alteration, string? conditionId = null, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(engine);
        ArgumentNullException.ThrowIfNull(asBuilt);
        BoatModel boat = alteration is null ? asBuilt : AlteredBoat.Of(asBuilt, alteration).Boat;
        ElectricsView view = new(boat, Practice.Of(boat, engine.Memo), engine.Memo, token);
        Condition? condition = conditionId is null ? view.Conditions.FirstOrDefault() : boat.Find<Condition>(conditionId);
        Chain[] chains = [.. boat.All<Part>().Select(part => Chain.Trace(boat, view.Wiring, part)).OfType<Chain>()];
        ImmutableArray<Condition> conditions = conditionId is null ? [.. view.Conditions] : condition is null ? [] : [condition];
        Dictionary<string, ILookup<string, FaultRow>> faults = conditions.ToDictionary(one => one.Id, one => FaultTable.Of(view, one).ToLookup(row => ElementIds.ThingOf(row.ConductorId), StringComparer.Ordinal), StringComparer.Ordinal);
        ReviewResult review = alteration is null ? engine.Review(asBuilt, token) : engine.Review(asBuilt, alteration, token);
        return new ElectricalSheet
        {
            Alteration = alteration,
            Boat = boat,
            AsBuilt = asBuilt,
            View = view,
            Condition = condition,
            Conditions = conditions,
            Chains = [.. chains],
            Circuits = [.. chains.Select(chain => CircuitLine.Of(view, chain, conditions, faults))],
            ReadingsOutside = [.. review.Findings.Where(pair => pair.CheckId == ReadingAgreesCheck.Id).Select(pair => pair.After?.Worst).OfType<Finding>().Where(finding => finding.Verdict == Verdict.Fails)],
            AcSide = AcTable.Of(view),
            Protection = [.. boat.All<Protection>().Select(device => ProtectionLine.Of(device, view.Wiring, boat, chains, review))],
        };
    }
}
