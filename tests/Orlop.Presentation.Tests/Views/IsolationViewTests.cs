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
        Assert.Equal("Cover or disconnect the panels first: Solar controller, 2 × 200 W (wet room).", view.Steps[1]);
        Assert.Equal("Last, uncover or connect the panels again: Solar controller, 2 × 200 W (wet room).", view.Restore[^1]);
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

    [Fact]
    public void Of_EngineThatIsStopped_IsNotToldAsLive() =>
        Assert.DoesNotContain(IsolationView.Of(Demo, "main-plus").StaysLive, text => text.Contains("while the engine runs", StringComparison.Ordinal));
}
