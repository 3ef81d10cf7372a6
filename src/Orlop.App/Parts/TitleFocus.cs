using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Orlop.App.Parts;

/// <summary>The focus that goes to the title of what was just opened.</summary>
internal static class TitleFocus
{
    /// <summary>Gives it the focus, without scrolling; where somebody has gone on into a field meanwhile, what is typed there is not torn away.</summary>
    public static async Task TakeFocus(this IJSRuntime script, ElementReference title)
    {
        if (await script.InvokeAsync<IJSObjectReference?>("import", "/orlop.js") is { } module)
        {
            await module.InvokeVoidAsync("takeFocus", title);
            await module.DisposeAsync();
        }
    }
}
