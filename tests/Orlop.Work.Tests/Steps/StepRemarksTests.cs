using Orlop.Boat.Things;
using Orlop.Work.Paper;
using Orlop.Work.Steps;
using Xunit;

namespace Orlop.Work.Tests.Steps;

/// <summary>What is read in a step is kept before it is ticked, goes with the tick, and of another day proves nothing.</summary>
public sealed class StepRemarksTests
{
    // Without a reason nothing is left out; a tick takes the words and ends it, and what is cleared is gone with it.
    [Fact]
    public void LeftOut_HasItsReason_AndEndsWithTheTick()
    {
        Assert.Equal(Boats.Pump, StepRemarks.LeftOut(Boats.Pump, Fitted, true, Boats.Day));
        Alteration left = StepRemarks.LeftOut(StepRemarks.Noted(Boats.Pump, Fitted, "no room", Boats.Day), Fitted, true, Boats.Day);
        WorkStep step = Assert.Single(StepRemarks.Of([Fitted], left));
        Assert.True(step.IsLeftOutOn(Boats.Day));
        Assert.False(step.IsDoneOn(Boats.Day));
        Alteration reworded = StepRemarks.Noted(left, Fitted, "no room yet", Boats.Day);
        Assert.True(Assert.Single(reworded.StepRemarks) is { IsLeftOut: true, Remark: "no room yet" });

        Alteration ticked = StepRemarks.Ticked(left, Fitted, Boats.Day);
        Assert.False(StepRemarks.Of([Fitted], ticked)[0].IsLeftOutOn(Boats.Day));
        Assert.Equal("no room", ticked.Ticks.Single(tick => tick.Step == Fitted.Key).Remark);
        Assert.Empty(StepRemarks.Noted(left, Fitted, "", Boats.Day).StepRemarks);
    }

    private static readonly WorkStep Proof = Boats.PumpPack.Steps.First(step => step.Kind == StepKind.ProveDead), Fitted = Boats.PumpPack.Steps.First(step => step.Kind == StepKind.Fit);
    private static readonly DateOnly NextDay = Boats.Day.AddDays(1);

    [Fact]
    public void Remark_GoesWithTheTick_AndComesBackWhenThatIsTakenAway()
    {
        Alteration noted = StepRemarks.Noted(Boats.Pump, Fitted, " 4 screws ", Boats.Day);
        Assert.Equal([new StepRemark(Fitted.Key, Boats.Day, "4 screws")], noted.StepRemarks);

        Alteration ticked = StepRemarks.Ticked(noted, Fitted, NextDay);
        Assert.Empty(ticked.StepRemarks);
        Assert.Equal([new StepTick(Fitted.Key, NextDay, "4 screws")], ticked.Ticks);
        Assert.Equal("3 screws", StepRemarks.Noted(ticked, Fitted, "3 screws", NextDay).Ticks.Single().Remark);

        Alteration unticked = StepRemarks.Unticked(ticked, Fitted);
        Assert.Empty(unticked.Ticks);
        Assert.Equal("4 screws", StepRemarks.On(NextDay, Fitted, unticked));
        Assert.Empty(StepRemarks.Noted(unticked, Fitted, "  ", NextDay).StepRemarks);
    }

    [Fact]
    public void ReadingOfAProof_CountsOnItsDayAlone()
    {
        Alteration noted = StepRemarks.Noted(Boats.Pump, Proof, "0.0 V", Boats.Day), ticked = StepRemarks.Ticked(noted, Proof, Boats.Day);
        Assert.Equal("0.0 V", StepRemarks.On(Boats.Day, Proof, noted));
        Assert.Equal("0.0 V", StepRemarks.On(Boats.Day, Proof, ticked));
        Assert.Null(StepRemarks.On(NextDay, Proof, noted));
        Assert.Null(StepRemarks.On(NextDay, Proof, ticked));
        Assert.Null(StepRemarks.Ticked(noted, Proof, NextDay).Ticks.Single().Remark);

        // On the next visit the old tick stands until it is ticked anew; what is read then is kept beside it.
        Alteration again = StepRemarks.Noted(ticked, Proof, "0.1 V", NextDay);
        Assert.Equal(("0.0 V", "0.1 V"), (again.Ticks.Single().Remark, StepRemarks.On(NextDay, Proof, again)));
    }

    [Fact]
    public void Paper_SaysWhatWasNotedAndLeavesRoomToSign()
    {
        Alteration noted = StepRemarks.Noted(Boats.Pump, Fitted, "4 screws", Boats.Day);
        string html = WorkPackHtml.Render(Boats.Plan(Boats.Small.WithThings([.. Boats.Small.Things, noted]), noted), new PaperOptions(Boats.Day));
        Assert.Contains("noted 2026-11-25: 4 screws; time, initials", html, StringComparison.Ordinal);
    }
}
