using System.Globalization;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>One run of timed rolls as typed.</summary>
public sealed class RunDraft
{
    public string Rolls { get; set; } = "10";

    public string Time { get; set; } = "";

    /// <summary>Why it cannot be used; null where it can, or where nothing is timed yet.</summary>
    public string? Refusal { get; internal set; }
}

/// <summary>A rolling test that is being typed in.</summary>
public sealed class RollingDraft : BerthTestDraft
{
    /// <summary>Begins with three runs of ten rolls.</summary>
    public RollingDraft(StabilityView asBuilt, Condition condition, DateOnly today, DisplayUnits units, CultureInfo culture)
        : base(asBuilt, condition, "rolling-test", $"Rolling test of {today.ToString("d MMMM yyyy", culture)}", today, units, culture)
    {
    }

    /// <summary>The runs.</summary>
    public List<RunDraft> Runs { get; } = [new(), new(), new()];

    /// <summary>Coefficient f, as typed.</summary>
    public string Factor { get; set; } = "";

    /// <summary>Why f cannot be used.</summary>
    public string? FactorRefusal { get; private set; }

    public override IEnumerable<RefusedField> Refused =>
    [
        .. base.Refused,
        .. RefusedField.If("test-factor", "Coefficient f", FactorRefusal),
        .. Runs.SelectMany((run, index) => RefusedField.If($"run-{index}", $"Run {index + 1}", run.Refusal)),
    ];

    /// <summary>Why it cannot be kept as a whole.</summary>
    public string? Refusal { get; private set; }

    /// <summary>The test of the runs that are timed so far; null with the refusals set where something cannot be used, or none is timed.</summary>
    public RollingTest? Make()
    {
        Refusal = null;
        bool isHeadGood = ReadHead(out Quantity? water);
        (Quantity? factor, FactorRefusal) = ReadOptional<Quantity>(Schema.Field("rollingFactor")!, Factor);
        TimedRolls[] read = [.. Runs.Select(Read).OfType<TimedRolls>()];
        if (!isHeadGood || FactorRefusal is not null || Runs.Any(run => run.Refusal is not null))
        {
            return null;
        }

        if (read.Length == 0)
        {
            Refusal = "No run is timed yet.";
            return null;
        }

        return new RollingTest { Id = NewId(), Name = Name.Trim(), On = On, WaterDensityKgPerM3 = water, RollingFactor = factor, Aboard = Aboard, IsBare = IsBare, Runs = [.. read] };
    }

    private TimedRolls? Read(RunDraft run)
    {
        run.Refusal = null;
        if (string.IsNullOrWhiteSpace(run.Time))
        {
            return null;
        }

        RecordSchema schema = Schema.Field("runs")!.Record!;
        FieldReading rolls = FieldText.Read(schema.Field("rollCount")!, run.Rolls, Units, Culture), time = FieldText.Read(schema.Field("timeS")!, run.Time, Units, Culture);
        run.Refusal = rolls.Refusal ?? time.Refusal;
        return run.Refusal is null && rolls.Value is int count && time.Value is double seconds ? new TimedRolls(count, seconds) : null;
    }
}
