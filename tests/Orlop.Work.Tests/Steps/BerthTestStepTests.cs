using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Work.Steps;
using Xunit;

namespace Orlop.Work.Tests.Steps;

/// <summary>A step that asks for freeboards is judged by whether a survey made after the work is typed in.</summary>
public sealed class BerthTestStepTests
{
    private static readonly DateOnly Worked = new(2026, 11, 7);

    // Ticked without a survey it is told plainly and stays open; a survey of before the work proves nothing of it; one of the day of the work or later does.
    [Theory]
    [InlineData(null, false)]
    [InlineData(-1, false)]
    [InlineData(0, true)]
    [InlineData(3, true)]
    public void Freeboards_AreJudgedByASurveyMadeAfterTheWork(int? daysAfter, bool isDone)
    {
        (BoatModel built, Alteration work) = Built(60);
        Alteration ticked = work with { Ticks = [.. work.Ticks, new StepTick("freeboards:after", Worked.AddDays(3))] };
        BoatModel boat = With(built, ticked);
        boat = daysAfter is { } days ? With(boat, boat.Find<FreeboardSurvey>("october-freeboards")! with { Id = "after", Name = "After the work", On = Worked.AddDays(days) }) : boat;
        WorkPack pack = Boats.Plan(boat, ticked);
        WorkStep step = pack.Steps.Single(step => step.Key == "freeboards:after");

        Assert.Equal(isDone, step.IsDoneOn(Worked.AddDays(3)));
        Assert.Equal(isDone ? TestStanding.Passed : TestStanding.NotTyped, step.TestOn(Worked.AddDays(3))!.Standing);
        Assert.Equal(isDone ? [] : ["freeboards:after"], pack.FailedTests.Select(failed => failed.Key));
        if (!isDone)
        {
            Assert.StartsWith("No freeboard survey is typed in that was made on the day of the work or later", step.Failed!.Words, StringComparison.Ordinal);
        }
    }

    // Before it is ticked nothing failed, and what the tick would meet can be asked.
    [Fact]
    public void Freeboards_NotTicked_HaveNotFailed_AndSayWhatATickWouldMeet()
    {
        (BoatModel built, Alteration work) = Built(60);
        WorkStep step = Step(built, work, "freeboards:after");
        Assert.Null(step.Failed);
        Assert.Null(step.TestOn(Worked));
        Assert.Equal(TestStanding.NotTyped, step.TestWhenTickedOn(Worked)!.Standing);
    }

    private static Alteration Ballast(double massKg) => new()
    {
        Id = "ballast",
        Name = "Ballast",
        Edits = [BoatEdits.Add(new Gear { Id = "pigs", Name = "Pigs of iron", MassKg = new Quantity(massKg, Knowledge.Measured, 1), Place = new Place(4.6, 0, 0.6) })],
    };

    private static (BoatModel Boat, Alteration Work) Built(double massKg)
    {
        BoatModel boat = With(DemoBoat.Read(), Ballast(massKg));
        BoatModel built = BoatEdits.Apply(boat, AlteredBoat.Build(boat, boat.Find<Alteration>("ballast")!, ["pigs"], Worked)).Boat;
        return (built, built.Find<Alteration>("ballast")!);
    }

    private static BoatModel With(BoatModel boat, params Thing[] more) => boat.WithThings([.. boat.Things.Where(thing => more.All(other => other.Id != thing.Id)), .. more]);

    private static WorkStep Step(BoatModel boat, Alteration work, string key) => Boats.Plan(boat, work).Steps.Single(step => step.Key == key);
}
