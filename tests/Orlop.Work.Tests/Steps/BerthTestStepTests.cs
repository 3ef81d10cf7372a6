using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Work.Steps;
using Xunit;
using static Orlop.Work.Tests.Steps.BallastWork;

namespace Orlop.Work.Tests.Steps;

/// <summary>A step that asks for freeboards is judged by whether a survey made after the work is typed in.</summary>
public sealed class BerthTestStepTests
{
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
        boat = daysAfter is { } days ? With(boat, boat.Find<FreeboardSurvey>("october-freeboards")! with { Id = "after", Name = "After the work", On = Worked.AddDays(days), Aboard = Aboard(boat) }) : boat;
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

    // Typed in before the work is recorded, it lists the boat without the pigs: their 60 kg would be the boat's own, and counted again. It speaks against the step, ticked or not.
    [Fact]
    public void Freeboards_TypedBeforeTheWorkIsRecorded_DoNotCount_AndTheStepSaysToRecordFirst()
    {
        Alteration work = Ballast(60) with { Status = AlterationStatus.Accepted, Ticks = [new StepTick("fit:pigs", Worked)] };
        BoatModel boat = With(DemoBoat.Read(), work);
        WorkStep open = Step(boat, work, "freeboards:after");
        Assert.Contains(open.Details, detail => detail.ToString().StartsWith("Record as built first", StringComparison.Ordinal) && detail.ToString().Contains("Pigs of iron", StringComparison.Ordinal));

        WorkStep step = Step(With(boat, boat.Find<FreeboardSurvey>("october-freeboards")! with { Id = "after", Name = "After the work", On = Worked, Aboard = Aboard(boat) }), work, "freeboards:after");
        Assert.Null(step.Kept);
        Assert.Equal(TestStanding.Outside, step.TestOn(Worked)!.Standing);
        Assert.Contains("Pigs of iron", step.Failed!.Words, StringComparison.Ordinal);
        Assert.False((step with { Tick = new StepTick(step.Key, Worked) }).IsDoneOn(Worked));

        (BoatModel built, Alteration recorded) = Built(60);
        Assert.DoesNotContain(Step(built, recorded, "freeboards:after").Details, detail => detail.ToString().StartsWith("Record as built first", StringComparison.Ordinal));
    }

    // Of freeboards read with the work half done, what is neither ticked nor recorded was not aboard: they are no test of the finished work, and no failed one.
    [Fact]
    public void Freeboards_ReadBeforeAllIsFitted_AreNoFailedTest()
    {
        Alteration work = Ballast(60) with { Status = AlterationStatus.Accepted };
        BoatModel boat = With(DemoBoat.Read(), work);
        WorkStep step = Step(With(boat, boat.Find<FreeboardSurvey>("october-freeboards")! with { Id = "after", Name = "Half done", On = Worked, Aboard = Aboard(boat) }), work, "freeboards:after");
        Assert.Null(step.Failed);
        Assert.Equal(TestStanding.NotTyped, step.TestWhenTickedOn(Worked)!.Standing);
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
}
