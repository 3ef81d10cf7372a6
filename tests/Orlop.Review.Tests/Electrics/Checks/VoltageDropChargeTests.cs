using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Electrics.Checks;

/// <summary>A voltage that is told says at which charge of the battery it stands.</summary>
public sealed class VoltageDropChargeTests
{
    // A load of constant power draws more from an emptier battery, one of constant current the same: Ohm's law.
    [Theory]
    [InlineData(LoadBehaviour.Power, " in use at the lowest charge: ")]
    [InlineData(LoadBehaviour.Current, " in use at normal charge: ")]
    public void Headline_SaysTheChargeOfItsVoltage(LoadBehaviour behaviour, string words)
    {
        Finding finding = SmallBoat.OneLamp().Change<ElectricLoad>("lamp", lamp => lamp with { Behaviour = behaviour, RunningA = behaviour == LoadBehaviour.Current ? 5 : null, RunningW = behaviour == LoadBehaviour.Power ? 120 : null }).Worst("voltage-drop", "lamp");
        Assert.Contains(words, finding.Headline.ToString(), StringComparison.Ordinal);
    }
}
