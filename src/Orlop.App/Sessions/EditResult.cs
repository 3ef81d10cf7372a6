using Orlop.Boat.Alterations;

namespace Orlop.App.Sessions;

/// <summary>What became of an edit made on a page.</summary>
public abstract record EditResult
{
    /// <summary>The edit is on the disk.</summary>
    public bool IsKept => this is EditKept;
}

/// <summary>The edit is on the disk.</summary>
/// <param name="What">What was done, where the owner did not type it: what an undo took back.</param>
public sealed record EditKept(string? What = null) : EditResult;

/// <summary>Nothing was kept: the things are no longer as they were seen.</summary>
public sealed record EditClashed(IReadOnlyList<Clash> Clashes) : EditResult;

/// <summary>Nothing was kept: the boat would no longer pass its own rules, or the file could not be written.</summary>
public sealed record EditRefused(string Message) : EditResult;
