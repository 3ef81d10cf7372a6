using System.Globalization;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using Orlop.App.Parts;
using Orlop.App.Sessions;
using Orlop.App.Shell;
using Orlop.App.Tests.Sessions;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Xunit;

namespace Orlop.App.Tests.Parts;

/// <summary>What is typed in a form and not kept yet: kept when it is whole, told while it is not, asked about before it is left.</summary>
public sealed class HalfTypedTests : IDisposable
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-GB");
    private readonly BunitContext _page = new();
    private readonly OpenedBoat _boat = new(OpenedBoat.Small);

    public HalfTypedTests()
    {
        _page.JSInterop.Mode = JSRuntimeMode.Loose;
        _page.Services.AddSingleton(_boat.Session);
    }

    private BoatSession Session => _boat.Session;

    [Fact]
    public void Place_IsKeptWhenItsLastFieldIsLeft_AndIsCalledNotKeptUntilThen()
    {
        IRenderedComponent<ThingForm> form = Render<ThingForm>(parameters => parameters.Add(one => one.ThingId, "chest"));
        form.FindAll("button").Single(button => button.TextContent == "Give place").Click();
        form.Find("#field-chest-place-xM").Change("2");
        form.Find("#field-chest-place-yM").Change("-0.5");
        Assert.Contains("Not kept yet", form.Find(".new .next").TextContent, StringComparison.Ordinal);
        Assert.Null(_boat.Chest.Place);

        form.Find("#field-chest-place-zM").Change("lots");
        Assert.Null(_boat.Chest.Place);
        Assert.Contains("lots", form.Find(".refused li").TextContent, StringComparison.Ordinal);

        form.Find("#field-chest-place-zM").Change("1");
        Assert.Equal(new Place(2, -0.5, 1), _boat.Chest.Place);
        Assert.Empty(form.FindAll(".new"));
    }

    [Fact]
    public void RulesTickedOneAfterTheOther_AreAllKept()
    {
        IRenderedComponent<AddThing> add = Render<AddThing>(parameters => parameters.Add(one => one.Kind, "stability-basis"));
        add.Find("details").Unfold();
        string[] ids = [.. add.FindAll(".choices input").Take(3).Select(box => box.Id!)];
        Array.ForEach(ids, id => add.Find($"#{id}").Change(true));
        Assert.All(ids, id => Assert.True(add.Find($"#{id}").HasAttribute("checked")));

        add.FindAll("button").Single(button => button.TextContent.StartsWith("Add to ", StringComparison.Ordinal)).Click();
        Assert.Equal(3, Session.Now.AsBuilt.All<StabilityBasis>().Single().Rules.Count);
    }

    [Fact]
    public void ThingWithoutItsFields_IsNotAdded_AndEachStandsBesideTheButton()
    {
        IRenderedComponent<AddThing> add = Render<AddThing>(parameters => parameters.Add(one => one.Kind, "battery"));
        add.Find("details").Unfold();
        add.FindAll("button").Single(button => button.TextContent.StartsWith("Add to ", StringComparison.Ordinal)).Click();

        Assert.Equal(["Name", "Chemistry", "Nominal voltage"], add.FindAll(".refused li button").Select(link => link.TextContent));
        Assert.Empty(Session.Now.AsBuilt.All<BatteryBank>());

        // What is put right leaves the list when it is pressed again.
        add.Find("#add-name").Change("House bank");
        add.Find("#add-nominalV").Change("12 V");
        add.FindAll("button").Single(button => button.TextContent.StartsWith("Add to ", StringComparison.Ordinal)).Click();
        Assert.Equal(["Chemistry"], add.FindAll(".refused li button").Select(link => link.TextContent));
    }

    [Fact]
    public void DraftWithoutAName_IsNotBegun_AndSaysWhichFieldIsInTheWay()
    {
        IRenderedComponent<NewAlteration> begin = Render<NewAlteration>(_ => { });
        begin.Find("form").Submit();

        Assert.Equal("Its name", begin.Find(".refused li button").TextContent);
        Assert.Single(Session.Now.AsBuilt.All<Alteration>());
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void LeavingWhatIsTyped_IsAsked_AndLeftOnlyWhenToldSo(bool leaves)
    {
        _page.JSInterop.Setup<bool>("confirm", _ => true).SetResult(leaves);
        IRenderedComponent<AddThing> add = Render<AddThing>(parameters => parameters.Add(one => one.Kind, "battery"));
        add.Find("details").Unfold();
        Navigation.NavigateTo("weights");
        Assert.Empty(_page.JSInterop.Invocations["confirm"]);
        Assert.EndsWith("weights", Navigation.Uri, StringComparison.Ordinal);

        add.Find("#add-name").Input("House bank");
        Navigation.NavigateTo("electrics");
        Assert.Single(_page.JSInterop.Invocations["confirm"]);
        Assert.EndsWith(leaves ? "electrics" : "weights", Navigation.Uri, StringComparison.Ordinal);
    }

    // A box 12 × 4 × 2 m: the engine space is begun in proportion, and says that nobody measured it; no temperature comes with it.
    [Fact]
    public void Space_BegunByOneTap_IsKeptWithItsNoteAndWithoutATemperature()
    {
        Session.Edit("particulars", ThingChange.Add(new Particulars { Id = "particulars", Name = "Boat", LengthOverAllM = 12, BeamM = 4, DepthM = 2 }));
        Space begun = SpaceStarts.For(Session.Now.AsBuilt).Single(space => space.Use == SpaceUse.Engine);
        Space asBegun = Added("Engine space", _ => { });
        Assert.Equal((begun.From, begun.To, SpaceStarts.Note), (asBegun.From, asBegun.To, asBegun.Note));
        Assert.Null(asBegun.AmbientC);

        Space corrected = Added("Open deck", add => add.Find("#add-to-zM").Change("2.4 m"));
        Assert.Equal(2.4, corrected.To.ZM);
        Assert.Null(corrected.Note);

        Space Added(string start, Action<IRenderedComponent<AddThing>> correct)
        {
            IRenderedComponent<AddThing> add = Render<AddThing>(parameters => parameters.Add(one => one.Kind, "space"));
            add.Find("details").Unfold();
            add.FindAll(".templates button").Single(button => button.TextContent == start).Click();
            correct(add);
            add.FindAll("button").Single(button => button.TextContent.StartsWith("Add to ", StringComparison.Ordinal)).Click();
            return Session.Now.AsBuilt.All<Space>().Single(space => space.Name == start);
        }
    }

    public void Dispose()
    {
        _page.Dispose();
        _boat.Dispose();
    }

    private NavigationManager Navigation => _page.Services.GetRequiredService<NavigationManager>();

    private IRenderedComponent<T> Render<T>(Action<ComponentParameterCollectionBuilder<T>> with)
        where T : IComponent => _page.Render<T>(parameters =>
        {
            parameters.AddCascadingValue(new Reader(DisplayUnits.Metric, English, _ => { }));
            with(parameters);
        });
}
