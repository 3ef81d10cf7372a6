using Microsoft.Playwright;

namespace Orlop.Browser.Tests.Harness;

/// <summary>The two places where the pages are used.</summary>
internal static class Screens
{
    /// <summary>At the table.</summary>
    public static ViewportSize Desk => new() { Width = 1280, Height = 800 };

    /// <summary>On the boat.</summary>
    public static ViewportSize Phone => new() { Width = 390, Height = 844 };
}
