using Orlop.Review.Isolation;

namespace Orlop.Work.Steps;

/// <summary>What a point that is live may read, by the nominal voltage of what feeds it.</summary>
internal static class LiveVoltage
{
    /// <summary>Least of a DC point, as a fraction of nominal: a battery nearly empty (common practice, no source).</summary>
    public const double LeastDcFraction = 0.85;

    /// <summary>Most of a DC point, as a fraction of nominal: a battery that is charged in the cold (common practice, no source).</summary>
    public const double MostDcFraction = 1.3;

    /// <summary>How far an AC supply may lie off nominal, as a fraction (EN 50160, ±10 %, from memory).</summary>
    public const double AcOffFraction = 0.1;

    /// <summary>What is accepted at a point; without limits where nobody told what feeds it.</summary>
    /// <param name="nominalV">The greatest nominal voltage of what feeds it, V, above 0; null where it is not known.</param>
    /// <param name="isAc">It is AC; null where it is not known.</param>
    public static AcceptedReading Of(double? nominalV, bool? isAc) => nominalV is not > 0 || isAc is null ? new AcceptedReading("V", "V") : new AcceptedReading("V", "V")
    {
        Least = nominalV * (isAc.Value ? 1 - AcOffFraction : LeastDcFraction),
        Most = nominalV * (isAc.Value ? 1 + AcOffFraction : MostDcFraction),
        IsEitherSign = isAc.Value,
        WhenBelow = "the circuit is open or is not the one that was meant, its battery is empty, or the probes do not touch bright metal. Go no further until you know which.",
        WhenAbove = "it is fed by another circuit than was meant, or its charger does not regulate. Go no further until you know which.",
        WhenReversed = isAc.Value ? null : "plus and minus are exchanged, at the probes or in the wiring. Change the probes over once; where it stays, close nothing and put the wiring right.",
    };

    /// <summary>What is accepted at a point that is read before it is made dead: nothing too, where what feeds it may be off; "covered" where it cannot be reached.</summary>
    public static AcceptedReading Before(ProvingPoint proof, bool mayBeOff) =>
        Of(proof.NominalV, proof.IsAc) with { MayBeCovered = true, NothingUpTo = mayBeOff ? IsolationSteps.DeadV : null };
}
