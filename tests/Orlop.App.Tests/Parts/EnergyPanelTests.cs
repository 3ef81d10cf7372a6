using System.Globalization;
using System.Text.Json;
using Bunit;
using Json.Schema;
using Microsoft.Extensions.DependencyInjection;
using Orlop.App.Parts;
using Orlop.App.Shell;
using Orlop.App.Tests.CommandLine;
using Orlop.App.Tests.Sessions;
using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Xunit;

namespace Orlop.App.Tests.Parts;

/// <summary>Day plans of the demo boat with a June that is brighter than a clear sky.</summary>
public sealed class EnergyPanelTests : IDisposable
{
    private static readonly BoatModel Boat = TooBright(BoatJson.Read(File.ReadAllText(Repository.At("examples", "sandgrouse.json"))).Boat!);

    private readonly BunitContext _page = new();
    private readonly OpenedBoat _boat = new(Boat);
    private readonly TemporaryFolder _folder = new();

    public EnergyPanelTests()
    {
        _page.JSInterop.Mode = JSRuntimeMode.Loose;
        _page.Services.AddSingleton(_boat.Session);
    }

    [Fact]
    public void TheOtherMonths_AreTold()
    {
        IRenderedComponent<EnergyPanel> panel = _page.Render<EnergyPanel>(parameters => parameters
            .AddCascadingValue(new Reader(DisplayUnits.Metric, CultureInfo.GetCultureInfo("en"), _ => { })).Add(one => one.PlanId, "sampling-days").Add(one => one.ThingHref, thing => $"/?thing={thing}"));

        Assert.Contains("June of its climate has more light than a clear sky", panel.Markup, StringComparison.Ordinal);
        Assert.Contains("Not told of these days: June.", panel.Markup, StringComparison.Ordinal);
        Assert.Equal(["4", "5", "7", "8", "9"], panel.FindAll("select")[1].QuerySelectorAll("option").Select(month => month.GetAttribute("value")));
        Assert.NotNull(panel.Find("#energy-charge"));
        string map = panel.Find("#energy-year").TextContent;
        Assert.Contains("Jun: at most ?.", map, StringComparison.Ordinal);
        Assert.DoesNotContain("May: at most ?.", map, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Command_TellsThem_InTextAndAsTheSchemaSays()
    {
        string path = _folder.At("boat.json");
        await File.WriteAllTextAsync(path, BoatJson.Write(Boat), Xunit.TestContext.Current.CancellationToken);
        string text = (await CommandRun.Of("energy", path)).Out;
        Assert.Contains("month 6 of the climate has more light than a clear sky", text, StringComparison.Ordinal);
        Assert.Contains("What weighs most in month", text, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse((await CommandRun.Of("energy", path, "--json")).Out);
        JsonSchema schema = JsonSchema.FromText(await File.ReadAllTextAsync(Repository.At("docs", "energy.schema.json"), Xunit.TestContext.Current.CancellationToken));
        Assert.True(schema.Evaluate(json.RootElement).IsValid);
        JsonElement plan = json.RootElement.GetProperty("plans")[0];
        Assert.Equal([6], Numbers(plan.GetProperty("tooBright"), "month"));
        Assert.Equal([6], Numbers(plan.GetProperty("untoldMonths"), null));
        Assert.Equal([4, 5, 7, 8, 9], Numbers(plan.GetProperty("months"), "month"));
    }

    public void Dispose()
    {
        _page.Dispose();
        _boat.Dispose();
        _folder.Dispose();
    }

    private static int[] Numbers(JsonElement list, string? name) => [.. list.EnumerateArray().Select(item => (name is null ? item : item.GetProperty(name)).GetInt32())];

    private static BoatModel TooBright(BoatModel boat) => boat.WithThings(boat.Things.Select(thing => thing switch
    {
        Climate climate => climate with { Months = [.. climate.Months.Select(month => month.CalendarMonth == 6 ? month with { SunWhPerM2 = 11_900 } : month)] },
        // So much that in June it is the sun that counts.
        DayPlan plan => plan with { LyingW = 40 },
        _ => thing,
    }));
}
