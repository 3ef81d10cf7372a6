using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Orlop.Browser.Tests.Harness;

/// <summary>A window on the pages of a boat, with what a person does in it.</summary>
internal sealed partial class BoatWindow(ServedBoat boat, IPage page)
{
    public IPage Page => page;

    /// <summary>The page proper, without head and foot.</summary>
    public ILocator Main => page.Locator("main");

    /// <summary>The line that sums up the review on the Boat page.</summary>
    public ILocator ReviewState => page.Locator(".review-state");

    /// <summary>The sheet of the chosen thing.</summary>
    public ILocator Sheet => page.GetByRole(AriaRole.Complementary, new() { Name = "The chosen thing" });

    /// <summary>Opens an address of the boat and waits until the page takes input.</summary>
    public async Task GoAsync(string path)
    {
        await page.GotoAsync(boat.Address + path);
        await ReadyAsync();
    }

    /// <summary>Goes to a page by the navigation at the head.</summary>
    public async Task TurnToAsync(string name)
    {
        await page.GetByRole(AriaRole.Navigation, new() { Name = "Pages", Exact = true }).GetByRole(AriaRole.Link, new() { Name = name, Exact = true }).ClickAsync();
        await Expect(page).ToHaveTitleAsync(new Regex(name == "Boat" ? ".+" : name));
    }

    /// <summary>Waits until the page takes input.</summary>
    public async Task ReadyAsync() => await page.Locator("main[data-ready=yes]").WaitForAsync();

    /// <summary>Waits until the review on the Boat page is of this moment.</summary>
    public async Task<string> ReviewedAsync()
    {
        await Expect(ReviewState).ToContainTextAsync(ReviewCounts());
        await Expect(ReviewState).Not.ToContainTextAsync("Working out");
        return await ReviewState.InnerTextAsync();
    }

    /// <summary>Types into a box and leaves it, as a person does; the page then has the value.</summary>
    public static async Task TypeAsync(ILocator box, string text)
    {
        await box.FillAsync(text);
        await box.BlurAsync();
    }

    /// <summary>Types into the box with that label in the open sheet and waits for what it shows back.</summary>
    public async Task TypeAsync(string label, string text, string shownBack)
    {
        ILocator box = Sheet.GetByLabel(label, new() { Exact = true }).First;
        await TypeAsync(box, text);
        await Expect(box).ToHaveValueAsync(shownBack);
    }

    /// <summary>Adds a thing on the Boat page: its name and the fields that it cannot be without; its sheet is then open.</summary>
    public async Task AddAsync(string kind, string name, params (string Field, string Text)[] fields)
    {
        await TurnToAsync("Boat");
        ILocator form = page.Locator("details.add");
        await form.GetByText("Add a thing").ClickAsync();
        await form.GetByLabel("Kind", new() { Exact = true }).SelectOptionAsync(kind);
        await TypeAsync(form.GetByLabel("Name", new() { Exact = true }), name);
        foreach ((string field, string text) in fields)
        {
            ILocator box = form.Locator($"#add-{field}");
            await (await box.EvaluateAsync<string>("box => box.tagName") == "SELECT" ? box.SelectOptionAsync(text) : TypeAsync(box, text));
        }

        await form.GetByRole(AriaRole.Button, new() { NameRegex = AddButton() }).ClickAsync();
        await Expect(Sheet.GetByRole(AriaRole.Heading, new() { Name = name, Exact = true })).ToBeVisibleAsync();
    }

    /// <summary>Chooses in a drop-down of the open sheet.</summary>
    public async Task ChooseAsync(string label, string choice)
    {
        ILocator box = Sheet.GetByLabel(label, new() { Exact = true }).First;
        await box.SelectOptionAsync(new SelectOptionValue { Label = choice });
    }

    /// <summary>Closes the sheet: the findings are there again.</summary>
    public async Task CloseSheetAsync() => await Sheet.GetByRole(AriaRole.Link, new() { Name = "Close", Exact = true }).ClickAsync();

    /// <summary>The findings under a heading of the review.</summary>
    public ILocator Group(string heading) => page.Locator("section.group", new() { Has = page.Locator($"h2:text-matches('^{heading}')") }).Locator(".finding");

    [GeneratedRegex("^Add to ")]
    private static partial Regex AddButton();

    [GeneratedRegex(@"\d+ fail, \d+ tight, \d+ unknown, \d+ hold|Nothing could be checked")]
    private static partial Regex ReviewCounts();
}
