namespace Orlop.App.Shell;

/// <summary>A fold of the page was opened or closed.</summary>
public sealed class UnfoldEventArgs : EventArgs
{
    /// <summary>The fold, by its <c>data-unfolding</c>: the folds around it hear of it too.</summary>
    public string? Of { get; set; }

    /// <summary>It is open now.</summary>
    public bool IsOpen { get; set; }
}
