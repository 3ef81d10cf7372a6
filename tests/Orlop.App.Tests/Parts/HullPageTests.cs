using System.Globalization;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Orlop.App.Pages;
using Orlop.App.Shell;
using Orlop.App.Tests.Sessions;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Hull.Surfaces;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views.Hulls;
using Xunit;

namespace Orlop.App.Tests.Parts;

/// <summary>Stations of the hull lines, typed on their page.</summary>
public sealed class HullPageTests : IDisposable, IAsyncLifetime
{
    private static readonly HullLines Lines = HullEdit.Of(StartingForm.Create("hull", StartingShape.SingleChine, 8.69, 2.9, 1.5), null, 3);
    private readonly BunitContext _page = new();
    private readonly OpenedBoat _boat = new(new BoatModel { Things = [Lines] });

    public HullPageTests()
    {
        _page.Services.AddSingleton(_boat.Session);
        _page.JSInterop.Mode = JSRuntimeMode.Loose;
    }

    /// <summary>Waits for the first review, so that none comes between a key and what it draws.</summary>
    public async ValueTask InitializeAsync()
    {
        while (_boat.Session.Now.Review is null)
        {
            await Task.Delay(20, Xunit.TestContext.Current.CancellationToken);
        }
    }

    public ValueTask DisposeAsync()
    {
        Dispose();
        return ValueTask.CompletedTask;
    }

    private HullLines Kept => _boat.Session.Now.Shown.All<HullLines>().Single();

    // Station 2 stands at 0.869 m, between the transom at 0 m and station 3 at 1.738 m.
    [Fact]
    public void PlaceOfAStation_TypedKeyByKey_IsDrawnWhereItCanBe()
    {
        IRenderedComponent<HullPage> page = Page();
        Choose(page, 1);
        foreach (string typed in new[] { "", "0", "0.", "0.9", "0.9 ", "0.9 m" })
        {
            page.Find("#station-x").Input(typed);
            Assert.Equal(typed, page.Find("#station-x").GetAttribute("value"));
        }

        Assert.Contains("As kept", page.Markup, StringComparison.Ordinal);
        page.Find("#station-x").Change("0.9 m");
        Assert.All(Kept.Stations[1].Points, point => Assert.Equal(0.9, point.XM));
    }

    [Theory]
    [InlineData(1, "0")]
    [InlineData(1, "1.738 m")]
    [InlineData(2, "4")]
    [InlineData(2, "2.7")]
    [InlineData(2, "2.607")]
    public void PlacePastANeighbour_IsRefusedWithTheNeighboursPlaces_AndNothingIsDrawnAnew(int station, string typed)
    {
        IRenderedComponent<HullPage> page = Page();
        Choose(page, station);
        string drawn = page.Find("#lines-plan").OuterHtml;
        page.Find("#station-x").Input(typed);
        Assert.Equal(drawn, page.Find("#lines-plan").OuterHtml);
        string remark = page.Find(".station-editor p.hint[role=status]").TextContent;
        foreach (int neighbour in new[] { station - 1, station + 1 })
        {
            Assert.Contains($"{Lines.Stations[neighbour].Name} at {HullCell.Text(Lines.Stations[neighbour].Points[0].XM, DisplayUnits.Metric, CultureInfo.InvariantCulture)}", remark, StringComparison.Ordinal);
        }

        page.Find("#station-x").Change(typed);
        Assert.Equal(remark, page.Find(".station-editor p.refusal[role=alert]").TextContent);
        Assert.Equal(Lines, Kept);
        Assert.Equal(typed, page.Find("#station-x").GetAttribute("value"));
    }

    // Said of the form's, her hull says so, and moved too; it is measured once the owner says that all of it is.
    [Fact]
    public void Origin_IsSaid_AndAStationIsMeasuredOnceThatIsSaid()
    {
        IRenderedComponent<HullPage> page = Page();
        Assert.DoesNotContain("not measured", page.Find(".hull-state").TextContent, StringComparison.Ordinal);
        Choose(page, 1);
        page.Find("#station-origin").Change("Form");
        Assert.Contains($"1 of {Lines.Stations.Count} stations is the form's, not measured", page.Find(".hull-state").TextContent, StringComparison.Ordinal);

        page.Find("#station-x").Change("0.9 m");
        Assert.Equal(StationOrigin.Form, Kept.Stations[1].Origin);
        page.Find("#station-measured").Click();
        Assert.Equal(StationOrigin.Measured, Kept.Stations[1].Origin);
        Assert.Empty(page.FindAll("#station-measured"));
        Assert.DoesNotContain("not measured", page.Find(".hull-state").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task TypedAndTypedBack_LeavesNoRemark()
    {
        IRenderedComponent<HullPage> page = Page();
        Choose(page, 2);
        string found = page.Find("#station-x").GetAttribute("value")!;
        page.Find("#station-x").Input("4");
        page.Find("#station-x").Input(found);
        await page.InvokeAsync(() => page.Find("#station-x").Blur());
        Assert.Empty(page.FindAll(".station-editor p.hint"));
        Assert.DoesNotContain("As kept", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task AnyField_OfAnyStation_WithAnyText_NeverStopsThePage()
    {
        IRenderedComponent<HullPage> page = Page();
        for (int station = 0; station < Lines.Stations.Count; station++)
        {
            Choose(page, station);
            string[] neighbours = [.. new[] { station - 1, station + 1 }.Where(one => one >= 0 && one < Lines.Stations.Count).Select(one => HullCell.Text(Lines.Stations[one].Points[0].XM, DisplayUnits.Metric, CultureInfo.InvariantCulture))];
            foreach (string id in page.FindAll(".station-editor input[id]").Select(box => box.Id!).Where(id => id != "station-name"))
            {
                string found = page.Find($"#{id}").GetAttribute("value")!;
                foreach (string typed in (string[])["0", "x", "-4", "20 m", "1e300", "NaN", .. neighbours])
                {
                    page.Find($"#{id}").Input(typed);
                    Assert.Equal(typed, page.Find($"#{id}").GetAttribute("value"));
                }

                page.Find($"#{id}").Input(found);
                await page.InvokeAsync(() => page.Find($"#{id}").Blur());
            }
        }

        Assert.Equal(Lines, Kept);
        Assert.DoesNotContain("NaN", page.Find(".drawing-side").OuterHtml, StringComparison.Ordinal);
    }

    public void Dispose()
    {
        _page.Dispose();
        _boat.Dispose();
    }

    private static void Choose(IRenderedComponent<HullPage> page, int station) => page.Find("#hull-station").Change(station.ToString(CultureInfo.InvariantCulture));

    private IRenderedComponent<HullPage> Page() => _page.Render<HullPage>(parameters => parameters.AddCascadingValue(new Reader(DisplayUnits.Metric, CultureInfo.InvariantCulture, _ => { })));
}
