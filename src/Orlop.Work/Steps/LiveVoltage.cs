using Orlop.Boat.Things;
using Orlop.Presentation.Words;
using Orlop.Review.Isolation;

namespace Orlop.Work.Steps;

/// <summary>What a point that is live may read, by what can feed it with every switch closed.</summary>
internal static class LiveVoltage
{
    /// <summary>Least of a DC point, as a fraction of nominal: a battery nearly empty (common practice, no source).</summary>
    public const double LeastDcFraction = 0.85;

    /// <summary>How far a charger or converter, and the meter, may lie above what it is set to, as a fraction (common practice, no source).</summary>
    public const double OverSetpointFraction = 0.02;

    /// <summary>How far a battery that was just charged elsewhere may lie above the full end of its open-circuit curve, as a fraction, where nothing aboard charges it (common practice, no source).</summary>
    public const double OverFullFraction = 0.05;

    /// <summary>How far an AC supply may lie off nominal, as a fraction (EN 50160, ±10 %, from memory).</summary>
    public const double AcOffFraction = 0.1;

    // No step asks for a finer reading; what is told is never less than what is reckoned.
    private const int StepsPerVolt = 10;

    /// <summary>What is accepted at a point; without limits where nobody told what feeds it.</summary>
    public static AcceptedReading Of(PointVoltage point) => Of(point.NominalV, point.IsAc, MostOf(point.NominalV, point.Sources));

    /// <summary>What is accepted at a point that is read before it is made dead: nothing too, where what feeds it may be off; "covered" where it cannot be reached.</summary>
    /// <param name="proof">The point.</param>
    /// <param name="sources">What reaches either of its ends.</param>
    /// <param name="mayBeOff">What feeds it may be off.</param>
    public static AcceptedReading Before(ProvingPoint proof, IEnumerable<Part> sources, bool mayBeOff) =>
        Of(proof.NominalV, proof.IsAc, MostOf(proof.NominalV, sources)) with { MayBeCovered = true, NothingUpTo = mayBeOff ? IsolationSteps.DeadV : null };

    /// <summary>What is accepted at a nominal voltage; without limits where that is not known.</summary>
    /// <param name="nominalV">The greatest nominal voltage of what feeds it, V, above 0; null where it is not known.</param>
    /// <param name="isAc">It is AC; null where it is not known.</param>
    /// <param name="most">The most that a DC point can have, V, and what gives it; null where that cannot be told: then no reading above the least can be judged.</param>
    public static AcceptedReading Of(double? nominalV, bool? isAc, (double V, string From)? most) => nominalV is not > 0 || isAc is null ? new AcceptedReading("V", "V") : new AcceptedReading("V", "V")
    {
        Least = nominalV * (isAc.Value ? 1 - AcOffFraction : LeastDcFraction),
        Most = isAc.Value ? nominalV * (1 + AcOffFraction) : most?.V,
        WhyNoMost = isAc.Value || most is not null ? null : "the most that it may be is not told: neither a charger that reaches it nor the voltage of its battery when full is in the boat's file",
        Nominal = nominalV,
        IsEitherSign = isAc.Value,
        WhenBelow = "the circuit is open or is not the one that was meant, its battery is empty, or the probes do not touch bright metal. Go no further until you know which.",
        WhenAbove = $"{(isAc.Value || most is null ? "" : $"{most.Value.From} gives no more, so ")}it is fed by another circuit than was meant, or its charger does not regulate. Go no further until you know which.",
        WhenReversed = isAc.Value ? null : "plus and minus are exchanged, at the probes or in the wiring. Change the probes over once; where it stays, close nothing and put the wiring right.",
    };

    /// <summary>
    /// The most that a DC point can have, V, and what gives it, with the charge on: by the highest setpoint of the chargers and converters that reach it, else by the full end of its batteries' open-circuit curves.
    /// Null where neither is told, or where batteries stand in series, of which no one tells the voltage of the point.
    /// </summary>
    /// <param name="nominalV">Its nominal voltage, V.</param>
    /// <param name="sources">What reaches it with every switch closed.</param>
    public static (double V, string From)? MostOf(double? nominalV, IEnumerable<Part> sources)
    {
        Part[] all = [.. sources];
        (double V, string From)[] set =
        [
            .. all.OfType<Charger>().Select(charger => (charger.SetpointV.Value, $"{PartWords.Small(charger.Title)}, at what it is set to,")),
            .. all.OfType<DcConverter>().Select(converter => (converter.OutputV.Value, $"{PartWords.Small(converter.Title)}, at what it is set to,")),
        ];
        (double V, string From)[] full =
        [
            .. all.OfType<BatteryBank>().Where(battery => battery.OpenCircuit.Any(at => at.ChargeFraction >= 1)).Select(battery => (battery.OpenCircuit.Max(at => at.OpenCircuitV), $"{PartWords.Small(battery.Title)}, full,")),
        ];
        (double V, string From)[] can = set.Length == 0 ? [.. full.Select(one => one with { V = one.V * (1 + OverFullFraction) })] : [.. set.Select(one => one with { V = one.V * (1 + OverSetpointFraction) }), .. full];
        (double V, string From) most = can.Length == 0 ? (0, "") : can.MaxBy(one => one.V);
        return most.V > 0 && !(most.V < nominalV) ? (Math.Ceiling(most.V * StepsPerVolt) / StepsPerVolt, most.From) : null;
    }
}
