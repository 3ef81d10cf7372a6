using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Review.Readings;
using Orlop.Work.Bring;
using Orlop.Work.Steps;
using Orlop.Work.Troubles;

namespace Orlop.Work.Paper;

/// <summary>The words and numbers of a pack in the reader's units.</summary>
public sealed class PackText(PaperOptions options)
{
    // Below this a meter is read in millivolts.
    private const double MillivoltRangeV = 1;

    /// <summary>What the review holds against the alteration, as it is listed.</summary>
    public FindingsView Of(PackTroubles troubles) => troubles.View(options.Units, options.Culture);

    /// <summary>A sentence for each finding that fails, with the condition that it is worst in.</summary>
    public IEnumerable<string> Failing(IEnumerable<PairedFinding> failing, PackTroubles troubles)
    {
        PairedFinding[] wanted = [.. failing];
        return wanted.Length == 0 ? [] : Of(troubles).Groups.SelectMany(group => group.Rows).Where(row => wanted.Contains(row.Pair))
            .Select(row => row.Condition is { } condition ? $"{row.Headline} ({condition})" : row.Headline);
    }

    /// <summary>A sentence with its amounts.</summary>
    public string Of(Sentence sentence) => SentenceText.Of(sentence, options.Units, options.Culture);

    /// <summary>An amount.</summary>
    public string Of(Amount amount) => QuantityText.Format(amount.Value, amount.Suffix, options.Units, options.Culture);

    /// <summary>What a meter shows: a voltage below 1 V in millivolts.</summary>
    public string Reading(Amount amount) => amount.Suffix == "V" ? Voltage(amount.Value) : Of(amount);

    /// <summary>The accepted range of a reading: "159 mV to 219 mV".</summary>
    public string Range(Band band) => $"{Reading(band.Least)} to {Reading(band.Most)}";

    /// <summary>Symbol of the unit in which the reader's wrench shows a torque.</summary>
    public string TorqueUnit => AxisUnit.For("Nm", options.Units).Symbol;

    /// <summary>Where a bring item stands.</summary>
    public static string Of(StockState state) => state switch
    {
        StockState.InStock => "in stock",
        StockState.Partly => "partly",
        StockState.ToBuy => "to buy",
        _ => "look",
    };

    /// <summary>What a section of the bring list is called.</summary>
    public static string Of(BringKind kind) => kind switch
    {
        BringKind.Cable => "Cable",
        BringKind.Termination => "Terminations",
        BringKind.Fuse => "Fuses",
        BringKind.Plug => "Plugs",
        BringKind.Device => "Switches and breakers",
        BringKind.Gear => "Gear and parts",
        BringKind.Label => "Labels",
        BringKind.Fastening => "Fastenings",
        BringKind.Consumable => "Consumables",
        _ => "Tools",
    };

    /// <summary>What a stretch of steps is called.</summary>
    public static string Of(StepKind kind) => kind switch
    {
        StepKind.Weigh => "Weigh ashore",
        StepKind.Isolate => "Make it dead",
        StepKind.ProveDead => "Prove it dead",
        StepKind.Remove => "Take out",
        StepKind.Fit => "Fit",
        StepKind.Run => "Run cable",
        StepKind.MakeOff => "Make off ends",
        StepKind.TestFree => "Test while the ends are free",
        StepKind.Connect => "Connect",
        StepKind.Label => "Label",
        StepKind.Test => "Test before switching on",
        StepKind.Energise => "Switch on again, in this order",
        StepKind.Commission => "Measure",
        StepKind.HandOver => "Hand over",
        _ => "Confirm",
    };

    /// <summary>How an end is made off: "Ring M8".</summary>
    public static string Of(TerminationMeans? means, double? studMm) =>
        studMm is { } stud ? $"{BringList.Word(means)} M{BringList.Stud(stud)}" : means is TerminationMeans.Ring or TerminationMeans.Fork ? $"{BringList.Word(means)}, thread of the stud: look" : BringList.Word(means);

    private string Voltage(double voltageV) => Math.Abs(voltageV) < MillivoltRangeV
        ? $"{Math.Round(voltageV * 1000, Math.Abs(voltageV) < 0.01 ? 1 : 0).ToString(options.Culture)} mV"
        : $"{Math.Round(voltageV, 2).ToString("0.00", options.Culture)} V";
}
