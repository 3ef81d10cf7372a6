using Orlop.Boat.Things;

namespace Orlop.Work.Circuits;

/// <summary>The extreme of something over the conditions of the pages, with the condition it is told in.</summary>
/// <param name="Value">In its own unit.</param>
/// <param name="Condition">Where it stands.</param>
/// <param name="UntoldCount">Conditions in which it matters and cannot be told: it may be more extreme there.</param>
public sealed record ToldIn(double Value, Condition Condition, int UntoldCount)
{
    /// <summary>The extreme of what a quantity is in each condition; null where it is told in none.</summary>
    /// <param name="conditions">The conditions.</param>
    /// <param name="matters">It is there at all in the condition.</param>
    /// <param name="of">Its value there; null where it cannot be told.</param>
    /// <param name="isGreatest">The greatest is wanted, else the least.</param>
    internal static ToldIn? Of(IReadOnlyList<Condition> conditions, Func<Condition, bool> matters, Func<Condition, double?> of, bool isGreatest)
    {
        (Condition Condition, double? Value)[] all = [.. conditions.Where(matters).Select(condition => (condition, of(condition)))];
        (Condition Condition, double? Value)[] told = [.. all.Where(one => one.Value is { } value && double.IsFinite(value))];
        return told.Length == 0 ? null
            : (isGreatest ? told.MaxBy(one => one.Value) : told.MinBy(one => one.Value)) is var (where, found) ? new ToldIn(found!.Value, where, all.Length - told.Length) : null;
    }
}
