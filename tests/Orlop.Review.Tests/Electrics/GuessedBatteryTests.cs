using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using Xunit;

namespace Orlop.Review.Tests.Electrics;

/// <summary>A curve that is usual for the chemistry is a guess, and every working that uses it says so.</summary>
public sealed class GuessedBatteryTests
{
    private static readonly BoatModel Lamp = SmallBoat.OneLamp(basis: "iso-small-craft").Change<ElectricLoad>("lamp", lamp => lamp with { NominalV = 12 });

    [Theory]
    [InlineData("voltage-drop", "lamp")]
    [InlineData("least-voltage", "lamp")]
    [InlineData("voltage-not-too-high", "lamp")]
    [InlineData("device-voltage", "fuse")]
    [InlineData("device-carries-load", "fuse")]
    [InlineData("breaking-capacity", "fuse")]
    [InlineData("conductor-ampacity", "lamp-cable")]
    public void Guessed_IsSaidInEveryWorkingThatUsesIt(string check, string subject)
    {
        Assert.Contains(Of(Knowledge.Guessed).Working, Says);
        Assert.Contains(Of(Knowledge.Estimated).Working, Says);
        Assert.DoesNotContain(Of(Knowledge.Sheet).Working, Says);
        Assert.DoesNotContain(Of(null).Working, Says);

        Finding Of(Knowledge? known) => Lamp.Change<BatteryBank>("bank", bank => bank with { OpenCircuitKnown = known }).Worst(check, subject);
        static bool Says(WorkingLine line) => line.Source.EndsWith(GuessedBattery.CurveWords, StringComparison.Ordinal) || line.Source.Contains($"{GuessedBattery.CurveWords},", StringComparison.Ordinal);
    }

    [Fact]
    public void Guessed_StandsAmongTheInputsOfTheVoltageAtALoad() =>
        Assert.Contains(new FindingInput("bank", "openCircuit", IsGuess: true), Lamp.Change<BatteryBank>("bank", bank => bank with { OpenCircuitKnown = Knowledge.Guessed }).Worst("voltage-drop", "lamp").Inputs);

    [Fact]
    public void Guessed_WithWhereItComesFrom_SaysThat() => Assert.Contains(
        Lamp.Change<BatteryBank>("bank", bank => bank with { OpenCircuitKnown = Knowledge.Guessed, OpenCircuitMethod = "as the neighbour's" }).Worst("voltage-drop", "lamp").Working,
        line => line.Source.Contains("open-circuit voltage guessed: as the neighbour's", StringComparison.Ordinal));

    [Theory]
    [InlineData("voltage-drop", "lamp")]
    [InlineData("least-voltage", "lamp")]
    [InlineData("breaking-capacity", "fuse")]
    public void GuessedResistance_IsAmongTheInputsAndInTheWorking(string check, string subject)
    {
        Finding guessed = Of(new Quantity(0.01, Knowledge.Guessed, Method: "typical of gel, not measured"));
        Assert.Contains(new FindingInput("bank", "internalResistanceOhm", IsGuess: true), guessed.Inputs);
        Assert.Contains(guessed.Working, line => line.Source.Contains("internal resistance guessed: typical of gel, not measured", StringComparison.Ordinal));

        Finding measured = Of(new Quantity(0.01, Knowledge.Measured));
        Assert.DoesNotContain(measured.Inputs, input => input is { Field: "internalResistanceOhm", IsGuess: true });
        Assert.DoesNotContain(measured.Working, line => line.Source.Contains("guessed", StringComparison.Ordinal));

        Finding Of(Quantity ohm) => Lamp.Change<BatteryBank>("bank", bank => bank with { InternalResistanceOhm = ohm }).Worst(check, subject);
    }

    [Fact]
    public void GuessedResistance_IsAmongTheInputsOfTheWeakestFault()
    {
        Finding finding = Assert.Single(
            Lamp.Change<BatteryBank>("bank", bank => bank with { InternalResistanceOhm = new Quantity(0.01, Knowledge.Guessed) }).Findings(),
            pair => pair.CheckId == "fault-clears" && pair.SubjectId == "lamp-cable.plus").Shown;
        Assert.Contains(new FindingInput("bank", "internalResistanceOhm", IsGuess: true), finding.Inputs);
    }
}
