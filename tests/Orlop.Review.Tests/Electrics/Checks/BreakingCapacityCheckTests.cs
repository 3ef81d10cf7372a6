using Orlop.Boat.Things;
using Orlop.Boat.Values;
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

    // 10 ± 3 mΩ: 12.8 V ÷ 10.2 mΩ = 1255 A as put down; 12.8 V ÷ (4 + 0.2) mΩ = 3048 A with the least it may be. A fuse of 2000 A holds only while it is no less than put down, however it is known.
    [Theory]
    [InlineData(Knowledge.Guessed, 2000, Verdict.Unknown)]
    [InlineData(Knowledge.Estimated, 2000, Verdict.Unknown)]
    [InlineData(Knowledge.Measured, 2000, Verdict.Unknown)]
    [InlineData(Knowledge.Sheet, 2000, Verdict.Unknown)]
    [InlineData(Knowledge.Measured, 5000, Verdict.Holds)]
    [InlineData(Knowledge.Guessed, 5000, Verdict.Holds)]
    [InlineData(Knowledge.Guessed, 1000, Verdict.Fails)]
    public void Resistance_HoldsOnlyWhereItsLeastDoes(Knowledge known, double breakingA, Verdict expected)
    {
        Finding finding = Of(new Quantity(0.010, known, 0.003), breakingA);
        Assert.Equal(expected, finding.Verdict);
        if (expected == Verdict.Unknown)
        {
            Assert.Equal(0.004, Line(finding, "bank, the least it may have inside").Value!.Value, 1e-9);
            Assert.Equal(12.8 / 0.0042, Line(finding, "Prospective fault current then").Value!.Value, 1e-6);
            Assert.Contains(new FindingInput("bank", "internalResistanceOhm", IsGuess: known is Knowledge.Guessed or Knowledge.Estimated), finding.Inputs);
            Assert.Contains("few seconds", Line(finding, "Measure the battery's resistance").Source, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void MeasuredWithoutDeviation_IsAsPutDown() => Assert.Equal(Verdict.Holds, Of(new Quantity(0.010, Knowledge.Measured), 2000).Verdict);

    // Without a ±, half of it is one deviation, and no less than a quarter is left: 12.8 V ÷ (2.5 + 0.2) mΩ = 4741 A.
    [Fact]
    public void GuessWithoutDeviation_IsNoLessThanAQuarter() =>
        Assert.Equal(12.8 / 0.0027, Line(Of(new Quantity(0.010, Knowledge.Guessed), 2000), "Prospective fault current then").Value!.Value, 1e-6);

    private static Finding Of(Quantity internalOhm, double breakingA) => SmallBoat.OneLamp()
        .Change<BatteryBank>("bank", bank => bank with { InternalResistanceOhm = internalOhm })
        .Change<Protection>("fuse", fuse => fuse with { BreakingA = breakingA })
        .Worst("breaking-capacity", "fuse");

    private static WorkingLine Line(Finding finding, string what) => Assert.Single(finding.Working, line => line.What == what);
}
