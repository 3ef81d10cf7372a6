namespace Orlop.Electrics.Working;

/// <summary>How a value was taken from a table.</summary>
public enum LookupKind
{
    /// <summary>The table does not reach this far; there is no value.</summary>
    OutsideValidity,

    /// <summary>The table has this very row.</summary>
    Exact,

    /// <summary>The nearest row on the cautious side was taken.</summary>
    ConservativeStep,
}
