using System.Globalization;
using Bunit;
using Orlop.App.Parts;
using Orlop.App.Shell;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Orlop.Review.Findings;
using Orlop.Review.Readings;
using Orlop.Work.Readings;
using Xunit;

namespace Orlop.App.Tests.Parts;

/// <summary>A reading stands in its box as it was typed, beside what was expected.</summary>
public sealed class ReadingRowTests : IDisposable
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-GB");
    private readonly BunitContext _page = new();

    [Theory]
    [InlineData(0.04, "44.5 mV", "44.5")]
    [InlineData(0.04, "44.50 mV", "44.50")]
    [InlineData(0.04, "0.0445 V", "0.0445 V")]
    [InlineData(26, "26.85 V", "26.85")]
    [InlineData(26, "26.8 ± 0.03 V", "26.8 ± 0.03")]
    public void Typed_IsShownWithEveryDigit(double expectedV, string typed, string shown) =>
        Assert.Equal(shown, Box(expectedV, QuantityText.Parse(typed, "V", DisplayUnits.Metric, English).Quantity!));

    [Theory]
    [InlineData(0.04, 0.0445, null, "44.5")]
    [InlineData(0.04, 0.0445, 0.0002, "44.5 ± 0.2")]
    [InlineData(26, 26.853, null, "26.853")]
    public void NotTypedHere_IsShownWithEveryDigitInTheMetersUnit(double expectedV, double voltageV, double? plusMinusV, string shown) =>
        Assert.Equal(shown, Box(expectedV, new Quantity(voltageV, Knowledge.Measured, plusMinusV)));

    // A phone's keypad for decimals has no ±, no minus and no letters.
    [Fact]
    public void Box_AsksForNoKeypadOfDigits() => Assert.False(Row(26, 26.8, ReadingStanding.Within).Find("input").HasAttribute("inputmode"));

    [Fact]
    public void SignAgainstThePrediction_SaysWhatItMayMean() => Assert.Contains(
        "the sign is turned; left out of the estimate", Row(0.04, -0.0445, ReadingStanding.Turned, "the sign is turned").Find(".stand").TextContent, StringComparison.Ordinal);

    [Theory]
    [InlineData(0.227, 0.000227, "0.227 V")]
    [InlineData(0.04, 44.5, "44.5 mV")]
    public void OneUnitForAnother_IsAskedAbout_AndPutRightByOneButton(double expectedV, double readV, string meant)
    {
        string kept = "";
        IRenderedComponent<ReadingRow> row = Row(expectedV, readV, ReadingStanding.Below, onTyped: typed => kept = typed);
        Assert.Contains($"Did you mean {meant.Replace(' ', '\u00A0')}?", row.Markup.Replace("&#xA0;", "\u00A0", StringComparison.Ordinal).Replace("&nbsp;", "\u00A0", StringComparison.Ordinal), StringComparison.Ordinal);
        row.Find("button").Click();
        Assert.Equal(meant, kept);
    }

    [Fact]
    public void ReadingThatNoOtherUnitExplains_IsNotAskedAbout() => Assert.Empty(Row(0.04, 0.06, ReadingStanding.Above).FindAll("button"));

    [Theory]
    [InlineData(1, "over 99\u00A0%")]
    [InlineData(0.996, "over 99\u00A0%")]
    [InlineData(0.97, "97\u00A0%")]
    public void Likely_IsNeverTold_AsCertain(double weightFraction, string told)
    {
        FaultReport report = new()
        {
            ConditionId = "at-anchor",
            TakerId = "winch",
            Status = Orlop.Electrics.Diagnosis.DiagnosisStatus.Found,
            Headline = Sentence.Of($"As it is."),
            Suspects = [new FaultSuspect("lead", "the lead", 0.03, 0.001, weightFraction, 4)],
            Caution = Sentence.Of($"Live and hot."),
        };
        Orlop.Work.WorkPack pack = Orlop.Work.WorkPacks.Plan(new Orlop.Boat.BoatModel(), new Alteration { Id = "draft", Name = "Draft" }, Xunit.TestContext.Current.CancellationToken);
        IRenderedComponent<DiagnosisReport> shown = _page.Render<DiagnosisReport>(parameters => parameters
            .AddCascadingValue(new Reader(DisplayUnits.Metric, English, _ => { })).Add(one => one.Report, report).Add(one => one.Pack, pack));

        Assert.Equal(told, shown.FindAll("td.n")[1].TextContent);
        Assert.Equal("electrics?circuit=winch&thing=lead", shown.Find(".caution a").GetAttribute("href"));
        Assert.Contains("If one joint or conductor is bad, and the rest is as drawn", shown.Markup, StringComparison.Ordinal);
    }

    public void Dispose() => _page.Dispose();

    private string Box(double expectedV, Quantity read) => Row(expectedV, read, ReadingStanding.Within).Find("input").GetAttribute("value")!;

    private IRenderedComponent<ReadingRow> Row(double expectedV, Quantity read, ReadingStanding standing, string? whyNot = null, Action<string>? onTyped = null)
    {
        Band band = new(new Amount(expectedV, "V"), new Amount(expectedV * 0.9, "V"), new Amount(expectedV * 1.2, "V"));
        PredictedReading predicted = new() { Key = "drop", ConditionId = "at-anchor", What = Sentence.Of($"Voltage lost"), Where = "red here; black there", Expected = band };
        ComparedReading compared = new(new Reading { Id = "reading", Condition = "at-anchor", VoltageV = read }, standing, band, whyNot, band.Meant(read.Value));
        return _page.Render<ReadingRow>(parameters => parameters
            .AddCascadingValue(new Reader(DisplayUnits.Metric, English, _ => { })).Add(one => one.Predicted, predicted).Add(one => one.Compared, compared)
            .Add(one => one.OnTyped, typed =>
            {
                onTyped?.Invoke(typed);
                return null;
            }));
    }
}
