using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Ways;

/// <summary>A gland takes a cable no thicker than its bore and closes on one no thinner than its seal reaches: the range on the gland itself (common practice, no source).</summary>
public sealed class GlandCheckTests
{
    private const string Check = "gland-closes-on-cable";

    // The cable is 9 mm thick.
    [Theory]
    [InlineData(9.0, 4.0, Verdict.Holds)]
    [InlineData(8.5, 4.0, Verdict.Fails)]
    [InlineData(14.0, 10.0, Verdict.Fails)]
    [InlineData(14.0, 9.0, Verdict.Holds)]
    public void Cable_IsHeldAgainstBoreAndSeal(double boreMm, double leastMm, Verdict expected) =>
        Assert.Equal(expected, Through(boreMm, leastMm).WayFinding(Check, "lamp-cable").Verdict);

    [Fact]
    public void Fails_NamesTheGlandAndBothDiameters()
    {
        string thick = Through(8, 4).WayFinding(Check, "lamp-cable").Headline.ToString(), thin = Through(14, 10).WayFinding(Check, "lamp-cable").Headline.ToString();
        Assert.Contains("does not go through the gland at Middle bulkhead", thick, StringComparison.Ordinal);
        Assert.Contains("too thin for the gland at Middle bulkhead", thin, StringComparison.Ordinal);
    }

    // 9 ± 0.5 mm in 9.5 mm: it may be 10 mm.
    [Fact]
    public void DiametersWithinTheirBand_AreUnknown()
    {
        BoatModel boat = Through(9.5, 4).Change<Cable>("lamp-cable", cable => cable with { OuterDiameterMm = new Quantity(9, Knowledge.Measured, 0.5) });
        Assert.Equal(Verdict.Unknown, boat.WayFinding(Check, "lamp-cable").Verdict);
        Assert.Equal(Verdict.Holds, boat.Change<Cable>("lamp-cable", cable => cable with { OuterDiameterMm = new Quantity(9, Knowledge.Measured, 0.1) }).WayFinding(Check, "lamp-cable").Verdict);
    }

    [Fact]
    public void DiameterOfTheCableNotGiven_IsUnknown() => Through(14, 4).Change<Cable>("lamp-cable", cable => cable with { OuterDiameterMm = null }).WayFinding(Check, "lamp-cable").IsUnknownFor("lamp-cable", "outerDiameterMm");

    // Of what is there nobody asks; a cable that is drafted through it asks, until it is built.
    [Theory]
    [InlineData(null, null)]
    [InlineData(14.0, null)]
    [InlineData(null, 4.0)]
    public void GlandNotTold_IsAskedForADraftedCableAlone(double? boreMm, double? leastMm)
    {
        BoatModel there = Through(boreMm, leastMm);
        Assert.DoesNotContain(there.WayFindings(), finding => finding.CheckId == Check);

        BoatModel drafted = Drafted(there, AlterationStatus.Draft);
        drafted.WayFinding(Check, "lamp-cable").IsUnknownFor("straight", "holes");
        Assert.DoesNotContain(Drafted(there, AlterationStatus.Built).WayFindings(), finding => finding.CheckId == Check);
    }

    [Fact]
    public void GlandPartlyTold_FailsWhereThatIsEnough() => Assert.Equal(Verdict.Fails, Through(8, null).WayFinding(Check, "lamp-cable").Verdict);

    [Fact]
    public void WayThatIsAGland_AsksForItsHole()
    {
        BoatModel boat = WayBoat.Make().With(WayBoat.Line("roof", WayKind.Gland, "mid", new Place(1.2, 0, 1), new Place(1.2, 0, 1.1))).RunAlong("roof");
        Drafted(boat, AlterationStatus.Accepted).WayFinding(Check, "lamp-cable").IsUnknownFor("roof", "holes");
    }

    [Fact]
    public void CableThickerThanTheGlandOfAWay_IsNotRoutedThere()
    {
        Assert.DoesNotContain(Through(8, 4).Routes().Routes, route => route.Stretches.Any(stretch => stretch.Way?.Id == "straight"));
        Assert.Contains("takes 8 mm at most", Assert.Single(Through(8, 4).Routes().LeftOut, left => left.Way.Id == "straight").Why, StringComparison.Ordinal);
        Assert.Contains(Through(14, 4).Routes().Routes, route => route.Stretches.Any(stretch => stretch.Way?.Id == "straight"));
    }

    private static BoatModel Through(double? boreMm, double? leastMm) => WayBoat.Make()
        .Change<Way>("straight", way => way with { Holes = [new WayHole { Where = "Middle bulkhead", Guard = EdgeGuard.Gland, BoreMm = Mm(boreMm), LeastClampedMm = Mm(leastMm) }] }).RunAlong("straight");

    private static BoatModel Drafted(BoatModel boat, AlterationStatus status)
    {
        Cable cable = boat.Find<Cable>("lamp-cable")!;
        return boat.With(new Alteration { Id = "new", Status = status, Edits = [new Edit { Id = cable.Id, Was = cable with { LengthM = 1 }, Becomes = cable }] });
    }

    private static Quantity? Mm(double? value) => value is { } mm ? new Quantity(mm) : null;
}
