using Bunit;
using Microsoft.AspNetCore.Components.Web;
using Orlop.App.Parts;
using Xunit;

namespace Orlop.App.Tests.Parts;

/// <summary>Where a finger covers several things of a drawing, it is asked which is meant.</summary>
public sealed class ClickableDrawingTests : IDisposable
{
    private readonly BunitContext _page = new();
    private readonly List<string> _opened = [];

    public ClickableDrawingTests() => _page.JSInterop.Mode = JSRuntimeMode.Loose;

    [Fact]
    public async Task SeveralThings_AreListedInTheirOrder_AndTheOneChosenOpens()
    {
        IRenderedComponent<ClickableDrawing> drawing = await Asked();
        Assert.Equal(["Fuse", "Lamp", "None of them"], drawing.FindAll(".which button").Select(button => button.TextContent));
        _page.JSInterop.VerifyFocusAsyncInvoke();

        drawing.FindAll(".which button")[1].Click();
        Assert.Equal(["lamp"], _opened);
        Assert.Empty(drawing.FindAll(".which"));
    }

    [Theory]
    [InlineData("Escape", true)]
    [InlineData("Tab", false)]
    public async Task Escape_ClosesTheListAndOpensNothing(string key, bool isClosed)
    {
        IRenderedComponent<ClickableDrawing> drawing = await Asked();
        drawing.Find(".which").KeyDown(new KeyboardEventArgs { Key = key });

        Assert.Equal(isClosed, drawing.FindAll(".which").Count == 0);
        Assert.Empty(_opened);
    }

    [Fact]
    public async Task NoneOfThem_ClosesTheListAndOpensNothing()
    {
        IRenderedComponent<ClickableDrawing> drawing = await Asked();
        drawing.Find(".which button.plain").Click();

        Assert.Empty(drawing.FindAll(".which"));
        Assert.Empty(_opened);
    }

    public void Dispose() => _page.Dispose();

    private async Task<IRenderedComponent<ClickableDrawing>> Asked()
    {
        IRenderedComponent<ClickableDrawing> drawing = _page.Render<ClickableDrawing>(parameters => parameters.Add(one => one.Draw, _ => "<svg></svg>").Add(one => one.OnOpen, (string id) => _opened.Add(id)));
        await drawing.InvokeAsync(() => drawing.Instance.Ask([new NamedThing("fuse", "Fuse"), new NamedThing("lamp", "Lamp")]));
        return drawing;
    }
}
