using Orlop.Boat.Things;
using Xunit;

namespace Orlop.Boat.Tests.Topology;

/// <summary>A length told twice stays one length.</summary>
public sealed class CableLengthsTests
{
    private static readonly Cable OneStretch = new() { Id = "tail", AreaMm2 = 50, LengthM = 2.2, Run = [new RunLeg { Space = "locker", LengthM = 2.2 }] };
    private static readonly Cable TwoStretches = OneStretch with { Run = [new RunLeg { Space = "locker", LengthM = 1.2 }, new RunLeg { Space = "cabin", LengthM = 1 }] };

    [Fact]
    public void LengthChanged_OnlyStretchFollows() =>
        Assert.Equal([0.9], ((Cable)CableLengths.Following(OneStretch, OneStretch with { LengthM = 0.9 })).Run.Select(leg => leg.LengthM));

    [Fact]
    public void StretchChanged_LengthFollows() =>
        Assert.Equal(3.2, ((Cable)CableLengths.Following(TwoStretches, TwoStretches with { Run = [TwoStretches.Run[0], new RunLeg { Space = "cabin", LengthM = 2 }] })).LengthM!.Value, 1e-12);

    // Which of two stretches became shorter nobody said.
    [Fact]
    public void LengthChanged_OfSeveralStretches_NoneFollows() =>
        Assert.Equal(TwoStretches.Run, ((Cable)CableLengths.Following(TwoStretches, TwoStretches with { LengthM = 0.9 })).Run);

    // 2.2 m ± 0.1 m and 2 % for rounding: 2.444 m.
    [Theory]
    [InlineData(2.2, false)]
    [InlineData(2.44, false)]
    [InlineData(2.45, true)]
    [InlineData(1.9, true)]
    public void Apart_LengthAndStretches_BeyondRoundingAndDeviation(double runM, bool isApart)
    {
        Cable cable = OneStretch with { LengthM = new Values.Quantity(2.2, Values.Knowledge.Estimated, 0.1), Run = [new RunLeg { Space = "locker", LengthM = runM }] };
        Assert.Equal(isApart ? (2.2, runM) : null, CableLengths.Apart(cable));
        Assert.Null(CableLengths.Apart(cable with { LengthM = null }));
        Assert.Null(CableLengths.Apart(cable with { Run = [] }));
    }

    [Fact]
    public void WhatDidNotAgreeBefore_IsLeftAsTyped()
    {
        Cable apart = OneStretch with { LengthM = 3 };
        Cable becomes = apart with { LengthM = 4 };
        Assert.Equal(becomes, CableLengths.Following(apart, becomes));
    }
}
