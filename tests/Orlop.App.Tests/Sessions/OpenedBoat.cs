using Orlop.App.Sessions;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review;
using Orlop.Review.Electrics;
using Orlop.Review.Energy;
using Orlop.Review.Readings;
using Orlop.Review.Stability;
using Orlop.Review.Ways;
using Orlop.Store;

namespace Orlop.App.Tests.Sessions;

/// <summary>A boat in a file of its own, opened; what is long is done in place unless told otherwise, so that a page is drawn when the hand's act is over.</summary>
internal sealed class OpenedBoat : IDisposable
{
    // One for all, so that a boat that several tests open is reviewed once.
    private static readonly ReviewEngine Engine = new([new ElectricsDiscipline(), new ReadingsDiscipline(), new StabilityDiscipline(), new EnergyDiscipline(), new WaysDiscipline()]);
    private readonly TemporaryFolder _folder = new();

    public OpenedBoat(BoatModel boat, TaskScheduler? background = null)
    {
        Store = BoatStore.Create(_folder.At("boat.orlop"), boat);
        Session = new BoatSession(Store, Engine, background: background ?? Background);
    }

    /// <summary>What does what is long, unless the test brought its own.</summary>
    public HandedScheduler Background { get; } = new();

    public BoatStore Store { get; }

    public BoatSession Session { get; }

    public static BoatModel Small { get; } = new()
    {
        Things =
        [
            new Gear { Id = "chest", Name = "Tool chest", MassKg = 40 },
            new Alteration { Id = "draft", Name = "Move the chest" },
        ],
    };

    public Gear Chest => Session.Now.Shown.Find<Gear>("chest")!;

    /// <summary>Another process working on the same file.</summary>
    public BoatStore OpenAgain() => BoatStore.Open(Store.Path);

    public async Task<BoatSnapshot> WhenReviewed()
    {
        for (int i = 0; i < 2400 && (Session.Now.IsReviewing || Session.Now.Review is null); i++)
        {
            await Task.Delay(25);
        }

        return Session.Now;
    }

    public void Dispose()
    {
        Session.Dispose();
        _folder.Dispose();
    }
}
