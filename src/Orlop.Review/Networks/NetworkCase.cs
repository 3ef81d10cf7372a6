namespace Orlop.Review.Networks;

/// <summary>How full the batteries are in a case.</summary>
public enum ChargeCase
{
    /// <summary>As the condition says; its chargers work.</summary>
    Normal,

    /// <summary>The lowest charge at which the condition must still work; no charger helps.</summary>
    Lowest,

    /// <summary>Full; its chargers work. For the greatest fault.</summary>
    Full,
}

/// <summary>What is to be solved: a condition, how full the batteries are, and the load that starts just then.</summary>
public sealed record NetworkCase(string ConditionId, ChargeCase Charge, string? StartingLoadId = null);
