using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Review.Practices;

namespace Orlop.Work.Readings;

/// <summary>Holds readings against what the boat should give in the condition each was taken in.</summary>
public static class ReadingComparison
{
    /// <summary>Each reading beside its prediction, in the order given. A current counts as positive along the way it is expected to flow.</summary>
    public static ImmutableArray<ComparedReading> Compare(BoatModel boat, IEnumerable<Reading> readings, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(readings);
        Wiring wiring = Wiring.Of(boat);
        Practice? practice = Practice.Of(boat.All<PracticeChoice>().FirstOrDefault());
        Dictionary<string, ConditionPrediction> predictions = new(StringComparer.Ordinal);
        ImmutableArray<ComparedReading>.Builder compared = ImmutableArray.CreateBuilder<ComparedReading>();
        foreach (Reading reading in readings)
        {
            if (boat.Find<Condition>(reading.Condition) is not { } condition)
            {
                compared.Add(new ComparedReading(reading, ReadingStanding.CannotCompare, null, $"the boat has no condition '{reading.Condition}'"));
                continue;
            }

            if (!predictions.TryGetValue(condition.Id, out ConditionPrediction? prediction))
            {
                predictions[condition.Id] = prediction = ConditionPrediction.Of(boat, wiring, practice, condition, token);
            }

            compared.Add(Compare(reading, prediction));
        }

        return compared.ToImmutable();
    }

    private static ComparedReading Compare(Reading reading, ConditionPrediction prediction)
    {
        (Quantity? Read, Prediction? Expected) pair = reading switch
        {
            { Plus: { } plus, Minus: { } minus, VoltageV: { } voltage } => (voltage, prediction.Voltage(plus.ToString(), minus.ToString())),
            { Through: { } through, CurrentA: { } current } => (current, prediction.Current(through)),
            _ => (null, null),
        };
        if (pair is not ({ } read, { } expected) || !double.IsFinite(read.Value))
        {
            return new ComparedReading(reading, ReadingStanding.CannotCompare, null, "it needs a voltage with both probes, or a current with what it flows through");
        }

        if (expected.Band is not { } band)
        {
            return new ComparedReading(reading, ReadingStanding.CannotCompare, null, expected.WhyNot);
        }

        Band told = band.Suffix == "A" ? band.Forward() : band;
        return new ComparedReading(reading, Standing(told, read.Value), told, null);
    }

    private static ReadingStanding Standing(Band band, double value)
    {
        bool isCurrent = band.Suffix == "A";
        // Which way a current flows that may flow either way cannot be told.
        return band.Contains(value) || (isCurrent && !band.HasSign && band.Contains(-value)) ? ReadingStanding.Within
            : band.IsTurned(value, isCurrent ? MeterAccuracy.CurrentA(value) : MeterAccuracy.VoltageV(value)) ? ReadingStanding.Turned
            : value < band.Least.Value ? ReadingStanding.Below : ReadingStanding.Above;
    }
}
