using Microsoft.AspNetCore.Components;
using Orlop.App.Sessions;

namespace Orlop.App.Shell;

/// <summary>A component that shows the opened boat and is drawn again whenever she changes, in whichever window.</summary>
public abstract class SessionComponent : ComponentBase, IDisposable
{
    [Inject]
    protected BoatSession Session { get; set; } = null!;

    [CascadingParameter]
    protected Reader Reader { get; set; } = null!;

    /// <summary>The header of this window.</summary>
    [CascadingParameter]
    protected PageHead Head { get; set; } = new();

    /// <summary>The boat at this moment.</summary>
    protected BoatSnapshot Now => Session.Now;

    protected override void OnInitialized() => Session.Changed += OnSessionChanged;

    /// <summary>Tells in the header, with a way back, what was done since a revision; nothing where nothing was kept.</summary>
    protected void TellSince(long revision, string text)
    {
        if (Now.Head.Number != revision)
        {
            Head.Tell(text, Now.Head.Number, canUndo: true);
        }
    }

    /// <summary>The boat has changed; called before the component is drawn again.</summary>
    protected virtual void OnBoatChanged()
    {
    }

    public void Dispose()
    {
        Dispose(true);
        GC.SuppressFinalize(this);
    }

    protected virtual void Dispose(bool isDisposing) => Session.Changed -= OnSessionChanged;

    private void OnSessionChanged() => _ = InvokeAsync(() =>
    {
        OnBoatChanged();
        StateHasChanged();
    });
}
