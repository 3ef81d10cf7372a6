using System.Globalization;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Orlop.Review.Stability;

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
}

/// <summary>A freeboard survey that is being typed in.</summary>
public sealed class FreeboardDraft : BerthTestDraft
{
    private const int LeastMarkCount = 4;

    /// <summary>Begins with marks at the deck edge.</summary>
    public FreeboardDraft(StabilityView asBuilt, Condition condition, DateOnly today, DisplayUnits units, CultureInfo culture)
        : base(asBuilt, condition, "freeboard-survey", $"Freeboards of {today.ToString("d MMMM yyyy", culture)}", today, units, culture)
    {
        string Text(double? value) => value is { } number ? QuantityText.Format(Math.Round(number, 3), "M", units, culture) : "";
        Marks = [.. BerthTestGuide.Marks(asBuilt.Boat).Select(mark => new MarkDraft { Name = mark.Name, Forward = Text(mark.Mark?.XM), ToPort = Text(mark.Mark?.YM), Up = Text(mark.Mark?.ZM) })];
    }

    /// <summary>The marks.</summary>
    public List<MarkDraft> Marks { get; }

    /// <summary>Why it cannot be kept as a whole.</summary>
    public string? Refusal { get; private set; }

    /// <summary>The survey of the marks that are read so far; null with the refusals set where something cannot be used, or fewer than four are read.</summary>
    public FreeboardSurvey? Make()
    {
        Refusal = null;
        bool isHeadGood = ReadHead(out Quantity? water);
        FreeboardMark?[] marks = [.. Marks.Select(Read)];
        FreeboardMark[] read = [.. marks.OfType<FreeboardMark>()];
        if (Marks.Any(mark => mark.Refusal is not null) || !isHeadGood)
        {
            return null;
        }

        if (read.Length < LeastMarkCount)
        {
            Refusal = $"{read.Length} of at least {LeastMarkCount} marks are read: at both ends and on both sides.";
            return null;
        }

        return new FreeboardSurvey { Id = NewId(), Name = Name.Trim(), On = On, WaterDensityKgPerM3 = water, Aboard = Aboard, Marks = [.. read] };
    }

    // A mark without a freeboard is not read yet.
    private FreeboardMark? Read(MarkDraft mark)
    {
        mark.Refusal = null;
        if (string.IsNullOrWhiteSpace(mark.Freeboard))
        {
            return null;
        }

        RecordSchema schema = Schema.Field("marks")!.Record!, place = schema.Field("mark")!.Record!;
        (string Name, FieldSchema Field, string Text)[] cells =
        [
            ("Forward", place.Field("xM")!, mark.Forward), ("To port", place.Field("yM")!, mark.ToPort), ("Up", place.Field("zM")!, mark.Up), ("Height over the water", schema.Field("freeboardM")!, mark.Freeboard),
        ];
        FieldReading[] reads = [.. cells.Select(cell => FieldText.Read(cell.Field, cell.Text, Units, Culture))];
        string[] wrong = [.. cells.Zip(reads, (cell, read) => read.IsGood && read.Value is double ? null : $"{cell.Name}: {read.Refusal ?? "it is not given."}").OfType<string>()];
        mark.Refusal = wrong.Length > 0 ? string.Join(" ", wrong) : string.IsNullOrWhiteSpace(mark.Name) ? "Give the mark a name." : null;
        return mark.Refusal is null ? new FreeboardMark(mark.Name.Trim(), new Place((double)reads[0].Value!, (double)reads[1].Value!, (double)reads[2].Value!), (double)reads[3].Value!) : null;
    }
}
