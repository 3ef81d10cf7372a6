using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Electrics.Checks;

/// <summary>The worst fault behind a device can be followed by hand, piece by piece.</summary>
public sealed class BreakingCapacityCheckTests
{
    // 12.8 V ÷ (10 mΩ battery + 0.2 mΩ strap) = 1254.9 A: before the fuse, on the battery's minus post, nothing else counts.
    [Fact]
    public void Resistance_IsToldPieceByPiece_AndWorksOutByHand()
    {
        Finding finding = SmallBoat.OneLamp().Worst("breaking-capacity", "fuse");
        WorkingLine[] pieces = [.. finding.Working.SkipWhile(line => line.What != "bank, inside").TakeWhile(line => line.What != "Resistance of sources and way")];

        Assert.Equal(["bank, inside", "strap"], pieces.Select(line => line.What));
        Assert.Equal([0.010, 0.0002], pieces.Select(line => Math.Round(line.Value!.Value, 9)));
        Assert.Equal(0.0102, Line(finding, "Resistance of sources and way").Value!.Value, 1e-9);
        Assert.Equal(12.8 / 0.0102, Line(finding, "Prospective fault current").Value!.Value, 1e-6);
    }

    [Fact]
    public void WhatNobodyMeasured_IsNamedAsLeftOut()
    {
        Finding finding = SmallBoat.OneLamp().Change<Link>("strap", strap => strap with { ResistanceOhm = null }).Worst("breaking-capacity", "fuse");
        WorkingLine left = Line(finding, "Left out for the worst case");

        Assert.Contains("strap", left.Expression, StringComparison.Ordinal);
        Assert.Contains("nobody measured", left.Source, StringComparison.Ordinal);
        Assert.Equal(12.8 / 0.010, Line(finding, "Prospective fault current").Value!.Value, 1e-6);
    }

    private static WorkingLine Line(Finding finding, string what) => Assert.Single(finding.Working, line => line.What == what);
}
