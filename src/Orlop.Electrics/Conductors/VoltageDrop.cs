using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Conductors;

/// <summary>A circuit with one current all along it.</summary>
public sealed record VoltageDropInput
{
    /// <summary>What it is, for messages.</summary>
    public required string Subject { get; init; }

    /// <summary>Conductor out and back, 0 to 1000.</summary>
    public required double LoopLengthM { get; init; }

    /// <summary>Resistance of one metre of one conductor at its working temperature, above 0 to 10.</summary>
    public required double ResistanceOhmPerM { get; init; }

    /// <summary>0 to 10 000.</summary>
    public required double CurrentA { get; init; }

    /// <summary>Nominal voltage that the drop is held against, above 0 to 1000.</summary>
    public required double NominalV { get; init; }
}

/// <summary>Voltage lost out and back, and its share of the nominal voltage.</summary>
public sealed record VoltageDropResult(double LoopResistanceOhm, double DropV, double DropFraction, ImmutableArray<WorkingStep> Working);

/// <summary>U = I · r · L, with L out and back.</summary>
public static class VoltageDrop
{
    public static VoltageDropResult Calculate(VoltageDropInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Guard.InRange(input.LoopLengthM, 0, 1000, "m", input.Subject);
        Guard.Positive(input.ResistanceOhmPerM, 10, "ohm/m", input.Subject);
        Guard.InRange(input.CurrentA, 0, 10_000, "A", input.Subject);
        Guard.Positive(input.NominalV, 1000, "V", input.Subject);
        var loop = input.ResistanceOhmPerM * input.LoopLengthM;
        var drop = loop * input.CurrentA;
        var fraction = drop / input.NominalV;
        return new VoltageDropResult(loop, drop, fraction,
        [
            new WorkingStep("R", FormattableString.Invariant($"{input.ResistanceOhmPerM:0.######} × {input.LoopLengthM:0.##} out and back"), loop, "ohm", "R = r · L"),
            new WorkingStep("U", FormattableString.Invariant($"{input.CurrentA:0.##} × {loop:0.######}"), drop, "V", "Ohm's law"),
            new WorkingStep("u", FormattableString.Invariant($"{drop:0.###}/{input.NominalV:0.##}"), fraction, "", "u = U/U_nominal"),
        ]);
    }

    /// <summary>
    /// The smallest ideal copper area that keeps within an allowed drop: S = 0.017241 · k_T · L · I / U. With copper at 29.3 °C this is the trade's
    /// circular-mil formula, K = 10.75 ohm cmil/ft.
    /// </summary>
    public static double SmallestAreaMm2(double loopLengthM, double currentA, double allowedDropV, double conductorC)
    {
        Guard.InRange(loopLengthM, 0, 1000, "m", "voltage drop");
        Guard.InRange(currentA, 0, 10_000, "A", "voltage drop");
        Guard.Positive(allowedDropV, 1000, "V", "voltage drop");
        return AnnealedCopper.ResistivityAt20OhmMm2PerM * AnnealedCopper.ResistanceFactor(conductorC) * loopLengthM * currentA / allowedDropV;
    }
}
