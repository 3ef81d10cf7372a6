using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using Xunit;

namespace Orlop.Review.Tests.Electrics;

/// <summary>A curve that is usual for the chemistry is a guess, and every working that uses it says so.</summary>
public sealed class GuessedCurveTests
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
        static bool Says(WorkingLine line) => line.Source.EndsWith(GuessedCurve.Words, StringComparison.Ordinal) || line.Source.Contains($"{GuessedCurve.Words},", StringComparison.Ordinal);
    }

    [Fact]
    public void Guessed_StandsAmongTheInputsOfTheVoltageAtALoad() =>
        Assert.Contains(new FindingInput("bank", "openCircuit", IsGuess: true), Lamp.Change<BatteryBank>("bank", bank => bank with { OpenCircuitKnown = Knowledge.Guessed }).Worst("voltage-drop", "lamp").Inputs);
}
