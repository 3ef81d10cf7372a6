using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Electrics.Checks;

public sealed class PlugMatingCheckTests
{
    [Fact]
    public void SameInEverything_Holds() => Assert.Equal(Verdict.Holds, Verdict1(Plug("one"), Plug("two")));

    [Fact]
    public void SameKeying_PolesArrangedOtherwise_Fails() =>
        Assert.Equal(Verdict.Fails, Verdict1(Plug("one"), Plug("two") with { Arrangement = "plus right" }));

    [Fact]
    public void OtherKeying_Holds() => Assert.Equal(Verdict.Holds, Verdict1(Plug("one"), Plug("two") with { Keying = "red" }));

    [Fact]
    public void SameKeyingWrittenOtherwise_IsTheSame() =>
        Assert.Equal(Verdict.Fails, Verdict1(Plug("one") with { Keying = "two-pole 120 A housing, red" }, Plug("two") with { Keying = "Two-pole 120A housing red", Arrangement = "plus right" }));

    [Fact]
    public void KeyingWithASlipOfThePen_IsUnknown() =>
        Assert.Equal(Verdict.Unknown, Verdict1(Plug("one") with { Keying = "two-pole 120 A housing, red" }, Plug("two") with { Keying = "two-pole 120 A housng, red" }));

    [Fact]
    public void OutOfReach_Holds() => Assert.Equal(Verdict.Holds, Verdict1(Plug("one"), Plug("two") with { Place = new Place(3, 0, 0) }));

    [Fact]
    public void OtherOneHasNoKeying_IsUnknown() => Assert.Equal(Verdict.Unknown, Verdict1(Plug("one"), Plug("two") with { Keying = null }));

    [Fact]
    public void ArrangementNotGiven_IsUnknown() => Assert.Equal(Verdict.Unknown, Verdict1(Plug("one"), Plug("two") with { Arrangement = null }));

    [Fact]
    public void RatingNotGiven_IsUnknown() => Assert.Equal(Verdict.Unknown, Verdict1(Plug("one") with { RatedA = null }, Plug("two")));

    [Fact]
    public void OtherFuseIsBigger_Fails() => Assert.Equal(Verdict.Fails, Verdict1(Plug("one") with { RatedA = 5 }, Plug("two")));

    [Fact]
    public void PolesArrangedOtherwise_VoltageNotKnown_Fails() => Assert.Equal(
        Verdict.Fails,
        SmallBoat.OneLamp().With(Plug("one"), Plug("two") with { Arrangement = "minus left" }).Worst("plugs-that-mate", "one").Verdict);

    [Fact]
    public void SameInEverything_VoltageNotKnown_IsUnknown() => Assert.Equal(
        Verdict.Unknown,
        SmallBoat.OneLamp().With(Plug("one"), Plug("two")).Worst("plugs-that-mate", "one").Verdict);

    [Fact]
    public void TwoThatMate_GiveOneFindingAboutBoth()
    {
        Finding finding = Assert.Single(SmallBoat.OneLamp().With(Plug("one"), Plug("two") with { RatedA = 5 }, Feed("feed-one", "one"), Feed("feed-two", "two"))
            .Findings(), pair => pair.CheckId == "plugs-that-mate").Shown;

        Assert.Equal(("one", "two", Verdict.Fails), (finding.SubjectId, finding.OtherSubjectId, finding.Verdict));
    }

    private static Verdict Verdict1(PlugAndSocket one, PlugAndSocket two) => SmallBoat.OneLamp().With(
        one, two, Feed("feed-one", "one"), Feed("feed-two", "two")).Worst("plugs-that-mate", "one").Verdict;

    private static PlugAndSocket Plug(string id) => new()
    {
        Id = id,
        RatedA = 50,
        RatedV = 60,
        Keying = "grey",
        Arrangement = "plus left",
        LooseLeadM = 2,
        Place = new Place(id == "one" ? 0 : 1, 0, 0),
    };

    private static Cable Feed(string id, string plugId) => SmallBoat.LampCable(id, plugId) with
    {
        Cores = [SmallBoat.Core("plus", "fuse.out", $"{plugId}.in"), SmallBoat.Core("minus", "minus.bar", $"{plugId}.in2")],
    };
}
