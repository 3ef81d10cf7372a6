using Orlop.Review.Findings;

namespace Orlop.Review.Mending;

/// <summary>
/// The rules of direction: which other choice for a thing cannot clear a finding, given one that did not. They are physics alone — a thinner
/// cable never loses less voltage, a bigger fuse never protects a smaller cable better — and let the search rule out sets that it has not reviewed.
/// Where no direction is sure, only the same choice counts.
/// </summary>
internal static class MendRules
{
    /// <summary>With everything else the same, <paramref name="other"/> cannot clear what <paramref name="had"/> did not.</summary>
    public static bool CannotHelp(Objection objection, MendSlot slot, MendTraits other, MendTraits had)
    {
        if (other == had)
        {
            return true;
        }

        bool isOwn = slot.AddedIds.IsEmpty ? objection.IsOf(slot.ThingId) : slot.AddedIds.Any(objection.IsOf);
        return !(isOwn && objection.Finding.Verdict == Verdict.Unknown) && slot.Kind switch
        {
            SlotKind.Cable => Cable(objection, isOwn, other, had),
            SlotKind.Device => Device(objection, isOwn, other, had),
            SlotKind.Contact => Contact(objection, isOwn, other, had),
            SlotKind.Start => Start(objection, other, had),
            SlotKind.Fuse => Fuse(objection, isOwn, other, had),
            SlotKind.Air => Air(objection, slot, other, had),
            // What is crimped on is judged by these alone.
            SlotKind.End => objection.Finding.CheckId is not ("lug-fits-cable" or "ring-fits-stud" or "stud-stack"),
            _ => false,
        };
    }

    private static bool Cable(Objection objection, bool isOwn, MendTraits other, MendTraits had) => objection.Finding.CheckId switch
    {
        "voltage-drop" or "least-voltage" or "voltage-while-starting" or "load-can-be-served" => ConductsNoBetter(other, had),
        "breaking-capacity" => AtMost(had.AreaMm2, other.AreaMm2) && AtMost(other.LengthM, had.LengthM),
        "conductor-ampacity" => isOwn ? AtMost(other.AreaMm2, had.AreaMm2) && AtMost(other.InsulationC, had.InsulationC) && IsLaidAlike(other, had) : objection.IsClear && other.Route == had.Route,
        Objection.BundleCheck => isOwn ? AtMost(other.AreaMm2, had.AreaMm2) && AtMost(other.InsulationC, had.InsulationC) && IsLaidAlike(other, had) : objection.IsClear,
        "conductor-protection" => AtMost(had.LengthM, other.LengthM) && other.Route == had.Route
            && (!isOwn || (AtMost(other.AreaMm2, had.AreaMm2) && AtMost(other.InsulationC, had.InsulationC))),
        "fault-clears" => ConductsNoBetter(other, had) && other.Route == had.Route && (!isOwn || other.InsulationC == had.InsulationC),
        // What it loses warms the space it runs in.
        "space-temperature" or "charger-output" or "charge-temperature" => ConductsNoBetter(other, had) && other.Route == had.Route,
        "smallest-conductor" => !isOwn || AtMost(other.AreaMm2, had.AreaMm2),
        "cable-reaches" => other.IsMoved == had.IsMoved && (!isOwn || AtMost(other.LengthM, had.LengthM)),
        "run-clear-of-bilge" => !isOwn || other.Route == had.Route,
        "lug-fits-cable" => !isOwn,
        "ring-fits-stud" => true,
        "let-through" or "selectivity" => false,
        _ => IsOfCurrent(objection) ? objection.IsClear : IsOfJoining(objection),
    };

    private static bool Device(Objection objection, bool isOwn, MendTraits other, MendTraits had) => objection.Finding.CheckId switch
    {
        "voltage-drop" or "least-voltage" or "voltage-while-starting" or "load-can-be-served" => AtMost(had.ResistanceOhm, other.ResistanceOhm),
        "breaking-capacity" => objection.IsClear && (!isOwn || AtMost(other.BreakingA, had.BreakingA)),
        "start-opens-device" => isOwn ? other.Gates == had.Gates && AtMost(other.RatedA, had.RatedA) : objection.IsClear,
        "device-carries-load" => isOwn ? AtMost(other.RatedA, had.RatedA) : objection.IsClear,
        "device-voltage" => !isOwn || AtMost(other.RatedV, had.RatedV),
        "conductor-protection" or "plugs-that-mate" => AtMost(had.RatedA, other.RatedA),
        "fault-clears" => other.Gates == had.Gates && AtMost(had.RatedA, other.RatedA),
        "let-through" => !isOwn || (other.Gates == had.Gates && AtMost(had.RatedA, other.RatedA)),
        "selectivity" => !isOwn,
        // A breaker is opened; a fuse must be pulled.
        "can-be-made-dead" => other.Means == had.Means,
        "lug-fits-cable" or "ring-fits-stud" or "stud-stack" => other.MadeOffAs == had.MadeOffAs,
        "smallest-conductor" or "cable-reaches" or "run-clear-of-bilge" => true,
        _ => IsOfCurrent(objection) ? objection.IsClear : IsOfJoining(objection),
    };

    // No fuse more is one of any rating that never opens; it also moves the end of a cable and comes between a device and what that spares.
    private static bool Fuse(Objection objection, bool isOwn, MendTraits other, MendTraits had) =>
        objection.Finding.CheckId is not ("let-through" or "cable-reaches" or "link-reaches" or "rings-per-stud" or "can-be-made-dead" or "lug-fits-cable" or "ring-fits-stud" or "stud-stack") && Device(objection, isOwn, other, had);

    private static bool Contact(Objection objection, bool isOwn, MendTraits other, MendTraits had) => objection.Finding.CheckId switch
    {
        "voltage-drop" or "least-voltage" or "voltage-while-starting" or "load-can-be-served" => AtMost(had.ResistanceOhm, other.ResistanceOhm),
        "plugs-that-mate" => !isOwn || (other.Keying == had.Keying && other.Arrangement == had.Arrangement && AtMost(other.RatedA, had.RatedA)),
        "part-carries-current" => isOwn ? AtMost(other.RatedA, had.RatedA) : objection.IsClear,
        "device-voltage" => !isOwn || AtMost(other.RatedV, had.RatedV),
        "conductor-protection" or "smallest-conductor" or "cable-reaches" or "run-clear-of-bilge" or "lug-fits-cable" or "ring-fits-stud" => true,
        "breaking-capacity" => objection.IsClear,
        "fault-clears" => AtMost(had.ResistanceOhm, other.ResistanceOhm),
        "let-through" or "selectivity" => false,
        _ => IsOfCurrent(objection) ? objection.IsClear : IsOfJoining(objection),
    };

    // Less air never leaves a space cooler that is too warm, where the air that comes in is cooler; a fan is a load more, and its circuit is compared with none.
    private static bool Air(Objection objection, MendSlot slot, MendTraits other, MendTraits had) => !slot.AddedIds.Any(objection.IsOf) && (objection.IsOfWarmth
        ? slot.IsAirCooler ? AtMost(other.Draught, had.Draught) && AtMost(other.FanM3PerH, had.FanM3PerH) : other.Draught == had.Draught && other.FanM3PerH == had.FanM3PerH
        : had.Circuit == 0 || (other.Circuit == had.Circuit && other.FanM3PerH == had.FanM3PerH));

    private static bool Start(Objection objection, MendTraits other, MendTraits had) => objection.Finding.CheckId switch
    {
        "load-can-be-served" => AtMost(had.StartRatio, other.StartRatio),
        // What bears a dip for a while drops out where it lasts.
        "voltage-while-starting" or "start-opens-device" or "converter-carries-load" => AtMost(had.StartRatio, other.StartRatio) && AtMost(had.StartS, other.StartS),
        _ => true,
    };

    // Thinner, longer or hotter: its resistance is taken at the temperature that its insulation is rated for.
    private static bool ConductsNoBetter(MendTraits other, MendTraits had) =>
        AtMost(other.AreaMm2, had.AreaMm2) && AtMost(had.LengthM, other.LengthM) && AtMost(had.InsulationC, other.InsulationC);

    // What a device that is moved makes longer lies where the device stands.
    private static bool IsLaidAlike(MendTraits other, MendTraits had) => other.Route == had.Route && other.IsMoved == had.IsMoved;

    private static bool IsOfCurrent(Objection objection) =>
        objection.Finding.CheckId is "conductor-ampacity" or Objection.BundleCheck or "device-carries-load" or "part-carries-current" or "converter-carries-load" or "start-opens-device";

    // What depends on how things are joined and on their nominal figures alone.
    private static bool IsOfJoining(Objection objection) => objection.Finding.CheckId
        is "plugs-that-mate" or "device-voltage" or "voltage-not-too-high" or "one-ac-source" or "residual-current-device" or "can-be-made-dead" or "rings-per-stud" or "load-has-a-condition" or "owner-limit" or "link-reaches";

    // Two figures that are not known are the same; one that is not known is not compared with one that is.
    private static bool AtMost(double? one, double? other) => one == other || one < other;
}
