using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;

namespace Orlop.Review.Networks;

/// <summary>Open-circuit voltages that nobody measured or read from a sheet: what every result that rests on them says.</summary>
public static class GuessedCurve
{
    /// <summary>As part of a line's source.</summary>
    public const string Words = "open-circuit voltage guessed: usual for the chemistry, from memory";

    /// <summary>The input that says so; null where the voltages are known, nobody said how, or there are none.</summary>
    public static FindingInput? Of(BatteryBank battery) => battery is { OpenCircuitKnown: Knowledge.Guessed or Knowledge.Estimated, OpenCircuit.Count: > 0 }
        ? new FindingInput(battery.Id, "openCircuit", IsGuess: true)
        : null;
}
