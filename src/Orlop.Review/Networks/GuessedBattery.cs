using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;

namespace Orlop.Review.Networks;

/// <summary>Open-circuit voltages and an internal resistance that nobody measured or read from a sheet: what every result that rests on them says.</summary>
/// <param name="Inputs">The fields, as inputs that look guessed.</param>
/// <param name="Words">What is guessed and where that comes from, as part of a line's source.</param>
public sealed record GuessedBattery(ImmutableArray<FindingInput> Inputs, string Words)
{
    /// <summary>As part of a line's source, where nobody said where a guessed curve comes from.</summary>
    public const string CurveWords = "open-circuit voltage guessed: usual for the chemistry, from memory";

    private const string ResistanceWords = "internal resistance guessed";

    /// <summary>What is guessed of a battery; null where its curve and its resistance are known, nobody said how, or there are none.</summary>
    public static GuessedBattery? Of(BatteryBank battery)
    {
        ArgumentNullException.ThrowIfNull(battery);
        string? curve = CurveOf(battery);
        string? resistance = battery.InternalResistanceOhm is not { Known: Knowledge.Guessed } guess ? null : guess.Method is { } method ? $"{ResistanceWords}: {method}" : ResistanceWords;
        return curve is null && resistance is null ? null : new GuessedBattery(
            [
                .. curve is null ? Array.Empty<FindingInput>() : [new FindingInput(battery.Id, "openCircuit", IsGuess: true)],
                .. resistance is null ? Array.Empty<FindingInput>() : [new FindingInput(battery.Id, "internalResistanceOhm", IsGuess: true)],
            ],
            string.Join(", ", new[] { curve, resistance }.OfType<string>()));
    }

    /// <summary>What is guessed of its open-circuit voltages alone, in words; null where nothing is.</summary>
    public static string? CurveOf(BatteryBank battery)
    {
        ArgumentNullException.ThrowIfNull(battery);
        return battery is not { OpenCircuitKnown: Knowledge.Guessed or Knowledge.Estimated, OpenCircuit.Count: > 0 } ? null
            : battery.OpenCircuitMethod is { } method ? $"open-circuit voltage guessed: {method}" : CurveWords;
    }
}
