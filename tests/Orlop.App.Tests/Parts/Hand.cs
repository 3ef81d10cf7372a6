using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;

namespace Orlop.App.Tests.Parts;

/// <summary>The owner's hand on a page that may be drawn again while a review goes on: what is pressed is found and pressed in one turn of the page.</summary>
internal static class Hand
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    /// <summary>Presses the only button or link a selector finds, once it is there.</summary>
    public static Task PressAsync<T>(this IRenderedComponent<T> page, string selector)
        where T : IComponent => page.DoAsync(selector, found => found.Click());

    /// <summary>Presses the first button whose words begin so, once it is there.</summary>
    public static Task PressNamedAsync<T>(this IRenderedComponent<T> page, string selector, string words)
        where T : IComponent
    {
        page.WaitForState(() => Named() is not null, Patience);
        return page.InvokeAsync(() => Named()!.Click());

        IElement? Named() => page.FindAll(selector).FirstOrDefault(button => button.TextContent.Trim().StartsWith(words, StringComparison.Ordinal));
    }

    /// <summary>Types or chooses in the first field a selector finds, once it is there.</summary>
    public static Task SetAsync<T>(this IRenderedComponent<T> page, string selector, object value)
        where T : IComponent => page.DoAsync(selector, found => found.Change(value));

    /// <summary>Opens a fold, or closes an open one.</summary>
    public static void Unfold(this IElement fold) => fold.TriggerEvent("ontoggle", EventArgs.Empty);

    private static Task DoAsync<T>(this IRenderedComponent<T> page, string selector, Action<IElement> act)
        where T : IComponent
    {
        page.WaitForState(() => page.FindAll(selector).Count > 0, Patience);
        return page.InvokeAsync(() => act(page.Find(selector)));
    }
}
