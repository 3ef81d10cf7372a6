using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Isolation;

namespace Orlop.Review.Isolation;

/// <summary>
/// What is read at the points that are to be proved dead while they are still live: a dead reading is worth something only where the same probes on the same metal showed a voltage before (common
/// practice, no source). Mains is not read behind its covers.
/// </summary>
/// <param name="Read">Points that are read.</param>
/// <param name="Covered">Points of mains, which stay covered.</param>
public sealed record LiveBefore(ImmutableArray<ProvingPoint> Read, ImmutableArray<ProvingPoint> Covered)
{
    /// <summary>Voltage from which only a licensed person works on it (the line that most practices draw for DC and AC on board).</summary>
    public const double LicensedFromV = 50;

    /// <summary>What must be on for the points that are read to read anything, the nearest to the source first.</summary>
    public ImmutableArray<string> PutOn { get; init; } = [];

    /// <summary>Of some points of a plan; none where nothing is opened, or nothing stands there.</summary>
    /// <param name="boat">The boat as she stands.</param>
    /// <param name="wiring">Her wiring.</param>
    /// <param name="liftsMinus">Minus leads come off besides what the plan opens.</param>
    public static LiveBefore Of(BoatModel boat, Wiring wiring, IsolationResult plan, bool liftsMinus, IEnumerable<ProvingPoint> proofs)
    {
        ProvingPoint[] live = [.. proofs.Where(proof => IsLive(boat, wiring, plan, liftsMinus, proof)).DistinctBy(proof => (proof.Node, proof.OtherNode))];
        ImmutableArray<ProvingPoint> read = [.. live.Where(proof => !IsMains(boat, proof))];
        return new LiveBefore(read, [.. live.Where(proof => IsMains(boat, proof))])
        {
            PutOn = [.. read.SelectMany(proof => OnFor(boat, wiring, proof)).Distinct(StringComparer.Ordinal)],
        };
    }

    /// <summary>Something stands there before anything is opened, once what leads there is on.</summary>
    public static bool IsLive(BoatModel boat, Wiring wiring, IsolationResult plan, bool liftsMinus, ProvingPoint proof)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(proof);
        return proof.NominalV > 0 && (!plan.Openings.IsEmpty || liftsMinus) && IsFed(boat, wiring, proof);
    }

    /// <summary>Something can stand between the two points in that boat, once what leads there is on; what is still to be wired to them feeds nothing yet, and between two points of one pole nothing stands.</summary>
    public static bool IsFed(BoatModel boat, Wiring wiring, ProvingPoint proof)
    {
        ArgumentNullException.ThrowIfNull(proof);
        return IsMains(boat, proof) || !MustGive(boat, wiring, proof).IsEmpty || new SwitchedOn(boat, wiring).Between(proof.Node, proof.OtherNode) is not null;
    }

    /// <summary>What must be on for a point to read anything, the nearest to the source first.</summary>
    public static ImmutableArray<string> OnFor(BoatModel boat, Wiring wiring, ProvingPoint proof)
    {
        ArgumentNullException.ThrowIfNull(proof);
        return new SwitchedOn(boat, wiring).Between(proof.Node, proof.OtherNode) ?? [];
    }

    /// <summary>The point carries mains voltage, or may.</summary>
    public static bool IsMains(BoatModel boat, ProvingPoint proof)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(proof);
        return proof.IsAc != false || proof.NominalV >= LicensedFromV
            || new[] { proof.Node, proof.OtherNode }.OfType<string>().Any(node => boat.Find<Part>(ElementIds.ThingOf(node)) is { } part && IsMains(part) && part is not Inverter);
    }

    /// <summary>The part carries mains voltage somewhere: only a licensed person works on it.</summary>
    public static bool IsMains(Part part) => part switch
    {
        Inverter or ShoreInlet or Changeover or ElectricLoad { IsAc: true } or Charger { Drive: ChargerDrive.Shore } => true,
        BatteryBank battery => battery.NominalV.Value >= LicensedFromV,
        DcConverter converter => converter.OutputV.Value >= LicensedFromV,
        ElectricLoad load => load.NominalV.Value >= LicensedFromV,
        _ => false,
    };

    /// <summary>Sources that must give for a point to read anything, with everything else off: none where a battery does.</summary>
    public static ImmutableArray<Part> MustGive(BoatModel boat, Wiring wiring, ProvingPoint proof)
    {
        ArgumentNullException.ThrowIfNull(proof);
        Part[] sources = [.. new[] { proof.Node, proof.OtherNode }.OfType<string>().SelectMany(node => PointVoltage.At(boat, wiring, node).Sources).Distinct()];
        return sources.Any(source => source is BatteryBank) ? [] : [.. sources];
    }
}
