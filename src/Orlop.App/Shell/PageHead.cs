namespace Orlop.App.Shell;

/// <summary>What a page puts into the header of its own window: which alteration it looks at, the condition chosen, and a message.</summary>
public sealed class PageHead
{
    /// <summary>Something in it has changed.</summary>
    public event Action? Changed;

    /// <summary>Id of the alteration that the page looks at, where that is its own choice; null where it shows what edits go into.</summary>
    public string? LooksAtId { get; private set; }

    /// <summary>Where what is done on the page is kept, as the end of a sentence, whatever edits go into; null where edits go where the header says.</summary>
    public string? Keeps { get; private set; }

    /// <summary>The condition last chosen in this window; null while none was.</summary>
    public string? ConditionId { get; private set; }

    /// <summary>What is open in the lists of findings of this window, by its key: it is open again when a sheet that it led to is closed.</summary>
    public HashSet<string> OpenFindings { get; } = new(StringComparer.Ordinal);

    /// <summary>Id of the alteration whose work was last open in this window; null while none was.</summary>
    public string? WorkId { get; private set; }

    /// <summary>What was last told; null when nothing is.</summary>
    public Message? Told { get; private set; }

    /// <summary>The page looks at an alteration of its own choice, or at none.</summary>
    /// <param name="keeps">Where what is done on the page is kept, as the end of a sentence.</param>
    public void LookAt(string? alterationId, string? keeps = null)
    {
        if (LooksAtId != alterationId || Keeps != keeps)
        {
            LooksAtId = alterationId;
            Keeps = keeps;
            Changed?.Invoke();
        }
    }

    /// <summary>A condition is chosen, for every page of this window that shows one.</summary>
    public void ChooseCondition(string? conditionId)
    {
        if (ConditionId != conditionId)
        {
            ConditionId = conditionId;
            Changed?.Invoke();
        }
    }

    /// <summary>Work on an alteration is open: the page of the record comes back to it.</summary>
    public void OpenWork(string alterationId)
    {
        if (WorkId != alterationId)
        {
            WorkId = alterationId;
            Changed?.Invoke();
        }
    }

    /// <summary>Tells something that stands until it is closed or the boat moves on from this revision.</summary>
    /// <param name="text">What happened.</param>
    /// <param name="revision">The head when it is told.</param>
    /// <param name="canUndo">An undo takes back what happened.</param>
    public void Tell(string text, long revision, bool canUndo)
    {
        Told = new Message(text, revision, canUndo);
        Changed?.Invoke();
    }

    /// <summary>Closes the message.</summary>
    public void Hush()
    {
        Told = null;
        Changed?.Invoke();
    }

    /// <summary>A message in the header.</summary>
    public sealed record Message(string Text, long Revision, bool CanUndo);
}
