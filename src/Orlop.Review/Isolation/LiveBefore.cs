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

    /// <summary>Of some points of a plan; none where nothing is opened, or nothing stands there.</summary>
    /// <param name="liftsMinus">Minus leads come off besides what the plan opens.</param>
    public static LiveBefore Of(BoatModel boat, IsolationResult plan, bool liftsMinus, IEnumerable<ProvingPoint> proofs)
    {
        ProvingPoint[] live = [.. proofs.Where(proof => IsLive(plan, liftsMinus, proof)).DistinctBy(proof => (proof.Node, proof.OtherNode))];
        return new LiveBefore([.. live.Where(proof => !IsMains(boat, proof))], [.. live.Where(proof => IsMains(boat, proof))]);
    }

    /// <summary>Something stands there before anything is opened.</summary>
    public static bool IsLive(IsolationResult plan, bool liftsMinus, ProvingPoint proof)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(proof);
        return proof.NominalV > 0 && (!plan.Openings.IsEmpty || liftsMinus);
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
