using Orlop.Boat;

namespace Orlop.Store;

/// <summary>The boat as one commit left it. Revisions are never changed and never removed.</summary>
/// <param name="Number">1 for the first; counts up in the order of commits, over all branches.</param>
/// <param name="Parent">The revision it was made from; null for the first.</param>
/// <param name="Branch">Number of the revision that began its branch.</param>
/// <param name="At">When it was committed.</param>
/// <param name="Summary">What was done, in the owner's words.</param>
/// <param name="Boat">The whole boat.</param>
public sealed record Revision(long Number, long? Parent, long Branch, DateTimeOffset At, string Summary, BoatModel Boat);
