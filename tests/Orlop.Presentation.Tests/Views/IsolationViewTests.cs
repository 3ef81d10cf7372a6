using System.Globalization;
using Orlop.Boat;
using Orlop.Presentation.Views;
using Orlop.Presentation.Words;
using Xunit;

namespace Orlop.Presentation.Tests.Views;

public class IsolationViewTests
{
    private static readonly BoatModel Demo = DemoBoat.Read();

    [Fact]
    public void Of_PartThatPanelsGiveTo_CoversFirstAndUncoversLast()
    {
        IsolationView view = IsolationView.Of(Demo, "main-plus");
        Assert.StartsWith("Switch off everything that runs", view.Steps[0], StringComparison.Ordinal);
        Assert.Equal("First cover or disconnect the solar panels that feed Solar controller, 2 × 200 W (wet room).", view.Steps[1]);
        Assert.Equal("Last, uncover or connect again the solar panels that feed Solar controller, 2 × 200 W (wet room).", view.Restore[^1]);
    }

    [Theory]
    [InlineData("main-plus")]
    [InlineData("kettle")]
    [InlineData("cabin-lights")]
    public void Of_Status_CountsTheStepsThatAreListed(string id)
    {
        IsolationView view = IsolationView.Of(Demo, id);
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"can be made dead by {view.Steps.Length} steps"), view.Status, StringComparison.Ordinal);
    }

    // What a proof says stood there before, somebody has read: the step that reads it stands first.
    [Theory]
    [InlineData("main-plus")]
    [InlineData("cabin-lights")]
    [InlineData("inverter")]
    public void Of_ProofsThatCompare_HaveTheirReadingBefore(string id)
    {
        IsolationView view = IsolationView.Of(Demo, id);
        string[] compared = [.. view.Proofs.Where(proof => proof.Contains("compare with what you noted", StringComparison.Ordinal))];

        Assert.Equal(compared.Length == 0, view.ReadBefore.IsEmpty);
        Assert.All(compared, proof => Assert.Contains(view.ReadBefore, point => proof.Contains($"between {point.Split(" to ")[0]} and ", StringComparison.Ordinal)));
    }

    // Mains is never read behind its cover.
    [Fact]
    public void Of_Mains_IsNotReadBefore()
    {
        IsolationView view = IsolationView.Of(Demo, "kettle");
        Assert.DoesNotContain(view.ReadBefore, point => point.Contains("on AC volts: about", StringComparison.Ordinal));
        Assert.Contains(view.Proofs, proof => proof.Contains("not read then: covered", StringComparison.Ordinal));
    }

    // A battery's posts stay live: all that charges it is stopped all the same.
    [Fact]
    public void Of_Battery_LoadsOffThenEngineAndShoreAreStopped()
    {
        IsolationView view = IsolationView.Of(Demo, "bank");
        Assert.Equal(IsolationWords.LoadsOff, view.Steps[0]);
        Assert.Contains(view.Steps, step => step.Contains("stop the engine", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Of_StaysLive_NamesWhatIsFedPastTheIsolatorUpToSix() =>
        Assert.Contains("It still feeds: Always-live stud; 12\u00A0V plus bar; Converter 24\u00A0V to 12\u00A0V; Bilge pump, engine space;", IsolationView.Of(Demo, "main-plus").StaysLive[0], StringComparison.Ordinal);

    [Fact]
    public void Of_StaysLive_CountsWhatItDoesNotName() =>
        Assert.Matches(@"It still feeds: ([^;]+; ){5}[^;]+ and \d+ more\.$", IsolationView.Of(Demo, "kettle").StaysLive[0]);

    // A meter is seen to read before it is believed (prove, test, prove: common practice, no source).
    [Fact]
    public void Of_Proofs_SayTheSettingAndWhatStoodThereBefore()
    {
        IsolationView view = IsolationView.Of(Demo, "inverter");
        Assert.Contains(view.Proofs, proof => proof.StartsWith("On AC volts: 0\u00A0V between", StringComparison.Ordinal) && proof.Contains("(230\u00A0V before, not read then: covered)", StringComparison.Ordinal));
        Assert.Contains(view.Proofs, proof => proof.StartsWith("On DC volts: 0\u00A0V between", StringComparison.Ordinal) && proof.Contains("V before: compare with what you noted", StringComparison.Ordinal));
        Assert.InRange(view.Proofs.Count(proof => proof.StartsWith("On ", StringComparison.Ordinal)), 4, 6);
        Assert.Matches(@"^Try the meter between .+ and .+, before and after: on DC volts it must read about \d+", view.Proofs[0]);
        Assert.Contains(view.Proofs, proof => proof.StartsWith("Try it on AC volts too", StringComparison.Ordinal));
    }

    // With all switched off the nearest AC point is dead, whether the meter works or not.
    [Fact]
    public void Of_AcPointToTryTheMeterOn_SaysWhatMustRun() =>
        Assert.Contains("start Inverter 1.6 kVA first to see the meter read", IsolationView.Of(Demo, "kettle").Proofs[0].Replace('\u00A0', ' '), StringComparison.Ordinal);

    [Fact]
    public void Of_ControllerWithCoveredPanels_TriesTheMeterWhereABatteryFeeds() =>
        Assert.StartsWith("Try the meter between Main isolator, in", IsolationView.Of(Demo, "solar").Proofs[0], StringComparison.Ordinal);

    [Fact]
    public void Of_ControllerInLight_IsLiveOnlyIfLightReachesThePanels()
    {
        string live = IsolationView.Of(Demo, "solar").StaysLive.Single(text => text.Contains("light", StringComparison.Ordinal));
        Assert.Contains("live if light reaches the panels", live, StringComparison.Ordinal);
        Assert.DoesNotContain("still feeds", live, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_EngineThatIsStopped_IsNotToldAsLive() =>
        Assert.DoesNotContain(IsolationView.Of(Demo, "main-plus").StaysLive, text => text.Contains("while the engine runs", StringComparison.Ordinal));
}
