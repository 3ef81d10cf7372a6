using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Readings;

namespace Orlop.Work.Readings;

/// <summary>
/// Readings round a loop that do not add up: what two voltages differ by is lost on the way out and back between them (Kirchhoff's voltage law), within the
/// meters' errors, combined as the root of the sum of their squares. A stretch that nobody read loses what is least expected of it, and may lose more.
/// </summary>
/// <param name="Text">What a boat owner reads, with the loop.</param>
/// <param name="ReadingId">The reading of the loop farthest from what is expected of it, in meter errors.</param>
/// <param name="BeyondV">How much more the misfit is than the meters' errors allow, V.</param>
internal sealed record LoopMisfit(Sentence Text, string ReadingId, double BeyondV)
{
    /// <summary>The worst misfit of the voltages of one condition; null where every loop that is read adds up.</summary>
    public static LoopMisfit? Worst(ConditionPrediction prediction, IEnumerable<Reading> readings)
    {
        Voltage[] all = [.. readings.Select(reading => Voltage.Of(prediction, reading)).OfType<Voltage>()];
        Voltage[] across = [.. all.Where(voltage => !voltage.IsDrop)], drops = [.. all.Where(voltage => voltage.IsDrop)];
        return across.SelectMany(here => across.Where(there => there != here).Select(there => Between(prediction, here, there, drops)))
            .OfType<LoopMisfit>().MaxBy(misfit => misfit.BeyondV);
    }

    private static LoopMisfit? Between(ConditionPrediction prediction, Voltage here, Voltage there, Voltage[] drops)
    {
        // From where more is expected to where less is: power flows that way.
        if (here.NominalV <= there.NominalV || LoopSide.Of(prediction, here.Plus, there.Plus, drops) is not { } plus || LoopSide.Of(prediction, there.Minus, here.Minus, drops) is not { } minus)
        {
            return null;
        }

        Voltage[] read = [.. plus.Read.Concat(minus.Read).Select(part => part.Voltage)];
        if (read.Length == 0)
        {
            return null;
        }

        double apartV = here.ReadV - there.ReadV, lostV = plus.LostV + minus.LostV, unreadV = plus.UnreadLeastV + minus.UnreadLeastV;
        double errorV = Math.Sqrt(read.Append(here).Append(there).Sum(voltage => voltage.ErrorV * voltage.ErrorV));
        double tooMuchV = lostV + unreadV - apartV, beyondV = (plus.IsWhole && minus.IsWhole ? Math.Abs(tooMuchV) : tooMuchV) - errorV;
        if (beyondV <= 0)
        {
            return null;
        }

        string least = unreadV > 0 && tooMuchV > 0 ? ", with what is lost at least where nobody read" : "";
        string named = string.Join("; ", read.Select(voltage => voltage.Reading.Title));
        return new LoopMisfit(
            Sentence.Of($"These readings do not fit together; measure again, one after the other under one load. “{here.Reading.Title}” and “{there.Reading.Title}” are {new Amount(apartV, "V")} apart, and on the way between them {new Amount(lostV + unreadV, "V")} was read as lost{least} ({named}); the meters explain {new Amount(errorV, "V")} of that."),
            read.Append(here).Append(there).MaxBy(voltage => Math.Abs(voltage.ReadV - voltage.NominalV) / voltage.ErrorV)!.Reading.Id,
            beyondV);
    }

    /// <summary>A voltage that was read.</summary>
    /// <param name="IsDrop">It lies along conductors, not across the poles.</param>
    internal sealed record Voltage(Reading Reading, string Plus, string Minus, double ReadV, double NominalV, double ErrorV, bool IsDrop)
    {
        public static Voltage? Of(ConditionPrediction prediction, Reading reading) =>
            reading is { Plus: { } plus, Minus: { } minus, VoltageV: { } read } && prediction.Voltage(plus.ToString(), minus.ToString()).Band is { } band
                ? new Voltage(reading, plus.ToString(), minus.ToString(), read.Value, band.Nominal.Value, Error(read), !prediction.Between(plus.ToString(), minus.ToString()).IsEmpty)
                : null;

        // A ± that was typed is one standard deviation.
        private static double Error(Quantity read) => read.PlusMinus is { } deviation ? Math.Max(2 * deviation, MeterAccuracy.DigitV(read.Value)) : MeterAccuracy.VoltageV(read.Value);
    }
}
