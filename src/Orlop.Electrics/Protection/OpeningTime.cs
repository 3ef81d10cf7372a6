namespace Orlop.Electrics.Protection;

/// <summary>What an opening time rests on.</summary>
public enum OpeningBasis
{
    /// <summary>The device says nothing about this multiple.</summary>
    Unknown,

    /// <summary>A gate of the standard, or a closed-form curve.</summary>
    Exact,

    /// <summary>Straight between two gates on logarithmic scales; an estimate.</summary>
    Interpolated,

    /// <summary>Below the first gate: it holds for at least that gate's time.</summary>
    BelowFirstGate,

    /// <summary>Above the last gate: it opens no later than at that gate.</summary>
    BeyondLastGate,

    /// <summary>Short of an instantaneous trip: it opens no later than at the gate before.</summary>
    ShortOfStep,

    /// <summary>Below the multiple from which the device opens at all.</summary>
    NeverOpens,
}

/// <summary>An earliest or latest opening time at one current.</summary>
/// <param name="TimeS">Null when there is none: see <paramref name="Basis"/>.</param>
/// <param name="GuaranteedS">
/// What the gates alone promise: for an earliest time the next gate's earliest, for a latest time the gate before's latest. Null when they promise nothing.
/// </param>
/// <param name="Told">The gates used, in a sentence that is put together only where it is read: a band of currents asks for thousands of times.</param>
public sealed record OpeningTime(double? TimeS, double? GuaranteedS, OpeningBasis Basis, FormattableString Told)
{
    /// <summary>The gates used, in a sentence.</summary>
    public string Explanation => FormattableString.Invariant(Told);
}
