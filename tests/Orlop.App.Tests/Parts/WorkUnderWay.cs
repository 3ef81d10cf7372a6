using System.Globalization;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using Orlop.App.Parts;
using Orlop.App.Sessions;
using Orlop.App.Shell;
using Orlop.App.Tests.Sessions;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Work;

namespace Orlop.App.Tests.Parts;

/// <summary>The demo boat with her drying locker under way, for tests of what is done aboard.</summary>
public abstract class WorkUnderWay : IDisposable
{
    private protected WorkUnderWay()
    {
        Page.JSInterop.Mode = JSRuntimeMode.Loose;
        Page.Services.AddSingleton(Demo.Session);
        Page.Renderer.SetRendererInfo(new RendererInfo("Server", isInteractive: true));
    }

    private protected BunitContext Page { get; } = new();

    private protected OpenedBoat Demo { get; } = new(BoatJson.Read(File.ReadAllText(Repository.At("examples", "sandgrouse.json"))).Boat!);

    private protected BoatSession Session => Demo.Session;

    private protected Alteration Locker => Session.Now.AsBuilt.Find<Alteration>("drying-locker")!;

    public void Dispose()
    {
        Page.Dispose();
        Demo.Dispose();
        GC.SuppressFinalize(this);
    }

    private protected static Reader Reader() => new(DisplayUnits.Metric, CultureInfo.GetCultureInfo("en"), _ => { });

    private protected WorkPack Pack() => WorkPacks.Plan(Session.Now.AsBuilt, Locker, Xunit.TestContext.Current.CancellationToken);

    private protected IRenderedComponent<StepsPanel> Steps(WorkPack? pack = null) => Page.Render<StepsPanel>(parameters => parameters.AddCascadingValue(Reader()).Add(panel => panel.Pack, pack ?? Pack()));
}
