using System.Globalization;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Orlop.App.Parts;
using Orlop.App.Sessions;
using Orlop.App.Shell;
using Orlop.App.Tests.Sessions;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Xunit;

namespace Orlop.App.Tests.Parts;

public sealed class TypicalBatteryPanelTests : IDisposable
{
    private readonly BunitContext _page = new();
    private readonly OpenedBoat _boat = new(new BoatModel { Things = [new BatteryBank { Id = "bank", Name = "House bank", Chemistry = BatteryChemistry.Gel, NominalV = 12 }] });

    public TypicalBatteryPanelTests()
    {
        _page.JSInterop.Mode = JSRuntimeMode.Loose;
        _page.Services.AddSingleton(_boat.Session);
    }

    private BatteryBank Bank => _boat.Session.Now.AsBuilt.Find<BatteryBank>("bank")!;

    [Fact]
    public void Curve_OfTheChosenChemistry_IsFilledInAsAGuess()
    {
        IRenderedComponent<TypicalBatteryPanel> panel = Render();
        panel.Find("select").Change(nameof(BatteryChemistry.AbsorbedGlassMat));
        panel.FindAll("button").Single(button => button.TextContent.Contains("open-circuit", StringComparison.Ordinal)).Click();

        Assert.Equal(BatteryChemistry.AbsorbedGlassMat, Bank.Chemistry);
        Assert.Equal(new ChargePoint(1, 12.8), Bank.OpenCircuit[^1]);
        Assert.Equal(Knowledge.Guessed, Bank.OpenCircuitKnown);
        Assert.Contains("AGM", Bank.OpenCircuitMethod!, StringComparison.Ordinal);
    }

    [Fact]
    public void Resistance_WithoutCapacity_NamesWhatIsNeededWithItsLink()
    {
        IRenderedComponent<TypicalBatteryPanel> panel = Render();
        Assert.Equal("bank/capacityAh", panel.Find("a").GetAttribute("href"));

        Assert.True(_boat.Session.Edit("capacity", new ThingChange(Bank, Bank with { CapacityAh = 100 })).IsKept);
        panel = Render();
        Assert.NotEmpty(panel.FindAll(".caution"));
        panel.FindAll("button").Single(button => button.TextContent.Contains("resistance", StringComparison.Ordinal)).Click();
        Assert.Equal(Knowledge.Guessed, Bank.InternalResistanceOhm!.Known);
    }

    [Fact]
    public void BothGiven_NothingIsOffered()
    {
        _boat.Session.Edit("all", new ThingChange(Bank, Bank with { InternalResistanceOhm = 0.004, OpenCircuit = [new ChargePoint(0, 11), new ChargePoint(1, 12.7)] }));
        Assert.Empty(Render().FindAll("section"));
    }

    public void Dispose()
    {
        _page.Dispose();
        _boat.Dispose();
    }

    private IRenderedComponent<TypicalBatteryPanel> Render() => _page.Render<TypicalBatteryPanel>(parameters => parameters
        .AddCascadingValue(new Reader(DisplayUnits.Metric, CultureInfo.GetCultureInfo("en"), _ => { }))
        .Add(panel => panel.ThingId, "bank").Add(panel => panel.ThingHref, (id, field) => $"{id}/{field}"));
}
