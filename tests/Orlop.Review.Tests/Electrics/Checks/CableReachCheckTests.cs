using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Electrics.Checks;

/// <summary>Whether a cable reaches, by the theorem of Pythagoras on whole-number triangles.</summary>
public sealed class CableReachCheckTests
{
    private const string Check = "cable-reaches";

    // Fuse and minus bar at the origin, the lamp 2 m forward, 1 m to port and 2 m up: √(4 + 1 + 4) = 3 m.
    private static readonly BoatModel Placed = SmallBoat.OneLamp()
        .Change<Protection>("fuse", fuse => fuse with { Place = new Place(0, 0, 0) })
        .Change<Busbar>("minus", bar => bar with { Place = new Place(0, 0, 0) })
        .Change<ElectricLoad>("lamp", lamp => lamp with { Place = new Place(2, 1, 2) });

    [Theory]
    [InlineData(3.01, Verdict.Holds)]
    [InlineData(3, Verdict.Holds)]
    [InlineData(2.99, Verdict.Fails)]
    [InlineData(0, Verdict.Fails)]
    public void Length_AgainstTheStraightDistance(double lengthM, Verdict verdict)
    {
        Finding finding = Of(Placed, lengthM);

        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(3, finding.Working.Single(line => line.What == "Straight between them").Value!.Value, 1e-12);
        Assert.Equal(["lamp-cable", "fuse", "lamp"], finding.Inputs.Select(input => input.ThingId));
        Assert.Contains(finding.Working, line => line.What == "Use");
    }

    // Boxes of 2 m by 1 m by 2 m about the lamp leave 1 m, 0.5 m and 1 m: √2.25 = 1.5 m.
    [Theory]
    [InlineData(1.5, Verdict.Holds)]
    [InlineData(1.49, Verdict.Fails)]
    public void Size_LetsTheTerminalSitAnywhereOnTheThing(double lengthM, Verdict verdict) =>
        Assert.Equal(verdict, Of(Placed.Change<ElectricLoad>("lamp", lamp => lamp with { Size = new BoxSize(2, 1, 2) }), lengthM).Verdict);

    [Fact]
    public void PlaceOrLengthNotTold_IsUnknownAndNamesIt()
    {
        Finding place = Of(Placed.Change<ElectricLoad>("lamp", lamp => lamp with { Place = null }), 3);
        Finding length = Placed.Change<Cable>("lamp-cable", cable => cable with { LengthM = null, Run = [] }).Worst(Check, "lamp-cable");

        Assert.Equal((Verdict.Unknown, new FindingInput("lamp", "place", IsMissing: true)), (place.Verdict, Assert.Single(place.Inputs)));
        Assert.Equal((Verdict.Unknown, new FindingInput("lamp-cable", "lengthM", IsMissing: true)), (length.Verdict, Assert.Single(length.Inputs)));
    }

    [Fact]
    public void OneCoreTooShort_FailsThoughTheOtherCannotBeTold() =>
        Assert.Equal(Verdict.Fails, Of(Placed.Change<Busbar>("minus", bar => bar with { Place = null }), 2.9).Verdict);

    [Fact]
    public void CoreWithALengthOfItsOwn_IsHeldAgainstIt() =>
        Assert.Equal(Verdict.Fails, Of(Placed.Change<Cable>("lamp-cable", cable => cable with { Cores = [cable.Cores[0], cable.Cores[1] with { LengthM = 2 }] }), 4).Verdict);

    [Fact]
    public void DemoBoatAsBuilt_EveryCableReaches()
    {
        BoatModel demo = ExampleBoats.Read("sandgrouse");
        Finding[] findings = [.. demo.Findings().Where(pair => pair.CheckId == Check).Select(pair => pair.Shown)];

        Assert.Equal(demo.All<Cable>().Count(), findings.Length);
        Assert.All(findings, finding => Assert.Equal(Verdict.Holds, finding.Verdict));
    }

    // The list of cuts goes by the run, the circuit by the length: of two numbers for one thing neither is believed.
    [Theory]
    [InlineData(4.0, 4.0, null, Verdict.Holds)]
    [InlineData(4.0, 4.07, null, Verdict.Holds)]
    [InlineData(4.0, 4.1, null, Verdict.Fails)]
    [InlineData(4.0, 4.1, 0.05, Verdict.Holds)]
    [InlineData(4.0, 3.5, null, Verdict.Holds)]
    public void StretchesOfTheRun_AreNoLongerThanTheLength(double lengthM, double runM, double? plusMinusM, Verdict verdict)
    {
        Finding finding = Placed.Change<Cable>("lamp-cable", cable => cable with
        {
            LengthM = new Quantity(lengthM, Knowledge.Measured, plusMinusM),
            Run = [new RunLeg { Space = "cabin", LengthM = 1 }, new RunLeg { Space = "cabin", LengthM = runM - 1 }],
        }).Worst(Check, "lamp-cable");
        Assert.Equal(verdict, finding.Verdict);
    }

    private static Finding Of(BoatModel boat, double lengthM) => boat.Change<Cable>("lamp-cable", cable => cable with { LengthM = lengthM, Run = [] }).Worst(Check, "lamp-cable");
}
