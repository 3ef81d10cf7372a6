using System.Globalization;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>Something that was aboard at a test and is not in the ledger, as typed: a person, the weights that are shifted.</summary>
public sealed class AboardDraft
{
    public string Name { get; set; } = "";

    public string Mass { get; set; } = "";

    public string Forward { get; set; } = "";

    public string ToPort { get; set; } = "";

    public string Up { get; set; } = "";

    /// <summary>Why it cannot be used; null where it can, or where neither mass nor place is typed yet.</summary>
    public string? Refusal { get; private set; }

    /// <summary>Which of two meanings a text was taken in; null where each has one.</summary>
    public string? Remark { get; private set; }

    // Taken as weighed.
    internal AboardItem? Read(RecordSchema schema, Func<string, bool> isTaken, DisplayUnits units, CultureInfo culture)
    {
        (Refusal, Remark) = (null, null);
        if (new[] { Mass, Forward, ToPort, Up }.All(string.IsNullOrWhiteSpace))
        {
            return null;
        }

        RecordSchema place = schema.Field("place")!.Record!;
        (double[] numbers, Refusal, Remark) = TypedNumbers.Read(
            [("Mass", schema.Field("massKg")!, Mass), ("Forward", place.Field("xM")!, Forward), ("To port", place.Field("yM")!, ToPort), ("Up", place.Field("zM")!, Up)], units, culture);
        Refusal ??= string.IsNullOrWhiteSpace(Name) ? "Say what it is." : null;
        return Refusal is not null ? null : new AboardItem(
            ReadableId.Of(Name, isTaken), numbers[0], new Place(numbers[1], numbers[2], numbers[3]),
            WeightKnowledge.DeviationKg(new Quantity(numbers[0], Knowledge.Measured)), WeightKnowledge.PlaceDeviationM, IsCarried: true);
    }
}
