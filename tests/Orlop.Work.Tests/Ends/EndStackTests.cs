using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Work.Ends;
using Orlop.Work.Readings;
using Orlop.Work.Steps;
using Xunit;

namespace Orlop.Work.Tests.Ends;

/// <summary>A second battery beside the first: what lies on the posts, what is read before they are joined, what each should carry.</summary>
public sealed class EndStackTests
{
    private static readonly BatteryBank Second = Boats.Small.Find<BatteryBank>("bank")! with { Id = "bank-2", Name = "Second bank", Studs = [new Stud("+", 8, Locking: StudLocking.SpringWasher, TorqueNm: 7)] };

    private static readonly WorkPack Pack = Boats.Plan(Boats.Small, new Alteration
    {
        Id = "second",
        Edits = [BoatEdits.Add(Second), BoatEdits.Add(Boats.Wire("second-plus", "bank-2.+", "bank.+", 16, 0.3, 8)), BoatEdits.Add(Boats.Wire("second-minus", "bank-2.-", "bank.-", 16, 0.3, 8))],
    });

    // The lead to the fuse carries what both give, the lead from the second battery what one gives.
    [Fact]
    public void Post_LiesWithTheGreatestCurrentOnTheFace_AndTheWashersOverTheRings() =>
        Assert.Equal(["bank-fuse, 25 mm²", "second-plus, 16 mm²", "plain washer"], Stack("bank.+").Layers.Take(3));

    [Fact]
    public void StudThatIsTold_HasItsLockingAndItsMakersTorque()
    {
        EndStack stack = Stack("bank-2.+");
        Assert.Equal(["second-plus, 16 mm²", "plain washer", "spring washer", "nut"], stack.Layers);
        Assert.Equal((7, 7, true), (stack.Torque!.LeastNm, stack.Torque.MostNm, stack.Torque.IsMakers));
    }

    // A public AGM battery manual, stud M8: 6.6 to 8.5 N·m.
    [Fact]
    public void StudThatIsNotTold_HasTheTablesTorqueOfItsRings() => Assert.Equal((6.6, 8.5), (Stack("bank.-").Torque!.LeastNm, Stack("bank.-").Torque!.MostNm));

    [Fact]
    public void BeforeJoining_TheDifferenceIsReadFromPlusToPlus()
    {
        PredictedReading reading = Assert.Single(Pack.Readings, CommissioningReadings.IsBeforeJoining);
        Assert.Equal((Terminal.Parse("bank.+"), Terminal.Parse("bank-2.+")), (reading.Plus, reading.Minus));
        Assert.Equal((-0.1, 0.1), (reading.Expected!.Least.Value, reading.Expected.Most.Value));
    }

    // Two alike, the second behind 0.6 m of 16 mm² class 5 tinned, 1.24 mΩ/m (IEC 60228 table 3), and four joints of 0.2 mΩ: 5 ÷ (5 + 6.5) = 43 %.
    [Fact]
    public void CurrentOfEachString_IsItsShare()
    {
        double second = Pack.Readings.Single(reading => reading.Key == "at-anchor/current/second-plus.one").Expected!.Nominal.Value;
        double both = Pack.Readings.Single(reading => reading.Key == "at-anchor/current/bank-fuse.one").Expected!.Nominal.Value;
        Assert.InRange(second / both, 0.42, 0.45);
    }

    [Fact]
    public void LeadsOfTheSecond_GoOnWithTheCautionOfJoining()
    {
        WorkStep step = Pack.Steps.Single(step => step.Key == "switch-on:bank-2");
        Assert.Contains(step.Cautions, caution => caution == CommissionSteps.JoinAlike);
        Assert.Contains(step.Details, detail => detail.ToString().Contains("at most 0.1 V", StringComparison.Ordinal));
    }

    private static EndStack Stack(string at) => Pack.Stacks.Single(stack => stack.At.ToString() == at);
}
