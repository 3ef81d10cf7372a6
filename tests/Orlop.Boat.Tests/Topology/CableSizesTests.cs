using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Xunit;

namespace Orlop.Boat.Tests.Topology;

/// <summary>What was given for one cross-section is not taken for that of another.</summary>
public sealed class CableSizesTests
{
    private static readonly Cable Feed = new() { Id = "feed", AreaMm2 = 35, OuterDiameterMm = new Quantity(12.5, Knowledge.Sheet), MassKgPerM = new Quantity(0.4, Knowledge.Sheet) };

    [Fact]
    public void CrossSectionChanged_WhatStayed_IsAGuessOfTheOldOne()
    {
        Cable becomes = Followed(Feed with { AreaMm2 = 50 });
        Assert.Equal((12.5, Knowledge.Guessed, 35.0), (becomes.OuterDiameterMm!.Value, becomes.OuterDiameterMm.Known, CableSizes.OtherMm2(becomes.OuterDiameterMm)));
        Assert.Equal(35.0, CableSizes.OtherMm2(becomes.MassKgPerM));
    }

    [Fact]
    public void ChangedTwice_IsStillThatOfTheFirst() => Assert.Equal(35.0, CableSizes.OtherMm2(((Cable)CableSizes.Following(Followed(Feed with { AreaMm2 = 50 }), Followed(Feed with { AreaMm2 = 50 }) with { AreaMm2 = 70 })).MassKgPerM));

    [Fact]
    public void ChangedBack_IsItsOwnAgain() => Assert.Null(CableSizes.OtherMm2(((Cable)CableSizes.Following(Followed(Feed with { AreaMm2 = 50 }), Followed(Feed with { AreaMm2 = 50 }) with { AreaMm2 = 35 })).OuterDiameterMm));

    [Fact]
    public void ChangedAlong_IsItsOwn() => Assert.Null(CableSizes.OtherMm2(Followed(Feed with { AreaMm2 = 50, OuterDiameterMm = 14 }).OuterDiameterMm));

    [Fact]
    public void AnythingElseChanged_LeavesThem()
    {
        Cable longer = Feed with { LengthM = 4 };
        Assert.Equal(longer, Followed(longer));
    }

    private static Cable Followed(Cable becomes) => (Cable)CableSizes.Following(Feed, becomes);
}
