using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Views.Floating;
using Orlop.Review;
using Orlop.Review.Stability;
using Orlop.Work.Steps;

namespace Orlop.Work.Tests.Steps;

/// <summary>The demo boat with pigs of iron put aboard, for tests of the berth tests that work asks for.</summary>
internal static class BallastWork
{
    public static readonly DateOnly Worked = new(2026, 11, 7);

    public static Alteration Ballast(double massKg) => new()
    {
        Id = "ballast",
        Name = "Ballast",
        Edits = [BoatEdits.Add(new Gear { Id = "pigs", Name = "Pigs of iron", MassKg = new Quantity(massKg, Knowledge.Measured, 1), Place = new Place(4.6, 0, 0.6) })],
    };

    public static (BoatModel Boat, Alteration Work) Built(double massKg)
    {
        BoatModel boat = With(DemoBoat.Read(), Ballast(massKg));
        BoatModel built = BoatEdits.Apply(boat, AlteredBoat.Build(boat, boat.Find<Alteration>("ballast")!, ["pigs"], Worked)).Boat;
        return (built, built.Find<Alteration>("ballast")!);
    }

    public static BoatModel With(BoatModel boat, params Thing[] more) => boat.WithThings([.. boat.Things.Where(thing => more.All(other => other.Id != thing.Id)), .. more]);

    /// <summary>What a test lists that is typed in now: the boat as built.</summary>
    public static ValueList<AboardItem> Aboard(BoatModel built) => BerthTestGuide.Aboard(new StabilityView(built, null, new Memo()), built.All<Condition>().First());

    public static WorkStep Step(BoatModel boat, Alteration work, string key) => Boats.Plan(boat, work).Steps.Single(step => step.Key == key);
}
