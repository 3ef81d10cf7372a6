namespace Orlop.Store;

/// <summary>Where a revision stands as seen from the head.</summary>
public enum HistoryPlace
{
    /// <summary>It is the head.</summary>
    Head,

    /// <summary>Undo leads there.</summary>
    Behind,

    /// <summary>Redo leads there.</summary>
    Ahead,

    /// <summary>It is on a branch that was left; going to its number leads there.</summary>
    Aside,
}
