using System.Globalization;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Orlop.App.Parts;
using Orlop.App.Shell;
using Orlop.App.Tests.Sessions;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Xunit;

namespace Orlop.App.Tests.Parts;

public sealed class ClimatePanelTests : IDisposable
{
    private readonly BunitContext _page = new();
    private readonly OpenedBoat _boat = new(new BoatModel { Things = [new Climate { Id = "home", Name = "Home", LatitudeDeg = 60.5, Table = "uk-shetland", Months = [new ClimateMonth(6, 13)] }] });

    public ClimatePanelTests()
    {
        _page.JSInterop.Mode = JSRuntimeMode.Loose;
        _page.Services.AddSingleton(_boat.Session);
    }

    private Climate Home => _boat.Session.Now.AsBuilt.Find<Climate>("home")!;

    [Fact]
    public void AirAndLight_AreTypedMonthByMonth_InTheOwnersUnits()
    {
        IRenderedComponent<ClimatePanel> panel = Opened();
        panel.Find("#home-12-airC").Change("-2.5");
        panel.Find("#home-12-sunWhPerM2").Change("0.15 kWh/m²");
        panel.Find("#home-6-sunWhPerM2").Change("5700 Wh/m²");

        Assert.Equal([new ClimateMonth(6, 13, 5700), new ClimateMonth(12, -2.5, 150)], Home.Months);
    }

    [Theory]
    [InlineData("#home-6-sunWhPerM2", "13 kWh/m²")]
    [InlineData("#home-6-sunWhPerM2", "11.95 kWh/m²")]
    [InlineData("#home-3-sunWhPerM2", "2 kWh/m²")]
    [InlineData("#home-6-airC", "")]
    [InlineData("#home-6-airC", "warm")]
    public void WhatCannotBe_IsRefusedBesideItsBox(string box, string typed)
    {
        IRenderedComponent<ClimatePanel> panel = Opened();
        panel.Find(box).Change(typed);

        Assert.Contains("Not kept", panel.Find($"{box}-note").TextContent, StringComparison.Ordinal);
        Assert.Equal([new ClimateMonth(6, 13)], Home.Months);
    }

    // UK SAP 2012, table U3, region 20: 190 W/m² in June, 4560 Wh/m² a day.
    [Fact]
    public void LightLeftOpen_ShowsTheTables() => Assert.Contains("table: 4560\u00A0Wh/m²", Opened().FindAll("tbody tr")[5].TextContent, StringComparison.Ordinal);

    [Fact]
    public void PastedMonths_AreKept_AndElevenAreNot()
    {
        IRenderedComponent<ClimatePanel> panel = Opened();
        panel.FindAll("details")[1].Unfold();
        string[] rows = [.. Enumerable.Range(1, 12).Select(month => $"home\t{month}\t4\t0.1")];
        Paste(panel, rows[..11]);
        Assert.Contains("without 12", panel.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Single(Home.Months);

        Paste(panel, rows);
        Assert.Equal(Enumerable.Range(1, 12).Select(month => new ClimateMonth(month, 4, 100)), Home.Months);
    }

    public void Dispose()
    {
        _page.Dispose();
        _boat.Dispose();
    }

    private static void Paste(IRenderedComponent<ClimatePanel> panel, string[] rows)
    {
        panel.Find("#table-in").Change($"climate\tcalendar_month\tair_c\tsun_kwh_per_m2\n{string.Join('\n', rows)}\n");
        panel.FindAll("button").Single(button => button.TextContent.Contains("Put it into", StringComparison.Ordinal)).Click();
    }

    private IRenderedComponent<ClimatePanel> Opened()
    {
        IRenderedComponent<ClimatePanel> panel = _page.Render<ClimatePanel>(parameters => parameters
            .AddCascadingValue(new Reader(DisplayUnits.Metric, CultureInfo.GetCultureInfo("en"), _ => { }))
            .AddCascadingValue(new PageHead())
            .Add(panel => panel.ClimateId, "home").Add(panel => panel.ThingHref, id => id));
        panel.Find("details").Unfold();
        return panel;
    }
}
