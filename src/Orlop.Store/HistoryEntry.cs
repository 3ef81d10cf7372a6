namespace Orlop.Store;

/// <summary>A line of the history.</summary>
public sealed record HistoryEntry
{
    /// <summary>Number of the revision.</summary>
    public required long Number { get; init; }

    /// <summary>Where it stands as seen from the head.</summary>
    public required HistoryPlace Place { get; init; }

    /// <summary>The revision is not as it was written and cannot be gone to; nothing else is said of it.</summary>
    public bool IsDamaged { get; init; }

    /// <summary>The revision it was made from; null for the first.</summary>
    public long? Parent { get; init; }

    /// <summary>Number of the revision that began its branch; 0 when damaged.</summary>
    public long Branch { get; init; }

    /// <summary>When it was committed; null when damaged.</summary>
    public DateTimeOffset? At { get; init; }

    /// <summary>What was done, in the owner's words; empty when damaged.</summary>
    public string Summary { get; init; } = "";
}
