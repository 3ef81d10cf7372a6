using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Conductors;

/// <summary>One published value: the most a conductor of this size and insulation rating may carry at the table's ambient.</summary>
public sealed record AmpacityRow(double AreaMm2, double InsulationC, double CurrentA);

/// <summary>What a table says of a size.</summary>
public sealed class AmpacityLookup
{
    private readonly string _source;
    private readonly Func<string> _expression;

    internal AmpacityLookup(LookupKind lookup, AmpacityRow? row, string source, Func<string> expression) =>
        (Lookup, Row, _source, _expression) = (lookup, row, source, expression);

    /// <summary>How the row was found.</summary>
    public LookupKind Lookup { get; }

    /// <summary>The row; null outside the table.</summary>
    public AmpacityRow? Row { get; }

    /// <summary>The row that was read, or why there is none; written when it is asked for.</summary>
    public WorkingStep Working => new("I_table", _expression(), Row?.CurrentA, "A", _source);
}

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
            return Outside(() => "the table has no rows");
        }

        AmpacityRow? match = null;
        double leastMm2 = double.PositiveInfinity, mostMm2 = 0, coolestC = double.PositiveInfinity, hottestC = 0;
        foreach (var row in Rows)
        {
            (leastMm2, mostMm2) = (Math.Min(leastMm2, row.AreaMm2), Math.Max(mostMm2, row.AreaMm2));
            (coolestC, hottestC) = (Math.Min(coolestC, row.InsulationC), Math.Max(hottestC, row.InsulationC));
            var isWithin = row.AreaMm2 <= areaMm2 * (1 + SameSizeRatio) && row.InsulationC <= insulationC;
            if (isWithin && (match is null || (row.InsulationC, row.AreaMm2).CompareTo((match.InsulationC, match.AreaMm2)) > 0))
            {
                match = row;
            }
        }

        if (areaMm2 * (1 + SameSizeRatio) < leastMm2 || areaMm2 > mostMm2 * (1 + SameSizeRatio) || insulationC < coolestC || insulationC > hottestC)
        {
            return Outside(() => FormattableString.Invariant($"{areaMm2:0.##} mm² at {insulationC:0.#} °C insulation is outside the table"));
        }

        if (match is null)
        {
            return Outside(() => FormattableString.Invariant($"no row at or below {areaMm2:0.##} mm² and {insulationC:0.#} °C insulation"));
        }

        var isExact = match.InsulationC == insulationC && match.AreaMm2 >= areaMm2 * (1 - SameSizeRatio);
        return new AmpacityLookup(isExact ? LookupKind.Exact : LookupKind.ConservativeStep, match, Source, () =>
            FormattableString.Invariant($"row {match.AreaMm2:0.##} mm², {match.InsulationC:0.#} °C{(isExact ? "" : $" (next below {areaMm2:0.##} mm², {insulationC:0.#} °C)")}"));
    }

    private AmpacityLookup Outside(Func<string> why) => new(LookupKind.OutsideValidity, null, Source, why);
}
