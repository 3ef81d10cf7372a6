using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Conductors;

/// <summary>One row of a grouping table.</summary>
/// <param name="LeastCount">Fewest loaded conductors.</param>
/// <param name="MostCount">Most loaded conductors; null for "or more".</param>
/// <param name="Factor">Share of the current that is left, above 0 to 1.</param>
public sealed record BundleFactorRow(int LeastCount, int? MostCount, double Factor);

/// <summary>The factor for a bundle. <paramref name="Factor"/> is null when the table does not cover the count.</summary>
public sealed record BundleFactorResult(LookupKind Lookup, double? Factor, WorkingStep Working);

/// <summary>Published factors for current-carrying conductors that touch. Fewer conductors than the first row need none (factor 1).</summary>
public sealed record BundleFactorTable(ImmutableArray<BundleFactorRow> Rows, string Source)
{
    /// <summary>The factor for a number of loaded conductors, 1 or more.</summary>
    public BundleFactorResult Lookup(int loadedCount)
    {
        Guard.InRange(loadedCount, 1, 10_000, "conductors", "bundle");
        if (Rows.IsDefaultOrEmpty)
        {
            return new BundleFactorResult(LookupKind.OutsideValidity, null, new WorkingStep("f_bundle", "the table has no rows", null, "", Source));
        }

        if (loadedCount < Rows.Min(row => row.LeastCount))
        {
            return Found(1, $"{loadedCount} loaded: fewer than the table begins with");
        }

        var match = Rows.FirstOrDefault(row => loadedCount >= row.LeastCount && loadedCount <= (row.MostCount ?? int.MaxValue));
        return match is null
            ? new BundleFactorResult(LookupKind.OutsideValidity, null, new WorkingStep("f_bundle", $"no row for {loadedCount} loaded conductors", null, "", Source))
            : Found(match.Factor, $"{loadedCount} loaded: row {match.LeastCount} to {match.MostCount?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "more"}");
    }

    private BundleFactorResult Found(double factor, string expression) =>
        new(LookupKind.Exact, factor, new WorkingStep("f_bundle", expression, factor, "", Source));
}
