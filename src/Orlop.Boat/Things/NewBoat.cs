using Orlop.Boat.Values;

namespace Orlop.Boat.Things;

/// <summary>A handful of measurements that a boat starts from. Each may be left out and given later.</summary>
/// <param name="Name">What she is called.</param>
/// <param name="LengthOverAllM">Length over all in m.</param>
/// <param name="BeamM">Greatest breadth in m.</param>
/// <param name="DepthM">Depth amidships in m.</param>
/// <param name="DraughtM">Draught in m.</param>
/// <param name="Material">What the hull is made of; null where nobody said.</param>
/// <param name="Practice">Name of the practice she is judged by.</param>
public sealed record NewBoat(
    string? Name,
    Quantity? LengthOverAllM = null,
    Quantity? BeamM = null,
    Quantity? DepthM = null,
    Quantity? DraughtM = null,
    HullMaterial? Material = null,
    string Practice = "iso-small-craft")
{
    // Common practice, no source: a bank is not used below these.
    private const double UsualChargeFraction = 0.8;
    private const double LowestChargeFraction = 0.3;

    /// <summary>The boat: her particulars, a practice, and the conditions that most boats are judged in.</summary>
    public BoatModel Make() => new()
    {
        Things =
        [
            new Particulars
            {
                Id = "particulars",
                Name = Name,
                LengthOverAllM = LengthOverAllM,
                BeamM = BeamM,
                DepthM = DepthM,
                DraughtM = DraughtM,
                Material = Material,
            },
            new PracticeChoice { Id = "practice", Name = "Practice", Basis = Practice },
            Condition("at-anchor", "At anchor", engineRuns: false, onShore: false, sunShines: false),
            Condition("under-way", "Under way", engineRuns: true, onShore: false, sunShines: false),
            Condition("at-berth", "Working at the berth", engineRuns: false, onShore: false, sunShines: true),
            Condition("on-shore-power", "On shore power", engineRuns: false, onShore: true, sunShines: false),
        ],
    };

    private static Condition Condition(string id, string name, bool engineRuns, bool onShore, bool sunShines) => new()
    {
        Id = id,
        Name = name,
        EngineRuns = engineRuns,
        OnShore = onShore,
        SunShines = sunShines,
        ChargeFraction = new Quantity(UsualChargeFraction, Knowledge.Guessed),
        LowestChargeFraction = new Quantity(LowestChargeFraction, Knowledge.Guessed),
    };
}
