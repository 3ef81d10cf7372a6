using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests.Electrics.Checks;

/// <summary>A fault behind a DC converter: what it gives into a short is not told, only the most that it gives.</summary>
public sealed class LimitedFaultTests
{
    private const string Check = "fault-clears";
    private const string Plus = "small-cable.plus";

    // The verdict turns where the converter's limit passes what the cable may carry for ever, as its own check tells it.
    [Fact]
    public void HoldsUpToWhatTheConductorCarriesForEver_AndIsUnknownBeyond()
    {
        double ampacityA = ConverterBoat.Of(2.5, 10, 10, 3).Worst("conductor-ampacity", "small-cable").Working.Single(line => line.What == "May carry where it runs").Value!.Value;
        Finding within = ConverterBoat.Of(2.5, 0.999 * ampacityA, 10, 3).Worst(Check, Plus), beyond = ConverterBoat.Of(2.5, 1.001 * ampacityA, 10, 3).Worst(Check, Plus);
        Assert.Equal(Verdict.Holds, within.Verdict);
        Assert.Contains("carries for ever", within.Headline.ToString(), StringComparison.Ordinal);
        Assert.Contains("need not open", within.Headline.ToString(), StringComparison.Ordinal);
        Assert.Equal(Verdict.Unknown, beyond.Verdict);
        Assert.Contains(beyond.Inputs, input => input is { ThingId: "converter", Field: "ratedA" });
    }

    [Fact]
    public void FuseAsBigAsTheConverter_ThickCable_SaysThatItNeedNotOpen() =>
        Assert.Contains("need not open", ConverterBoat.Of(10, 40, 40, 3).Worst(Check, Plus).Headline.ToString(), StringComparison.Ordinal);

    [Fact]
    public void InsulationNotGiven_IsUnknown() =>
        ConverterBoat.Of(2.5, 5, 10, 3).Change<Cable>("small-cable", cable => cable with { InsulationC = null }).Worst(Check, Plus).IsUnknownFor("small-cable", "insulationC");

    [Fact]
    public void NoDevice_IsLeftToTheCheckOfProtection() => Assert.DoesNotContain(
        ConverterBoat.Of(2.5, 5, 10, 3).Change<Cable>("small-cable", cable => cable with { Cores = [SmallBoat.Core("plus", "converter.out+", "small.+"), cable.Cores[1]] }).Findings(),
        finding => finding.CheckId == Check && finding.SubjectId == Plus);

    // A charger on the converter's side adds its limit; a battery there makes it a fault that is not limited.
    [Theory]
    [InlineData(5, Verdict.Holds)]
    [InlineData(500, Verdict.Unknown)]
    public void ChargerBesideTheConverter_AddsItsLimit(double limitA, Verdict verdict)
    {
        Finding finding = Beside(new Charger { Id = "second", Drive = ChargerDrive.Engine, LimitA = limitA, SetpointV = 12 }).Worst(Check, Plus);
        Assert.Equal(verdict, finding.Verdict);
        Assert.Contains(finding.Working, line => line.What == "Together at most" && line.Value!.Value == 5 + limitA);
    }

    [Fact]
    public void BatteryBesideTheConverter_IsNotCalledLimited() => Assert.NotEqual(Verdict.Holds, Beside(SmallBoat.Battery("second")).Worst(Check, Plus).Verdict);

    private static BoatModel Beside(Part second) => ConverterBoat.Of(2.5, 5, 10, 3).With(
        second,
        new Link { Id = "second-plus", From = new Terminal("second", "+"), To = new Terminal("converter", "out+"), LengthM = 0.05, ResistanceOhm = 0.0002 },
        new Link { Id = "second-minus", From = new Terminal("second", "-"), To = new Terminal("converter", "out-"), LengthM = 0.05, ResistanceOhm = 0.0002 });
}
