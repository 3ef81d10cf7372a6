using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;

namespace Orlop.Review.Readings.Checks;

/// <summary>What a meter showed is what the circuit should give.</summary>
public sealed class ReadingAgreesCheck : ICheck<ReadingsView>
{
    public const string Id = "reading-agrees";

    // A way whose pieces carry currents that differ by more than this has a branch: what is lost on it is of no one current.
    private const double SameCurrentFraction = 0.01;

    public CheckDescription Description { get; } = new(
        Id,
        "Reading agrees with the circuit",
        "The newest reading on record of each place in each condition against what the circuit should give there, in the boat as she was on its day, with all of the alteration that it was taken for. The accepted range reaches as far as what is not known of the boat and the meter's own error. It fails outside that range; a later reading of the same place takes its place.",
        []);

    public IEnumerable<Finding> Run(ReadingsView view) => view.Newest.Select(reading => Judge(view, reading));

    private Finding Judge(ReadingsView view, Reading reading)
    {
        if (view.PredictionFor(reading) is not { } prediction)
        {
            return FindingLines.Unknown(Description, reading.Id, reading.Condition, Sentence.Of($"{reading.Title}: the condition it was taken in is not in the boat"), [new FindingInput(reading.Id, "condition", IsMissing: true)]);
        }

        ComparedReading compared = ReadingComparison.Compare(reading, prediction);
        ImmutableArray<WiringEdge> way = reading is { Plus: { } plus, Minus: { } minus } ? prediction.Between(plus.ToString(), minus.ToString()) : [];
        Finding finding = compared.Expected is { } band && Read(reading) is { } read ? Held(prediction, compared, band, read, way) : FindingLines.Unknown(
            Description, reading.Id, reading.Condition, Sentence.Of($"{reading.Title}, {FindingLines.In(prediction.Condition)}: it cannot be held against the circuit: {compared.WhyNot}"),
            compared.Missing is { } missing ? [missing] : []);
        return finding with { OtherSubjectId = ThingOf(view, reading, way) };
    }

    private Finding Held(ConditionPrediction prediction, ComparedReading compared, Band band, Quantity read, ImmutableArray<WiringEdge> way)
    {
        Reading reading = compared.Reading;
        Amount value = band.Nominal with { Value = read.Value };
        double? heatW = compared.Standing == ReadingStanding.Above ? HeatW(prediction, way, read.Value - band.Nominal.Value) : null;
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = reading.Id,
            ConditionId = reading.Condition,
            Verdict = compared.Standing == ReadingStanding.Within ? Verdict.Holds : Verdict.Fails,
            UseFraction = compared.Standing == ReadingStanding.Above && band.Most.Value > 0 ? read.Value / band.Most.Value : null,
            Headline = compared.Standing == ReadingStanding.Within
                ? Sentence.Of($"{reading.Title}, {FindingLines.In(prediction.Condition)}: {value} read, {band.Nominal} expected")
                : Sentence.Of($"{reading.Title}, {FindingLines.In(prediction.Condition)}: {value} read, {band.Nominal} expected, {band.Least} to {band.Most} accepted{Why(compared, heatW)}"),
            Working =
            [
                new WorkingLine("Expected", "every value as put down", band.Nominal, "circuit solved, normal charge"),
                new WorkingLine("Accepted from", "what is not known of the boat, and the meter", band.Least, "common practice, no source"),
                new WorkingLine("Accepted up to", "the same", band.Most, "common practice, no source"),
                new WorkingLine("Read", reading.On is { } on ? on.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : "no day given", value, "as typed"),
                new WorkingLine("More than expected", Formula.Of("{0} − {1}", v => v[0] - v[1], read.Value, band.Nominal.Value), value with { Value = More(read.Value, band.Nominal.Value) }, ""),
                .. heatW is { } heat ? new[] { new WorkingLine("Turns to heat there", "the voltage that is lost too much × the current", new Amount(heat, "W"), "") } : [],
                .. compared.Standing == ReadingStanding.Above && band.Most.Value > 0 ? new[] { FindingLines.Use(read.Value, band.Most.Value) } : [],
            ],
            Inputs = [new FindingInput(reading.Id, reading.Through is null ? "voltageV" : "currentA"), new FindingInput(reading.Condition, "chargeFraction")],
            Caution = compared.Standing == ReadingStanding.Within || way.IsEmpty ? null : heatW >= HotJoint.FromW ? $"Live and hot. {HotJoint.LetCool}" : HotJoint.MayBeHot,
        };
    }

    // What is left of two equal numbers by rounding is nothing.
    private static double More(double read, double expected) => Math.Abs(read - expected) <= RoundingFraction * Math.Abs(expected) ? 0 : read - expected;

    private const double RoundingFraction = 1e-9;

    private static Quantity? Read(Reading reading) => reading.VoltageV ?? reading.CurrentA;

    private static Sentence Why(ComparedReading compared, double? heatW) =>
        compared.WhyLeftOut is { } why ? Sentence.Of($"; {why}")
        : heatW is { } heat ? Sentence.Of($"; about {new Amount(heat, "W")} turns to heat there")
        : Sentence.Of($"");

    // What is lost too much, times the one current that flows on the whole way; null where no such current is known.
    private static double? HeatW(ConditionPrediction prediction, ImmutableArray<WiringEdge> way, double tooMuchV)
    {
        double[] currents = [.. way.Select(edge => prediction.Nominal.BranchA(edge.Id)).OfType<double>().Select(Math.Abs)];
        return currents.Length == way.Length && currents.Length > 0 && currents.Max() - currents.Min() <= SameCurrentFraction * currents.Max() ? tooMuchV * currents.Max() : null;
    }

    // The thing whose circuit it tells of: the first cable on the way, else the first thing on it, else what was probed.
    private static string? ThingOf(ReadingsView view, Reading reading, ImmutableArray<WiringEdge> way) =>
        way.Select(edge => edge.Owner).Where(owner => view.Boat.Find(owner.Id) is not null).OrderBy(owner => owner is Cable ? 0 : 1).FirstOrDefault()?.Id
        ?? ReadingsView.PlacesOf(reading).Select(ElementIds.ThingOf).FirstOrDefault();
}
