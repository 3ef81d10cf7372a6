using Orlop.Boat;
using Orlop.Boat.Things;
using Xunit;

namespace Orlop.Review.Tests.Electrics;

/// <summary>A number of the network says what it rests on.</summary>
public sealed class SolvedSourceTests
{
    [Theory]
    [InlineData("conductor-ampacity", "lamp-cable", "Greatest current")]
    [InlineData("device-carries-load", "fuse", "Running current")]
    [InlineData("part-carries-current", "bank", "Greatest running current")]
    public void ConstantCurrentLamps_TwoOn_SourceSaysSo(string checkId, string subjectId, string line) =>
        Assert.StartsWith("circuit solved with 2 loads on, ", Source(TwoLamps(), checkId, subjectId, line), StringComparison.Ordinal);

    // A lamp of constant power draws more at the lowest charge, one of constant resistance less.
    [Theory]
    [InlineData(LoadBehaviour.Power, "circuit solved with 1 load on, lowest charge")]
    [InlineData(LoadBehaviour.Resistance, "circuit solved with 1 load on, normal charge")]
    public void GreatestCurrent_NamesTheChargeItIsFoundAt(LoadBehaviour behaviour, string source) => Assert.Equal(
        source,
        Source(SmallBoat.OneLamp().Change<ElectricLoad>("lamp", lamp => lamp with { Behaviour = behaviour }), "conductor-ampacity", "lamp-cable", "Greatest current"));

    [Fact]
    public void LeastVoltage_IsAtTheLowestCharge() => Assert.Equal(
        "circuit solved with 1 load on, lowest charge", Source(SmallBoat.OneLamp(), "least-voltage", "lamp", "Voltage at the lowest charge"));

    private static BoatModel TwoLamps() => SmallBoat.OneLamp().With(SmallBoat.Lamp("lamp-2", 1), SmallBoat.LampCable("lamp-2-cable", "lamp-2"));

    private static string Source(BoatModel boat, string checkId, string subjectId, string line) =>
        Assert.Single(boat.Worst(checkId, subjectId).Working, each => each.What == line).Source;
}
