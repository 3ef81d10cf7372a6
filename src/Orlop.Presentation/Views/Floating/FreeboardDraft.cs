using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>A freeboard survey that is being typed in.</summary>
public sealed class FreeboardDraft : BerthTestDraft
{
    private const int LeastMarkCount = 4;

    /// <summary>Begins with the marks of the latest survey, or at the deck edge.</summary>
    public FreeboardDraft(StabilityView asBuilt, Condition condition, DateOnly today, DisplayUnits units, CultureInfo culture)
        : base(asBuilt, condition, "freeboard-survey", $"Freeboards of {today.ToString("d MMMM yyyy", culture)}", today, units, culture)
    {
        Marks = MarkDraft.ToBeginWith(asBuilt.Boat, units, culture);
    }

    /// <summary>The marks.</summary>
    public List<MarkDraft> Marks { get; }

    public override IEnumerable<RefusedField> Refused => base.Refused.Concat(RefusedMarks(Marks));

    /// <summary>Why it cannot be kept as a whole.</summary>
    public string? Refusal { get; private set; }

    /// <summary>The survey of the marks that are read so far; null with the refusals set where something cannot be used, or fewer than four are read.</summary>
    public FreeboardSurvey? Make()
    {
        Refusal = null;
        bool isHeadGood = ReadHead(out Quantity? water);
        FreeboardMark?[] marks = [.. Marks.Select(mark => mark.Read(Units, Culture))];
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

        return new FreeboardSurvey { Id = NewId(), Name = Name.Trim(), On = On, WaterDensityKgPerM3 = water, Aboard = Aboard, IsBare = IsBare, Marks = [.. read] };
    }
}
