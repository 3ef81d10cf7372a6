using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Conductors;

/// <summary>A factor that a rule states outright, used in place of the formula.</summary>
public sealed record StatedFactor(double Factor, string Source);

/// <summary>A conductor where it runs.</summary>
public sealed record AmpacityInput
{
    /// <summary>What it is, for messages.</summary>
    public required string Subject { get; init; }

    public required AmpacityTable Table { get; init; }

    /// <summary>Above 0 to 1000.</summary>
    public required double AreaMm2 { get; init; }

    /// <summary>Insulation temperature rating, 30 to 300.</summary>
    public required double InsulationC { get; init; }

    /// <summary>Temperature around it where it is hottest, -40 to 300.</summary>
    public required double AmbientC { get; init; }

    /// <summary>Loaded conductors in the bundle, itself among them, 1 or more.</summary>
    public required int LoadedCount { get; init; }

    /// <summary>Grouping table of the rule set; null where it asks for none.</summary>
    public BundleFactorTable? BundleFactors { get; init; }

    /// <summary>The rule set's own ambient factor; null to use the formula.</summary>
    public StatedFactor? AmbientFactor { get; init; }
}

/// <summary>What a conductor may carry where it runs.</summary>
/// <param name="Lookup">How the table was read; OutsideValidity when there is no answer.</param>
/// <param name="CurrentA">Null when there is no answer, 0 when the ambient alone reaches the insulation's rating.</param>
/// <param name="GroupedTableCurrentA">The table's value with grouping at the table's own ambient: what brings the conductor there to its rated temperature.</param>
/// <param name="WhyNone">Why there is no answer.</param>
public sealed record AmpacityResult(
    LookupKind Lookup, double? CurrentA, double? GroupedTableCurrentA, bool IsTooHot, string? WhyNone, ImmutableArray<WorkingStep> Working);

/// <summary>I = I_table · f_amb · f_bundle.</summary>
public static class Ampacity
{
    private const int PrintedDecimals = 5;

    public static AmpacityResult Calculate(AmpacityInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Guard.Positive(input.AreaMm2, 1000, "mm²", input.Subject);
        Guard.InRange(input.InsulationC, 30, 300, "°C", input.Subject);
        Guard.InRange(input.AmbientC, -40, 300, "°C", input.Subject);
        Guard.InRange(input.LoadedCount, 1, 10_000, "conductors", input.Subject);
        if (input.AmbientFactor is { } given)
        {
            Guard.InRange(given.Factor, 0, 2, "", input.Subject);
        }

        var lookup = input.Table.Lookup(input.AreaMm2, input.InsulationC);
        var table = lookup.Working;
        var ambient = AmbientStep(input, out var isTooHot);
        var bundle = input.BundleFactors?.Lookup(input.LoadedCount);
        var bundleStep = bundle?.Working ?? new WorkingStep("f_bundle", "none asked for", 1, "", input.Table.Source);
        ImmutableArray<WorkingStep> steps = [table, ambient, bundleStep];
        if (steps.FirstOrDefault(step => step.Value is null) is { } missing)
        {
            return new AmpacityResult(LookupKind.OutsideValidity, null, null, isTooHot, missing.Expression, steps);
        }

        // The factor counts with the digits that are printed below, so that the working gives the result to whoever follows it.
        var (tabled, ambientFactor, bundleFactor) = (table.Value!.Value, Math.Round(ambient.Value!.Value, PrintedDecimals), bundleStep.Value!.Value);
        var current = tabled * ambientFactor * bundleFactor;
        return new AmpacityResult(lookup.Lookup, current, tabled * bundleFactor, isTooHot, null,
            steps.Add(new WorkingStep("I", FormattableString.Invariant($"{tabled:0.##} × {ambientFactor:0.#####} × {bundleFactor:0.###}"), current, "A", "table × both factors")));
    }

    private static WorkingStep AmbientStep(AmpacityInput input, out bool isTooHot)
    {
        isTooHot = input.AmbientC >= input.InsulationC;
        if (input.AmbientFactor is { } stated && !isTooHot)
        {
            return new WorkingStep("f_amb", "stated by the rule", stated.Factor, "", stated.Source);
        }

        return AmbientCorrection.Calculate(input.InsulationC, input.AmbientC, input.Table.AmbientC).Working;
    }
}
