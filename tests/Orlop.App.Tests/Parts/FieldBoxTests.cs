using System.Globalization;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Orlop.App.Parts;
using Orlop.App.Shell;
using Orlop.App.Tests.Sessions;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Xunit;

namespace Orlop.App.Tests.Parts;

/// <summary>A reference on a boat that has nothing of the kind yet.</summary>
public sealed class FieldBoxTests : IDisposable
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-GB");
    private readonly BunitContext _page = new();
    private readonly OpenedBoat _boat = new(OpenedBoat.Small);

    public FieldBoxTests()
    {
        _page.JSInterop.Mode = JSRuntimeMode.Loose;
        _page.Services.AddSingleton(_boat.Session);
    }

    [Fact]
    public async Task SpaceOfARun_NoSpaceYet_IsMadeOnTheSpotAndChosen()
    {
        object? kept = null;
        IRenderedComponent<FieldBox> box = Box(ThingSchema.Of("cable").Field("run")!.Record!.Field("space")!, value => kept = value);
        box.Find("details").Unfold();
        Assert.Contains("There is no space yet: add one", box.Find("summary").TextContent, StringComparison.Ordinal);
        await box.SetAsync("#leg-add-name", "Cabin");
        foreach ((string field, string text) in new[] { ("from-xM", "2"), ("from-yM", "-1"), ("from-zM", "0"), ("to-xM", "4"), ("to-yM", "1"), ("to-zM", "2") })
        {
            await box.SetAsync($"#leg-add-{field}", text);
        }

        // What it is like for what runs through it is not taken for granted.
        await box.PressNamedAsync("button", "Add to ");
        Assert.Empty(_boat.Session.Now.AsBuilt.All<Space>());
        await box.SetAsync("#leg-add-use", "dry");
        await box.PressNamedAsync("button", "Add to ");
        Assert.Equal("Cabin", Assert.Single(_boat.Session.Now.AsBuilt.All<Space>()).Title);
        Assert.Equal("cabin", kept);
    }

    /// <summary>A sign, a unit and a question mark must be within reach wherever they may be typed: in every quantity.</summary>
    [Theory]
    [InlineData("battery", "seriesCount", "numeric")]
    [InlineData("particulars", "builtYear", "numeric")]
    [InlineData("cable", "areaMm2", null)]
    [InlineData("load", "startRatio", null)]
    [InlineData("load", "name", null)]
    public void Box_OffersDigitsAlone_OnlyForAWholeNumber(string kind, string field, string? keypad) =>
        Assert.Equal(keypad, Box(ThingSchema.Of(kind).Field(field)!, _ => { }).Find("input").GetAttribute("inputmode"));

    public void Dispose()
    {
        _page.Dispose();
        _boat.Dispose();
    }

    private IRenderedComponent<FieldBox> Box(FieldSchema field, Action<object?> onKept) => _page.Render<FieldBox>(parameters => parameters
        .AddCascadingValue(new Reader(DisplayUnits.Metric, English, _ => { }))
        .Add(one => one.Field, field).Add(one => one.Id, "leg").Add(one => one.Boat, _boat.Session.Now.Shown)
        .Add(one => one.Keep, (_, value) =>
        {
            onKept(value);
            return null;
        }));
}
