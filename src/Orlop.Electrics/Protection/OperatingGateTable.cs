using System.Collections.Immutable;
using Orlop.Electrics.Working;

namespace Orlop.Electrics.Protection;

/// <summary>What opens by listed gates: a fuse that melts, or a breaker that trips.</summary>
public enum GatedDevice { Fuse, Breaker }

/// <summary>The gates that ship with the engine: blade and strip fuses (ISO 8820, from memory), gG fuse-links (IEC 60269-1) and IEC 60898-1 breakers B, C, D.</summary>
public static class OperatingGateTable
{
    private sealed record Row(string Curve, GatedDevice Device, double LeastRatingA, double MostRatingA, OperatingGate Gate);

    private static readonly EmbeddedCsv Csv = EmbeddedCsv.Read("gates.csv");

    private static readonly ImmutableArray<Row> Rows = Load();

    /// <summary>Ids of the curves, in the table's order.</summary>
    public static ImmutableArray<string> CurveIds { get; } = [.. Rows.Select(row => row.Curve).Distinct()];

    /// <summary>The gates of a curve for a device of this rating; null when no such curve covers the rating. Where two ranges of rating meet, the lower one counts.</summary>
    public static OperatingGates? Find(string curveId, double ratingA)
    {
        Guard.Positive(ratingA, 10_000, "A", curveId);
        var range = Rows.Where(row => row.Curve == curveId && ratingA >= row.LeastRatingA && ratingA <= row.MostRatingA)
            .GroupBy(row => row.MostRatingA).MinBy(group => group.Key);
        return range is null ? null : new OperatingGates(curveId, [.. range.Select(row => row.Gate)], SourceOf(curveId));
    }

    /// <summary>What a curve is the gates of; null for one that is not listed.</summary>
    public static GatedDevice? DeviceOf(string curveId) => Rows.FirstOrDefault(row => row.Curve == curveId)?.Device;

    /// <summary>The greatest rating below and the least above one that a curve does not cover, A; null where it has none on that side.</summary>
    public static (double? BelowA, double? AboveA) RatingsBeside(string curveId, double ratingA)
    {
        Guard.Positive(ratingA, 10_000, "A", curveId);
        Row[] rows = [.. Rows.Where(row => row.Curve == curveId)];
        return (rows.Where(row => row.MostRatingA < ratingA).Max(row => (double?)row.MostRatingA), rows.Where(row => row.LeastRatingA > ratingA).Min(row => (double?)row.LeastRatingA));
    }

    private static string SourceOf(string curveId) => curveId switch
    {
        "blade-type-c" => "ISO 8820-3, blade fuses type C",
        "strip-sf30" => "ISO 8820-5, strip fuses SF30",
        "strip-sf51" => "ISO 8820-5, strip fuses SF51",
        _ when curveId.StartsWith("breaker-", StringComparison.Ordinal) => $"IEC 60898-1, breaker type {curveId[^1..].ToUpperInvariant()}",
        _ => "IEC 60269-1, fuse-links gG",
    };

    private static ImmutableArray<Row> Load() =>
        [.. Csv.Rows.Select(row => new Row(
            Csv.Text(row, "curve"), Enum.Parse<GatedDevice>(Csv.Text(row, "device"), ignoreCase: true), Csv.Number(row, "least_rating_a"), Csv.Number(row, "most_rating_a"),
            new OperatingGate(Csv.Number(row, "current_ratio"), Csv.NumberOrNull(row, "earliest_s"), Csv.NumberOrNull(row, "latest_s"),
                Csv.Text(row, "step") == "yes", Csv.Text(row, "from_memory") == "yes")))];
}
