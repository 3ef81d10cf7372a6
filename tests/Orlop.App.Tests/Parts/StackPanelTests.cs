using System.Globalization;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Orlop.App.Parts;
using Orlop.App.Shell;
using Orlop.App.Tests.Sessions;
using Orlop.Boat.Format;
using Orlop.Presentation.Quantities;
using Xunit;

namespace Orlop.App.Tests.Parts;

public sealed class StackPanelTests : IDisposable
{
    private readonly BunitContext _page = new();
    private readonly OpenedBoat _demo = new(BoatJson.Read(File.ReadAllText(Repository.At("examples", "sandgrouse.json"))).Boat!);

    public StackPanelTests()
    {
        _page.JSInterop.Mode = JSRuntimeMode.Loose;
        _page.Services.AddSingleton(_demo.Session);
    }

    // The starter's 50 mm² lies on the face of the plus post, the generator's 16 mm² on it.
    [Fact]
    public void Battery_ShowsEachPostFromTheFaceOutwardWithItsTorqueAndTheCaution()
    {
        IRenderedComponent<StackPanel> panel = Open("starter-battery");
        Assert.Equal(
            ["Starter battery to starter isolator, 50 mm²", "Generator fuse to starter battery, 16 mm²", "plain washer", "spring washer", "nut"],
            panel.FindAll("ol")[0].Children.Select(layer => layer.TextContent));
        Assert.Contains("battery stud, M8", panel.Markup, StringComparison.Ordinal);
        Assert.NotEmpty(panel.FindAll(".caution"));
    }

    [Fact]
    public void Busbar_WithManyStuds_ShowsNone() => Assert.Empty(Render("main-plus").FindAll("details"));

    public void Dispose()
    {
        _page.Dispose();
        _demo.Dispose();
    }

    private IRenderedComponent<StackPanel> Open(string thingId)
    {
        IRenderedComponent<StackPanel> panel = Render(thingId);
        panel.Find("details").Unfold();
        return panel;
    }

    private IRenderedComponent<StackPanel> Render(string thingId) => _page.Render<StackPanel>(
        parameters => parameters.AddCascadingValue(new Reader(DisplayUnits.Metric, CultureInfo.GetCultureInfo("en"), _ => { })).Add(panel => panel.ThingId, thingId));
}
