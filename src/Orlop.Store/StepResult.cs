namespace Orlop.Store;

/// <summary>How an undo, a redo or a jump in the history ended.</summary>
public enum StepOutcome
{
    /// <summary>The head is another revision now.</summary>
    Moved,

    /// <summary>There is nothing further that way.</summary>
    NothingFurther,

    /// <summary>Someone else moved the head first, so nothing was done: look at the new head and decide again.</summary>
    HeadHadMoved,
}

/// <summary>An undo, a redo or a jump in the history, and the head after it.</summary>
public sealed record StepResult(StepOutcome Outcome, Revision Head);
