using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;

namespace Orlop.Presentation.Views.Floating;

/// <summary>One mark as typed.</summary>
public sealed class MarkDraft
{
    public string Name { get; set; } = "";

    public string Forward { get; set; } = "";

    public string ToPort { get; set; } = "";

    public string Up { get; set; } = "";

    public string Freeboard { get; set; } = "";

    /// <summary>Why it cannot be used; null where it can, or where nothing is read yet.</summary>
    public string? Refusal { get; internal set; }

    /// <summary>Which of two meanings a text was taken in; null where each has one.</summary>
    public string? Remark { get; private set; }

    /// <summary>Marks to begin with: those of the latest survey, so that readings can be held against each other; at the deck edge where there is none.</summary>
    internal static List<MarkDraft> ToBeginWith(BoatModel boat, DisplayUnits units, CultureInfo culture)
    {
        string Text(double? value) => value is { } number ? QuantityText.Format(Math.Round(number, 3), "M", units, culture) : "";
        return [.. Places(boat).Select(mark => new MarkDraft { Name = mark.Name, Forward = Text(mark.Mark?.XM), ToPort = Text(mark.Mark?.YM), Up = Text(mark.Mark?.ZM) })];
    }

    private static IEnumerable<(string Name, Place? Mark)> Places(BoatModel boat) => MarkFreeboard.SurveyOf(boat) is { } survey
        ? survey.Marks.Select(mark => (mark.Name, (Place?)mark.Mark))
        : BerthTestGuide.Marks(boat);

    /// <summary>The mark as read; null where nothing is read yet, or where something cannot be used.</summary>
    internal FreeboardMark? Read(DisplayUnits units, CultureInfo culture)
    {
        (Refusal, Remark) = (null, null);
        if (string.IsNullOrWhiteSpace(Freeboard))
        {
            return null;
        }

        RecordSchema schema = ThingSchema.Of("freeboard-survey").Field("marks")!.Record!, place = schema.Field("mark")!.Record!;
        (string Name, FieldSchema Field, string Text)[] cells =
        [
            ("Forward", place.Field("xM")!, Forward), ("To port", place.Field("yM")!, ToPort), ("Up", place.Field("zM")!, Up), ("Height over the water", schema.Field("freeboardM")!, Freeboard),
        ];
        (double[] numbers, Refusal, Remark) = TypedNumbers.Read(cells, units, culture);
        Refusal ??= string.IsNullOrWhiteSpace(Name) ? "Give the mark a name." : null;
        return Refusal is null ? new FreeboardMark(Name.Trim(), new Place(numbers[0], numbers[1], numbers[2]), numbers[3]) : null;
    }
}
