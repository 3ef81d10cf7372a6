using System.Collections.Immutable;
using System.Diagnostics;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Electrics.Diagnosis;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using Orlop.Review.Readings;

namespace Orlop.Work.Readings;

/// <summary>The readings of one condition that can be held against one circuit, each with how far it is believed.</summary>
internal sealed class Evidence
{
    // The accepted band reaches two standard deviations either way.
    private const double HalfBandDeviationsRatio = 2;

    // No reading is believed better than this share of the error of a good hand-held meter.
    private const double LeastErrorFraction = 0.1;

    public Evidence(ConditionPrediction prediction, ImmutableArray<Reading> readings)
    {
        ImmutableArray<VoltageReading>.Builder voltages = ImmutableArray.CreateBuilder<VoltageReading>();
        ImmutableArray<CurrentReading>.Builder currents = ImmutableArray.CreateBuilder<CurrentReading>();
        ImmutableArray<Reading>.Builder read = ImmutableArray.CreateBuilder<Reading>(), clamped = ImmutableArray.CreateBuilder<Reading>();
        ImmutableArray<LeftOut>.Builder left = ImmutableArray.CreateBuilder<LeftOut>();
        foreach (Reading reading in readings)
        {
            string? why = ReadingComparison.Compare(reading, prediction).WhyLeftOut ?? reading switch
            {
                { Plus: { } plus, Minus: { } minus, VoltageV: { } voltage } => Add(prediction.Voltage(plus.ToString(), minus.ToString()).Band!, GroupAt(prediction, plus.ToString()), voltage, MeterAccuracy.VoltageV, deviation =>
                {
                    voltages.Add(new VoltageReading(plus.ToString(), minus.ToString(), voltage.Value, deviation));
                    read.Add(reading);
                }),
                { Through: { } through, CurrentA: { } current } => Add(prediction.Current(through).Band!, prediction.Nominal.GroupOf(through), current, MeterAccuracy.CurrentA, deviation =>
                {
                    currents.Add(new CurrentReading(through, AsCounted(prediction, through, current.Value), deviation));
                    clamped.Add(reading);
                }),
                _ => throw new UnreachableException(),
            };
            if (why is not null)
            {
                left.Add(new LeftOut(reading.Id, why));
            }
        }

        Voltages = voltages.ToImmutable();
        Currents = currents.ToImmutable();
        Used = [.. read, .. clamped];
        LeftOut = left.ToImmutable();
    }

    /// <summary>The circuit of the first reading that can be used; null when none can.</summary>
    public SolvedGroup? Group { get; private set; }

    public ImmutableArray<VoltageReading> Voltages { get; }

    public ImmutableArray<CurrentReading> Currents { get; }

    /// <summary>The readings that are used: voltages, then currents.</summary>
    public ImmutableArray<Reading> Used { get; }

    public ImmutableArray<LeftOut> LeftOut { get; }

    /// <summary>The nodes that were probed.</summary>
    public IEnumerable<string> Nodes => Voltages.SelectMany(voltage => new[] { voltage.PlusNode, voltage.MinusNode }).Distinct(StringComparer.Ordinal);

    /// <summary>What a reading of <see cref="Used"/> was, and what the best fit predicts there.</summary>
    public (Amount Read, Amount Fitted) ReadAndFitted(int index, double residualRatio)
    {
        if (index < Voltages.Length)
        {
            VoltageReading voltage = Voltages[index];
            return (new Amount(voltage.VoltageV, "V"), new Amount(voltage.VoltageV + (residualRatio * voltage.StandardUncertaintyV), "V"));
        }

        CurrentReading current = Currents[index - Voltages.Length];
        return (new Amount(current.CurrentA, "A"), new Amount(current.CurrentA + (residualRatio * current.StandardUncertaintyA), "A"));
    }

    /// <summary>The error that was assumed of the readings typed without one.</summary>
    public IEnumerable<string> Assumed()
    {
        foreach (Reading reading in Used.Where(reading => (reading.VoltageV ?? reading.CurrentA)?.PlusMinus is null))
        {
            yield return reading is { Plus: not null, Minus: not null, VoltageV.Value: var voltage }
                ? FormattableString.Invariant($"{reading.Title} was typed without a ±: ±{MeterAccuracy.VoltageV(voltage):0.####} V is assumed ({MeterAccuracy.VoltageFraction:0.#%} and one digit of a good hand-held meter).")
                : FormattableString.Invariant($"{reading.Title} was typed without a ±: ±{MeterAccuracy.CurrentA(reading.CurrentA!.Value):0.##} A is assumed ({MeterAccuracy.ClampFraction:0.#%} and {MeterAccuracy.ClampA} A of a good DC clamp).");
        }
    }

    private string? Add(Band band, SolvedGroup? group, Quantity read, Func<double, double> meter, Action<double> add)
    {
        Group ??= group;
        if (group is null || group != Group)
        {
            return "it is of another circuit than the first reading";
        }

        // What is not known of the boat, and the error of the reading: the one typed with it, else the meter's.
        double meterError = meter(band.Nominal.Value), boat = ((band.Most.Value - band.Least.Value) / 2) - meterError;
        double own = read.PlusMinus is { } typed ? Math.Max(HalfBandDeviationsRatio * typed, LeastErrorFraction * meterError) : meterError;
        add((boat + own) / HalfBandDeviationsRatio);
        return null;
    }

    // A current is read along the way it is expected to flow; the network counts it from an element's first end.
    private static double AsCounted(ConditionPrediction prediction, string through, double currentA) =>
        prediction.Current(through).Band is { Nominal.Value: < 0 } ? -currentA : currentA;

    private static SolvedGroup? GroupAt(ConditionPrediction prediction, string node) =>
        prediction.Nominal.Groups.FirstOrDefault(group => group.Result.Point?.NodeV.ContainsKey(node) == true);
}
