using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Electrics.Checks;

/// <summary>What is bolted to a post: thread, order, washer, lug. FAA AC 43.13-1B 11-174b for what lies between face and ring; the rest common practice, no source.</summary>
public sealed class StudCheckTests
{
    [Fact]
    public void RingOfTheStudsThread_Holds() => Assert.Equal(Verdict.Holds, Boat().Worst("ring-fits-stud", "bank.-").Verdict);

    [Theory]
    [InlineData(7.94, Verdict.Holds)]
    [InlineData(6, Verdict.Fails)]
    [InlineData(10, Verdict.Fails)]
    public void RingOfAnotherThread_Fails(double studMm, Verdict verdict) =>
        Assert.Equal(verdict, Boat(lead => StringBoat.FirstEnd(lead, StringBoat.Ring(25, studMm))).Worst("ring-fits-stud", "bank.-").Verdict);

    [Fact]
    public void StudOfABatteryNotTold_IsUnknown() =>
        Boat().Change<BatteryBank>("bank", bank => bank with { Studs = [] }).Worst("ring-fits-stud", "bank.-").IsUnknownFor("bank", "studs");

    [Fact]
    public void ThreadOfTheRingNotGiven_IsUnknown() =>
        Boat(lead => StringBoat.FirstEnd(lead, new Termination(TerminationMeans.Ring))).Worst("ring-fits-stud", "bank.-").IsUnknownFor("minus-strap", "cores/one/fromEnd/studMm");

    // An M6 ring does not go on a stud that an M8 ring fits, whatever the stud is.
    [Fact]
    public void TwoRingsOfTwoThreadsOnOneUntoldStud_Fail() => Assert.Equal(
        Verdict.Fails, Two(StringBoat.Ring(25), StringBoat.Ring(25, 6)).Change<BatteryBank>("bank", bank => bank with { Studs = [] }).Worst("ring-fits-stud", "bank.-").Verdict);

    [Theory]
    [InlineData(1, 2, Verdict.Holds)]
    [InlineData(2, 1, Verdict.Fails)]
    public void TwoRings_GreaterCurrentOnTheFace(int ofLamp, int ofCharger, Verdict verdict) =>
        Assert.Equal(verdict, Two(StringBoat.Ring(25, 8, ofLamp), StringBoat.Ring(25, 8, ofCharger)).Worst("stud-stack", "bank.-").Verdict);

    [Fact]
    public void TwoRingsOutOfOrder_AreNamedWithTheRightOrder() => Assert.EndsWith(
        "from the face outward: minus-strap, other-minus", Two(StringBoat.Ring(25, 8, 2), StringBoat.Ring(25, 8, 1)).Worst("stud-stack", "bank.-").Headline.ToString(), StringComparison.Ordinal);

    [Theory]
    [InlineData(null, 2)]
    [InlineData(1, 1)]
    public void PlaceNotGivenOrGivenTwice_IsUnknown(int? ofLamp, int? ofOther) =>
        Two(StringBoat.Ring(25, 8, ofLamp), StringBoat.Ring(25, 8, ofOther)).Worst("stud-stack", "bank.-").IsUnknownFor("minus-strap", "cores/one/fromEnd/fromFaceCount");

    [Fact]
    public void WasherUnderTheRings_Fails() => Assert.Equal(Verdict.Fails, Two(StringBoat.Ring(25, 8, 1), StringBoat.Ring(25, 8, 2))
        .Change<BatteryBank>("bank", bank => bank with { Studs = [new Stud("-", 8, HasWasherUnder: true)] }).Worst("stud-stack", "bank.-").Verdict);

    [Fact]
    public void WasherNotTold_IsUnknown() => Two(StringBoat.Ring(25, 8, 1), StringBoat.Ring(25, 8, 2))
        .Change<BatteryBank>("bank", bank => bank with { Studs = [new Stud("-", 8)] }).Worst("stud-stack", "bank.-").IsUnknownFor("bank", "studs");

    [Fact]
    public void DrawOfALoadNotGiven_IsUnknown() => Assert.Equal(
        Verdict.Unknown, Two(StringBoat.Ring(25, 8, 1), StringBoat.Ring(25, 8, 2)).Change<ElectricLoad>("lamp", lamp => lamp with { RunningA = null }).Worst("stud-stack", "bank.-").Verdict);

    // 25 mm² in a 25 mm² barrel; 2/0 AWG, 67.4 mm², in one for 70 mm²; 25 mm² in one for 35 mm² is loose, in one for 16 mm² has lost strands.
    [Theory]
    [InlineData(25, 25, Verdict.Holds)]
    [InlineData(67.43, 70, Verdict.Holds)]
    [InlineData(25, 35, Verdict.Fails)]
    [InlineData(25, 16, Verdict.Fails)]
    public void LugAgainstItsConductor(double areaMm2, double lugMm2, Verdict verdict) =>
        Assert.Equal(verdict, Boat(lead => StringBoat.FirstEnd(lead with { AreaMm2 = areaMm2, Cores = [lead.Cores[0] with { ToEnd = StringBoat.Ring(areaMm2) }] }, StringBoat.Ring(lugMm2))).Worst("lug-fits-cable", "minus-strap").Verdict);

    [Fact]
    public void LugAtABatteryNotTold_IsUnknown() =>
        Boat(lead => StringBoat.FirstEnd(lead, new Termination(TerminationMeans.Ring, 8))).Worst("lug-fits-cable", "minus-strap").IsUnknownFor("minus-strap", "cores/one/fromEnd/lugMm2");

    [Fact]
    public void LugAwayFromAnyBatteryNotTold_IsNotAskedFor() => Assert.DoesNotContain(Boat().Findings(), finding => finding.CheckId == "lug-fits-cable" && finding.SubjectId == "lamp-cable");

    private static BoatModel Boat(Func<Cable, Cable>? lead = null) =>
        SmallBoat.OneLamp().With(StringBoat.Battery("bank"), (lead ?? (same => same))(StringBoat.Lead("minus-strap", "bank.-", "minus.bar", 0.5)));

    // The minus of the lamp and that of a small load of 1 A on one post.
    private static BoatModel Two(Termination ofLamp, Termination ofOther) => Boat(lead => StringBoat.FirstEnd(lead, ofLamp)).With(
        new Busbar { Id = "other", Place = new Place(1, 0.2, 1) },
        StringBoat.FirstEnd(StringBoat.Lead("other-minus", "bank.-", "other.bar", 0.5), ofOther),
        SmallBoat.Lamp("small", 1),
        SmallBoat.LampCable("small-cable", "small") with { Cores = [SmallBoat.Core("plus", "fuse.out", "small.+"), SmallBoat.Core("minus", "other.bar", "small.-")] });
}
