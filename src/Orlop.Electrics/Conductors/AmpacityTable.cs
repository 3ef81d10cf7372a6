using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Conductors;

/// <summary>One published value: the most a conductor of this size and insulation rating may carry at the table's ambient.</summary>
public sealed record AmpacityRow(double AreaMm2, double InsulationC, double CurrentA);

/// <summary>What a table says of a size. <paramref name="Row"/> is null outside the table.</summary>
public sealed record AmpacityLookup(LookupKind Lookup, AmpacityRow? Row, WorkingStep Working);

/// <summary>A published ampacity table: size by insulation temperature, for one ambient. Read exactly or one step to the cautious side; never extrapolated.</summary>
public sealed record AmpacityTable(string Source, double AmbientC, ImmutableArray<AmpacityRow> Rows)
{
    /// <summary>Sizes within this ratio of a row are that row's size (13.3 mm² is 6 AWG).</summary>
    private const double SameSizeRatio = 0.005;

    /// <summary>The row for a size and an insulation rating, or the next smaller size or cooler rating.</summary>
    public AmpacityLookup Lookup(double areaMm2, double insulationC)
    {
        Guard.Positive(areaMm2, 1000, "mm²", "ampacity");
        Guard.InRange(insulationC, 30, 300, "°C", "ampacity");
        if (Rows.IsDefaultOrEmpty)
        {
            return Outside("the table has no rows");
        }

        if (areaMm2 * (1 + SameSizeRatio) < Rows.Min(row => row.AreaMm2) || areaMm2 > Rows.Max(row => row.AreaMm2) * (1 + SameSizeRatio)
            || insulationC < Rows.Min(row => row.InsulationC) || insulationC > Rows.Max(row => row.InsulationC))
        {
            return Outside(FormattableString.Invariant($"{areaMm2:0.##} mm² at {insulationC:0.#} °C insulation is outside the table"));
        }

        var match = Rows.Where(row => row.AreaMm2 <= areaMm2 * (1 + SameSizeRatio) && row.InsulationC <= insulationC)
            .MaxBy(row => (row.InsulationC, row.AreaMm2));
        if (match is null)
        {
            return Outside(FormattableString.Invariant($"no row at or below {areaMm2:0.##} mm² and {insulationC:0.#} °C insulation"));
        }

        var isExact = match.InsulationC == insulationC && match.AreaMm2 >= areaMm2 * (1 - SameSizeRatio);
        var expression = FormattableString.Invariant($"row {match.AreaMm2:0.##} mm², {match.InsulationC:0.#} °C{(isExact ? "" : $" (next below {areaMm2:0.##} mm², {insulationC:0.#} °C)")}");
        return new AmpacityLookup(isExact ? LookupKind.Exact : LookupKind.ConservativeStep, match,
            new WorkingStep("I_table", expression, match.CurrentA, "A", Source));
    }

    private AmpacityLookup Outside(string why) =>
        new(LookupKind.OutsideValidity, null, new WorkingStep("I_table", why, null, "A", Source));
}
