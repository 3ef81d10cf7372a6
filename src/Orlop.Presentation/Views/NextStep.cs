using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Findings;

namespace Orlop.Presentation.Views;

/// <summary>The one measurement or step that brings a boat furthest now.</summary>
/// <param name="Text">What to do and why.</param>
/// <param name="ThingId">Where it is typed; null when it is no field.</param>
/// <param name="Field">The field.</param>
public sealed record NextStep(string Text, string? ThingId = null, string? Field = null)
{
    /// <summary>The next step for a boat; null when she has what the review needs to begin.</summary>
    public static NextStep? For(BoatModel boat) => Particulars(boat) ?? Judging(boat) ?? Hull(boat) ?? Electrics(boat);

    /// <summary>The same with her findings known: while something fails, what is still to be drawn of her electrics waits.</summary>
    public static NextStep? For(BoatModel boat, FindingsView? findings) => Particulars(boat) ?? Judging(boat) ?? Hull(boat)
        ?? (Electrics(boat) is not { } electrics ? null : findings?.Groups.SelectMany(group => group.Rows).FirstOrDefault(row => row.Verdict == Verdict.Fails) is { } failing
            ? new NextStep($"Look at what fails before anything is added: {failing.Headline}.") : electrics);

    /// <summary>The next step for her electrics alone: her size has no part in them.</summary>
    public static NextStep? ForElectrics(BoatModel boat) => Electrics(boat) ?? Judging(boat);

    private static NextStep? Particulars(BoatModel boat) => boat.Particulars switch
    {
        null => new NextStep("Add the particulars of the boat: length, breadth, depth and draught set the scale of everything."),
        { LengthOverAllM: null } => new NextStep("Measure her length over all with a tape along the rail; the drawing needs it.", boat.Particulars!.Id, "lengthOverAllM"),
        { BeamM: null } => new NextStep("Measure her greatest breadth.", boat.Particulars!.Id, "beamM"),
        { DraughtM: null } => new NextStep("Measure her draught: one freeboard and the depth of the hull give it.", boat.Particulars!.Id, "draughtM"),
        _ => null,
    };

    private static NextStep? Judging(BoatModel boat) =>
        !boat.All<PracticeChoice>().Any() ? new NextStep("Choose a practice: without its limits nothing can be judged. Add a thing of the kind “practice”.")
        : !boat.All<Condition>().Any() ? new NextStep("Add a condition, such as “At anchor”: the boat is judged in each.")
        : null;

    // Only where nothing is begun: who has drawn a part of her electrics goes on in them.
    private static NextStep? Hull(BoatModel boat) =>
        boat.All<Part>().Any() || boat.All<HullLines>().Any(lines => lines.Stations.Count > 0) || boat.All<HullOutline>().Any() ? null
            : new NextStep("Make her hull lines on the page Weights, “Hull lines”: from a form and three sizes in a minute, corrected with the tape later. Or begin her electrics: add the battery with “Add a thing”.");

    private static NextStep? Electrics(BoatModel boat)
    {
        BatteryBank? bank = boat.All<BatteryBank>().FirstOrDefault();
        return bank is null ? new NextStep("Add the battery with “Add a thing” on the Boat page: every circuit begins there.")
            : bank.InternalResistanceOhm is null ? new NextStep($"Measure the internal resistance of {bank.Title}: switch a known load on and read the voltage step at the posts. Fault currents rest on it. Until then its sheet here can fill in a typical one.", bank.Id, "internalResistanceOhm")
            : bank.OpenCircuit.Count == 0 ? new NextStep($"Give the open-circuit voltage of {bank.Title} over its charge, from its maker's sheet; every voltage rests on it. Until then its sheet here can fill in what is typical of its chemistry.", bank.Id, "openCircuit")
            : !boat.All<Part>().Any(part => Poles.Taking(part) is not null) ? new NextStep("Draw the first circuit with “New circuit” on the Electrics page.")
            : null;
    }
}
