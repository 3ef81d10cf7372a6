using Orlop.Boat.Validation;

namespace Orlop.Store;

/// <summary>A boat's file could not be used. The message says what happened, to which file, and what to do now.</summary>
public sealed class StoreException(StoreFailure failure, string path, string message, Exception? inner = null)
    : Exception(message, inner)
{
    /// <summary>Why.</summary>
    public StoreFailure Failure { get; } = failure;

    /// <summary>The file.</summary>
    public string Path { get; } = path;

    /// <summary>What is wrong in a boat that was handed over; otherwise empty.</summary>
    public IReadOnlyList<Problem> Problems { get; private init; } = [];

    internal static StoreException NotValid(string path, IReadOnlyList<Problem> problems) => new(
        StoreFailure.NotValid,
        path,
        FormattableString.Invariant($"'{path}' was not made: {problems.Count} {(problems.Count == 1 ? "thing is" : "things are")} wrong in the boat. {(problems.Count == 1 ? "" : "First: ")}{problems[0]} Put {(problems.Count == 1 ? "it" : "them")} right and try again."))
    {
        Problems = problems,
    };
}
