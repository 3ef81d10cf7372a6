using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Review.Practices;

namespace Orlop.Review.Readings;

/// <summary>Holds readings against what the boat should give in the condition each was taken in.</summary>
public static class ReadingComparison
{
    /// <summary>Each reading beside its prediction, in the order given. A current counts as positive along the way it is expected to flow.</summary>
    public static ImmutableArray<ComparedReading> Compare(BoatModel boat, IEnumerable<Reading> readings, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(readings);
        Memo memo = new();
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
                predictions[condition.Id] = prediction = ConditionPrediction.Of(boat, wiring, practice, condition, memo, token);
            }

            compared.Add(Compare(reading, prediction));
        }

        return compared.ToImmutable();
    }

    /// <summary>One reading beside what its condition predicts.</summary>
    public static ComparedReading Compare(Reading reading, ConditionPrediction prediction)
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
            return new ComparedReading(reading, ReadingStanding.CannotCompare, null, expected.WhyNot, Missing: expected.Missing);
        }

        Band told = band.Suffix == "A" ? band.Forward() : band;
        ReadingStanding standing = Standing(told, read.Value);
        return standing == ReadingStanding.Turned
            ? new ComparedReading(reading, standing, told, $"the sign is against the prediction: {WhyTurned(reading, prediction)}")
            : new ComparedReading(reading, standing, told, null, standing == ReadingStanding.Within ? null : told.Meant(read.Value));
    }

    // Between plus and minus no current turns the sign.
    private static string WhyTurned(Reading reading, ConditionPrediction prediction) => reading switch
    {
        { Plus: { } plus, Minus: { } minus } when !prediction.Between(plus.ToString(), minus.ToString()).IsEmpty => "leads swapped, or current flows the other way",
        { Plus: not null, Minus: not null } => "leads swapped; if they are not, plus and minus are crossed: switch off and look",
        _ => "clamp the other way round, or current flows the other way",
    };

    private static ReadingStanding Standing(Band band, double value)
    {
        bool isCurrent = band.Suffix == "A";
        // Which way a current flows that may flow either way cannot be told.
        return band.Contains(value) || (isCurrent && !band.HasSign && band.Contains(-value)) ? ReadingStanding.Within
            : band.IsTurned(value, MeterAccuracy.Unsigned(value, band.Suffix)) ? ReadingStanding.Turned
            : value < band.Least.Value ? ReadingStanding.Below : ReadingStanding.Above;
    }
}
