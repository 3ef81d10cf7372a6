using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Orlop.Review;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>An inclining test that is being typed in, with the freeboards of the day.</summary>
public sealed class InclinationDraft : BerthTestDraft
{
    private const int LeastShiftCount = 4;
    private const int LeastMarkCount = 4;
    private readonly StabilityView _view;

    /// <summary>Begins with eight shifts, to both sides and back.</summary>
    public InclinationDraft(StabilityView asBuilt, Condition condition, DateOnly today, DisplayUnits units, CultureInfo culture)
        : base(asBuilt, condition, "inclining-test", $"Inclining test of {today.ToString("d MMMM yyyy", culture)}", today, units, culture)
    {
        _view = asBuilt;
        Marks = MarkDraft.ToBeginWith(asBuilt.Boat, units, culture);
        Others.Add(new AboardDraft { Name = "Shifted weights" });
    }

    /// <summary>Heels are read as angles; otherwise by a pendulum.</summary>
    public bool IsByAngle { get; set; }

    /// <summary>Length of the pendulum, as typed.</summary>
    public string Pendulum { get; set; } = "";

    /// <summary>Why the pendulum's length cannot be used.</summary>
    public string? PendulumRefusal { get; private set; }

    /// <summary>The shifts.</summary>
    public List<ShiftDraft> Shifts { get; } = [.. Enumerable.Range(1, 8).Select(number => new ShiftDraft { Name = $"Shift {number}" })];

    /// <summary>Freeboards of the day.</summary>
    public List<MarkDraft> Marks { get; }

    public override IEnumerable<RefusedField> Refused =>
    [
        .. base.Refused,
        .. RefusedField.If("test-pendulum", "Length of the pendulum", PendulumRefusal),
        .. Shifts.SelectMany((shift, index) => RefusedField.If($"shift-{index}", shift.Name.Length > 0 ? shift.Name : $"Shift {index + 1}", shift.Refusal)),
        .. RefusedMarks(Marks),
    ];

    /// <summary>Why it cannot be kept as a whole.</summary>
    public string? Refusal { get; private set; }

    /// <summary>The freeboards of the day as a survey of their own, with the same things aboard; null where none are read.</summary>
    public FreeboardSurvey? Survey { get; private set; }

    /// <summary>The boat with what is typed, so that the displacement of the day counts.</summary>
    public StabilityView View => Survey is null ? _view : new StabilityView(_view.Boat.WithThings([.. _view.Boat.Things, Survey]), _view.Practice, new Memo());

    /// <summary>The test of the shifts that are read so far; null with the refusals set where something cannot be used, or too few are read.</summary>
    public InclinationTest? Make()
    {
        (Refusal, PendulumRefusal, Survey) = (null, null, null);
        bool isHeadGood = ReadHead(out Quantity? water);
        double? pendulum = ReadPendulum();
        InclinedReading[] read = [.. Shifts.Select(shift => shift.Read(IsByAngle, pendulum, Units, Culture)).OfType<InclinedReading>()];
        FreeboardMark[] marks = [.. Marks.Select(mark => mark.Read(Units, Culture)).OfType<FreeboardMark>()];
        if (!isHeadGood || PendulumRefusal is not null || Shifts.Exists(shift => shift.Refusal is not null) || Marks.Exists(mark => mark.Refusal is not null))
        {
            return null;
        }

        Refusal = read.Count(shift => !shift.IsLeftOut) is var counted && counted < LeastShiftCount ? $"{counted} of at least {LeastShiftCount} shifts are read; eight, to both sides, tell far more."
            : marks.Length is > 0 and < LeastMarkCount ? $"{marks.Length} of at least {LeastMarkCount} freeboards are read: at both ends and on both sides, or none."
            : null;
        if (Refusal is not null)
        {
            return null;
        }

        string name = Name.Trim(), surveyName = $"Freeboards at {char.ToLower(name[0], Culture)}{name[1..]}";
        Survey = marks.Length == 0 ? null : new FreeboardSurvey { Id = NewId(surveyName), Name = surveyName, On = On, WaterDensityKgPerM3 = water, Aboard = Aboard, IsBare = IsBare, Marks = [.. marks] };
        return new InclinationTest { Id = NewId(), Name = name, On = On, WaterDensityKgPerM3 = water, Aboard = Aboard, IsBare = IsBare, Readings = [.. read] };
    }

    private double? ReadPendulum()
    {
        if (IsByAngle || !Shifts.Exists(shift => !string.IsNullOrWhiteSpace(shift.Heel)))
        {
            return null;
        }

        FieldReading read = FieldText.Read(Schema.Field("readings")!.Record!.Field("pendulumM")!, Pendulum, Units, Culture);
        PendulumRefusal = read.IsGood && read.Value is double ? null : read.Refusal ?? "Give its length, from the point it hangs from to the batten.";
        return PendulumRefusal is null ? (double)read.Value! : null;
    }
}
