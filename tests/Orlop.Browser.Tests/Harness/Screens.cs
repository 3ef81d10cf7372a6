using Microsoft.Playwright;

namespace Orlop.Browser.Tests.Harness;

/// <summary>The two places where the pages are used.</summary>
internal static class Screens
{
    /// <summary>At the table.</summary>
    public static ViewportSize Desk => new() { Width = 1280, Height = 800 };

    /// <summary>On the boat.</summary>
    public static ViewportSize Phone => new() { Width = 390, Height = 844 };

    /// <summary>Width in px that WCAG 2.2 asks a page to fit into (1.4.10 Reflow).</summary>
    public const int SmallPhoneWidth = 320;
}
