using Orlop.Boat.Things;
using Orlop.Work.Tables;
using Xunit;

namespace Orlop.Work.Tests.Ends;

public class EndTablesTests
{
    /// <summary>UL 486A as printed in newtons beside the pounds, in two public application specifications for crimp terminals: 10 AWG 356.0 N, 4 AWG 623.0 N, 1/0 1112.5 N.</summary>
    [Theory]
    [InlineData(5.26, 356.0, "10 AWG")]
    [InlineData(21.15, 623.0, "4 AWG")]
    [InlineData(53.49, 1112.5, "1/0 AWG")]
    [InlineData(35, 801, "2 AWG")]
    [InlineData(4, 311.5, "12 AWG")]
    public void Pull_OfASize_IsThatOfTheLargestGaugeNotLarger(double areaMm2, double publishedN, string gauge)
    {
        Work.Ends.PullForce pull = EndTables.Pull(areaMm2, TerminationMeans.Ring)!;
        Assert.Equal(publishedN, pull.ForceN, publishedN * 0.001);
        Assert.Equal(gauge, pull.Gauge);
    }

    [Theory]
    [InlineData(0.05, TerminationMeans.Ring)]
    [InlineData(150, TerminationMeans.Ring)]
    [InlineData(4, TerminationMeans.Screw)]
    public void Pull_OutsideTheTableOrNotCrimped_IsUnknown(double areaMm2, TerminationMeans means) => Assert.Null(EndTables.Pull(areaMm2, means));

    /// <summary>A public AGM battery manual, stud M8: 6.6 to 8.5 N·m.</summary>
    [Fact]
    public void Torque_OnABatteryStudM8_IsTheTables()
    {
        BatteryBank bank = Boats.Small.Find<BatteryBank>("bank")!;
        Work.Ends.TerminalTorque torque = EndTables.Torque(bank, "+", 8)!;
        Assert.Equal((6.6, 8.5), (torque.LeastNm, torque.MostNm));
    }

    /// <summary>The same manual, insert M8: 9.6 to 10.7 N·m; a maker's own figure goes before both.</summary>
    [Fact]
    public void Torque_OfAStudThatIsTold_IsThatOfItsKindOrItsMakers()
    {
        BatteryBank bank = Boats.Small.Find<BatteryBank>("bank")! with { Studs = [new Stud("+", 8, StudMeans.Insert), new Stud("-", 8, TorqueNm: 12)] };
        Work.Ends.TerminalTorque insert = EndTables.Torque(bank, "+", 8)!, makers = EndTables.Torque(bank, "-", 8)!;
        Assert.Equal((9.6, 10.7, false), (insert.LeastNm, insert.MostNm, insert.IsMakers));
        Assert.Equal((12, 12, true), (makers.LeastNm, makers.MostNm, makers.IsMakers));
    }

    [Fact]
    public void Torque_WhereNoTableHasIt_IsLeftToTheMaker()
    {
        Assert.Null(EndTables.Torque(Boats.Small.Find<BatteryBank>("bank"), "+", 5));
        Assert.Null(EndTables.Torque(Boats.Small.Find<Protection>("main-fuse"), "in", 8));
        Assert.Null(EndTables.Torque(Boats.Small.Find<Busbar>("plus"), "bar", null));
    }

    [Fact]
    public void StripMm_BeyondTheTable_IsUnknown() => Assert.Null(EndTables.StripMm(150, TerminationMeans.Ring));

    [Fact]
    public void Ends_OfEachCable_AreTwoACore() => Assert.Equal(8, Boats.PumpPack.Ends.Length);

    [Fact]
    public void Labels_OfThePumpCable_NameEndsSizeAndFuse()
    {
        Work.Labels.WorkLabel label = Boats.PumpPack.Labels.Single(label => label.Key == "pump-cable.minus@to");
        Assert.Equal(("Pump cable, minus core", "Minus bar", "Pump, minus"), (label.Name, label.From, label.To));
        Assert.Equal("4 Mm2, fuse 20 A", label.Facts.ToString());
    }
}
