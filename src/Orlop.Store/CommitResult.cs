using Orlop.Boat.Alterations;
using Orlop.Boat.Validation;

namespace Orlop.Store;

/// <summary>What became of a commit. <see cref="Head"/> is the head afterwards, whatever the outcome.</summary>
public abstract record CommitResult(Revision Head);

/// <summary>The edits are kept, on the disk, as the new head.</summary>
/// <param name="Head">The new revision.</param>
/// <param name="IsOnNewerHead">The head was another revision than the one the edits were drafted on; none of the edited things differed.</param>
public sealed record Committed(Revision Head, bool IsOnNewerHead) : CommitResult(Head);

/// <summary>Nothing was kept: a thing is no longer as an edit saw it.</summary>
/// <param name="Clashes">For each such edit: what it expected, what is there, what it wanted.</param>
/// <param name="Head">The head that the edits met.</param>
public sealed record Conflict(IReadOnlyList<Clash> Clashes, Revision Head) : CommitResult(Head);

/// <summary>Nothing was kept: the boat with these edits does not pass the model's checks.</summary>
/// <param name="Problems">All problems of the edited boat.</param>
/// <param name="Head">The head, unchanged.</param>
public sealed record Refused(IReadOnlyList<Problem> Problems, Revision Head) : CommitResult(Head);
