using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Mending;
using Orlop.Review.Tests.Electrics.Checks;
using Xunit;
using static Orlop.Review.Tests.Mending.MendBoats;

namespace Orlop.Review.Tests.Mending;

/// <summary>Strings of batteries side by side: leads alike, a fuse for each, and what no part clears.</summary>
public sealed class StringMendTests
{
    private static readonly string[] Leads = ["plus-1", "plus-2", "minus-1", "minus-2"];

    [Theory]
    [InlineData(1.4, 6, 9)]
    [InlineData(1.7, 6, 9)]
    [InlineData(1.4, 6, 2)]
    public void UnevenLeads_BecomeOfOneLengthAndSize_ForNoMoreThanAnyTriedSize(double otherLeadM, double priceOf25, double priceOf50)
    {
        BoatModel boat = Beside(otherLeadM);
        Assert.Equal(Verdict.Fails, Verdicts(boat)[("strings-share", "bank")]);
        CataloguePart[] parts = [Single(25, priceOf25), Single(35, 8), Single(50, priceOf50)];
        MendResult result = Mend(boat, parts);
        Assert.Equal((MendOutcome.Cleared, true), (result.Outcome, result.IsProved));
        Assert.True(IsMended(result.Set!.Boat, boat));
        Cable[] leads = [.. Leads.Select(id => result.Set.Boat.Find<Cable>(id)!)];
        Assert.All(leads, lead => Assert.Equal((otherLeadM, leads[0].AreaMm2.Value), (lead.LengthM!.Value, lead.AreaMm2.Value)));
        // Of the size that is there only the short ones are new.
        double cutM = Cut.CutM(otherLeadM, null);
        double least = parts.Where(part => IsMended(Alike(boat, part, otherLeadM), boat)).Min(part => (part.AreaMm2!.Value == 25 ? 2 : 4) * cutM * part.PriceMoneyPerM!.Value);
        Assert.Equal(least, result.Set.Cost.PriceMoney, 9);
    }

    // From the second battery 0.2 m or 1.2 m to where the leads meet: cut short only where they reach.
    [Theory]
    [InlineData(0.2, true)]
    [InlineData(1.2, false)]
    public void LongLeads_AreCutShort_OnlyWhereTheReviewSaysTheyReach(double awayM, bool isFree)
    {
        BoatModel boat = Beside(1.7)
            .Change<BatteryBank>("bank", bank => bank with { Place = new Place(1, -0.2, 1), Size = new BoxSize(0.2, 0.2, 0.2) })
            .Change<BatteryBank>("bank-2", bank => bank with { Place = new Place(1 + awayM, 0, 1), Size = new BoxSize(0.2, 0.2, 0.2) });
        MendResult result = Mend(boat, [Single(25, 6)]);
        Assert.Equal((MendOutcome.Cleared, isFree), (result.Outcome, result.Set!.Cost.PriceMoney == 0));
        Assert.True(IsMended(result.Set.Boat, boat));
    }

    [Fact]
    public void StringsWithNothingBetween_EachGetAFuse_TheCheapestThatBringsNoNewTrouble()
    {
        BoatModel boat = Bare();
        Assert.Equal([Verdict.Fails, Verdict.Fails], new[] { "bank", "bank-2" }.Select(id => Verdicts(boat)[("strings-protected", id)]));
        CataloguePart[] parts = [Strip(10, 1), Strip(60, 5), Strip(80, 6), Strip(125, 7)];
        MendSet set = Parted(boat, parts)!;
        Protection[] added = [.. set.Boat.All<Protection>().Where(device => device.Id != "fuse")];
        Assert.Equal((2, 1), (added.Length, added.Select(device => device.RatedA.Value).Distinct().Count()));
        Assert.True(IsMended(set.Boat, boat));
        Assert.Equal(["bank", "bank-2"], set.Boat.All<Link>().Where(link => added.Any(device => device.Id == link.To.Part)).Select(link => link.From.Part).Order(StringComparer.Ordinal));
        double least = parts.Select(part => Parted(boat, [part])).OfType<MendSet>().Where(alone => IsMended(alone.Boat, boat)).Min(alone => alone.Cost.PriceMoney);
        Assert.Equal(least, set.Cost.PriceMoney);
        Assert.True(least >= 2 * 5, "10 A cannot carry half of 20 A with a margin and whole when the other is out");
    }

    [Fact]
    public void StringsJoinedOneToTheNext_HaveNoLeadsToMakeAlike()
    {
        BoatModel boat = StringBoat.Beside().Without("plus-2").Without("minus-2").Without("fuse-2").Without("strap-2")
            .With(StringBoat.Lead("plus-2", "bank-2.+", "bank.+", 6), StringBoat.Lead("minus-2", "bank-2.-", "bank.-", 6));
        Assert.Equal(Verdict.Fails, Verdicts(boat)[("strings-share", "bank")]);
        MendResult result = Mender.Find(Request(boat, [Single(25, 6)]) with { Only = [("strings-share", "bank")] }, null, TestContext.Current.CancellationToken);
        Assert.Equal(MendOutcome.NotCleared, result.Outcome);
        Assert.NotNull(MendReasons.Of("strings-share", "bank", boat));
    }

    [Fact]
    public void MixedChemistry_IsBeyondMending_AndItIsSaidWhy()
    {
        BoatModel boat = StringBoat.Beside().Change<BatteryBank>("bank-2", bank => bank with { Chemistry = BatteryChemistry.FloodedLeadAcid });
        MendResult result = Mend(boat, Catalogue.BuiltIn);
        Finding beyond = Assert.Single(result.Beyond, finding => finding.CheckId == "strings-alike");
        Assert.NotNull(MendReasons.Of(beyond.CheckId, beyond.SubjectId, boat));
    }

    private static MendSet? Parted(BoatModel boat, IEnumerable<CataloguePart> parts) =>
        Mender.Find(Request(boat, parts) with { Only = [("strings-protected", "bank"), ("strings-protected", "bank-2")] }, null, TestContext.Current.CancellationToken).Set;

    private static CataloguePart Single(double areaMm2, double pricePerM) => Twin(areaMm2, pricePerM) with { Id = FormattableString.Invariant($"single-{areaMm2:0}"), CoreCount = 1, OuterDiameterMm = 10, MassKgPerM = 0.011 * areaMm2 };

    private static CataloguePart Strip(double ratedA, double price) => Fuse(ratedA, price) with { Gates = "strip-sf51" };

    private static BoatModel Alike(BoatModel boat, CataloguePart part, double lengthM) => Leads.Aggregate(boat, (becomes, id) => becomes.Change<Cable>(id, lead => part.AreaMm2!.Value == lead.AreaMm2.Value && lead.LengthM!.Value == lengthM ? lead : lead with
    {
        AreaMm2 = part.AreaMm2,
        InsulationC = part.InsulationC,
        OuterDiameterMm = part.OuterDiameterMm,
        MassKgPerM = part.MassKgPerM,
        LengthM = lengthM,
        Run = [new RunLeg { Space = "cabin", LengthM = lengthM }],
        Cores = [lead.Cores[0] with { FromEnd = StringBoat.Ring(part.AreaMm2.Value), ToEnd = StringBoat.Ring(part.AreaMm2.Value) }],
    }));

    // Batteries of so little resistance that their leads decide.
    private static BoatModel Beside(double otherLeadM) => Strong(StringBoat.Beside(0.3, otherLeadM).Change<BatteryBank>("bank", Soft).Change<BatteryBank>("bank-2", Soft));

    private static BatteryBank Soft(BatteryBank bank) => bank with { InternalResistanceOhm = 0.003 };

    private static BoatModel Strong(BoatModel boat) => boat.WithThings(boat.Things.Select(thing => thing is Protection device ? device with { BreakingA = 20_000 } : thing));

    // Short leads from both posts to the fuse of the lamp.
    private static BoatModel Bare() => Strong(StringBoat.Beside()).Without("fuse-1").Without("fuse-2").Without("strap-1").Without("strap-2")
        .With(StringBoat.Lead("plus-1", "bank.+", "fuse.in", 0.15), StringBoat.Lead("plus-2", "bank-2.+", "fuse.in", 0.15));
}
