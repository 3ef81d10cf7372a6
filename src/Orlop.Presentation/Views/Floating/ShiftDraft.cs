using System.Globalization;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;

namespace Orlop.Presentation.Views.Floating;

/// <summary>One shift of an inclining test as typed.</summary>
public sealed class ShiftDraft
{
    public string Name { get; set; } = "";

    /// <summary>Mass off its place.</summary>
    public string Mass { get; set; } = "";

    /// <summary>How far across, to starboard above 0.</summary>
    public string Moved { get; set; } = "";

    /// <summary>The pendulum's deflection, or the angle, to starboard above 0.</summary>
    public string Heel { get; set; } = "";

    /// <summary>Kept, and not counted.</summary>
    public bool IsLeftOut { get; set; }

    /// <summary>Why it cannot be used; null where it can, or where nothing is read yet.</summary>
    public string? Refusal { get; private set; }

    /// <summary>Which of two meanings a text was taken in; null where each has one.</summary>
    public string? Remark { get; private set; }

    // A shift without a heel is not read yet.
    internal InclinedReading? Read(bool isByAngle, double? pendulumM, DisplayUnits units, CultureInfo culture)
    {
        (Refusal, Remark) = (null, null);
        if (string.IsNullOrWhiteSpace(Heel))
        {
            return null;
        }

        RecordSchema schema = ThingSchema.Of("inclining-test").Field("readings")!.Record!;
        (double[] numbers, Refusal, Remark) = TypedNumbers.Read(
            [
                ("Mass", schema.Field("massKg")!, Mass), ("Moved", schema.Field("movedM")!, Moved),
                (isByAngle ? "Heel" : "Deflection", schema.Field(isByAngle ? "heelDeg" : "deflectionM")!, Heel),
            ], units, culture);
        Refusal ??= string.IsNullOrWhiteSpace(Name) ? "Give the shift a name." : null;
        return Refusal is not null ? null
            : isByAngle ? new InclinedReading(Name.Trim(), numbers[0], numbers[1], HeelDeg: numbers[2], IsLeftOut: IsLeftOut)
            : new InclinedReading(Name.Trim(), numbers[0], numbers[1], numbers[2], pendulumM, IsLeftOut: IsLeftOut);
    }
}
