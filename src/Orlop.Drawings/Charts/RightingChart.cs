using System.Collections.Immutable;
using System.Globalization;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views.Floating;

namespace Orlop.Drawings.Charts;

/// <summary>The righting levers over heel: as shown, and as built dashed; faint from where she floods; where stability vanishes, what is asked of them, what heels her, and how sure they are.</summary>
public static class RightingChart
{
    private const double BandFactor = 2;
    private const double BeyondDeg = 10;
    private const double LastDeg = 180;

    /// <summary>The chart as SVG.</summary>
    /// <param name="id">Id of the drawing's outermost element, unique on its page.</param>
    /// <param name="shown">The boat as shown.</param>
    /// <param name="asBuilt">The boat as built, with a draft open; null without one.</param>
    /// <param name="showsBothSides">Both sides, port to the left; otherwise the side drawn alone.</param>
    public static string Draw(string id, string condition, RightingView shown, RightingView? asBuilt, bool showsBothSides, double widthPx, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(shown);
        RightingSide drawn = shown.Drawn;
        double reach = Reach([drawn, .. showsBothSides ? new[] { shown.Port, shown.Starboard } : []]);
        // A side alone is drawn to the right and up, whichever it is. Both together are one curve through 0: heel and lever to port are below it.
        int way = drawn.IsPort && showsBothSides ? -1 : 1;
        ChartPoint[] points = showsBothSides ? Joined(shown, reach) : Alone(drawn, reach);
        ChartPoint[] before = asBuilt is null ? [] : showsBothSides ? Joined(asBuilt, reach) : Alone(drawn.IsPort ? asBuilt.Port : asBuilt.Starboard, reach);
        ChartSeries now = new(asBuilt is null ? "Righting lever" : "With the draft", points);
        RightingSide[] sides = showsBothSides ? [shown.Port, shown.Starboard] : [drawn];
        return new Chart
        {
            Id = id,
            Title = $"Righting levers, {condition}, {(showsBothSides ? "to both sides" : shown.Title)}",
            Across = new(showsBothSides ? "Heel: to port below 0, to starboard above" : $"Heel to {drawn.Name}", "Deg"),
            Up = new(showsBothSides ? "GZ: turns her to port above 0, else to starboard" : "Righting lever GZ", "M"),
            Series =
            [
                now, .. sides.Select(side => Flooded(side, showsBothSides && side.IsPort ? -1 : 1, reach)).Where(points => points.Length > 0).Select((points, k) => new ChartSeries(k == 0 ? FloodedLevers.Name : "", points, IsFaint: true)),
                .. before.Length == 0 ? Array.Empty<ChartSeries>() : [new ChartSeries("As built", before, IsDashed: true)],
                .. shown.Heeling.Select(lever => new ChartSeries(HeelingWords.Curve(lever), [.. lever.Points.Where(point => point.HeelDeg <= reach).Select(point => new ChartPoint(way * point.HeelDeg, way * point.LeverM))], IsAsked: true)),
            ],
            Areas = [.. Asked(shown, way, units, culture), .. Doubt(drawn, way, reach)],
            Limits = [.. shown.Criteria.Where(criterion => criterion.Unit == "M").Select(criterion => Limit(criterion, way, reach))],
            Marks =
            [
                .. sides.SelectMany(side => Marks(side, showsBothSides && side.IsPort ? -1 : 1, units, culture)),
                .. shown.Heeling.Where(lever => lever.MeetsDeg is not null).Select(lever => new ChartMark(HeelingWords.Meets(lever, units, culture), way * lever.MeetsDeg!.Value)),
            ],
            StartsAtZero = true,
            WidthPx = widthPx,
            FieldHeightPx = 230,
            Units = units,
            Culture = culture,
        }.Draw();
    }

    // To a little beyond where stability vanishes: what follows is the boat bottom up.
    private static double Reach(IEnumerable<RightingSide> sides) => Math.Min(LastDeg, sides.Max(side => side.Features.VanishingDeg is { } vanishing
        ? (Math.Ceiling(Math.Abs(vanishing) / BeyondDeg) + 1) * BeyondDeg
        : side.Points.Select(point => Math.Abs(point.HeelDeg)).DefaultIfEmpty(0).Max()));

    private static IEnumerable<LeverPoint> Cut(IEnumerable<LeverPoint> points, double reach) => points.Where(point => Math.Abs(point.HeelDeg) <= reach);

    private static ChartPoint[] Alone(RightingSide side, double reach) => [.. Dry(side, reach).Select(point => new ChartPoint(Math.Abs(point.HeelDeg), point.LeverM))];

    // Upright both sides have the same point: it is drawn once.
    private static ChartPoint[] Joined(RightingView view, double reach) =>
    [
        .. Dry(view.Port, reach).Reverse().Select(point => new ChartPoint(point.HeelDeg, -point.LeverM)),
        .. Dry(view.Starboard, reach).Skip(view.Port.Points.IsEmpty ? 0 : 1).Select(point => new ChartPoint(point.HeelDeg, point.LeverM)),
    ];

    // To where water comes in, and no further.
    private static IEnumerable<LeverPoint> Dry(RightingSide side, double reach) =>
        [.. Cut(side.Points, reach).Where(point => !side.Features.IsFloodedAt(point.HeelDeg)), .. Cut(Begin(side), reach)];

    // The heel at which she floods, where the curve has it between its points.
    private static LeverPoint[] Begin(RightingSide side) =>
        side.Features.DownfloodingDeg is { } heel && LeverAt(side.Points, Math.Abs(heel)) is var lever && double.IsFinite(lever) ? [new LeverPoint(heel, lever)] : [];

    // From there on the levers are not hers.
    private static ChartPoint[] Flooded(RightingSide side, int way, double reach)
    {
        LeverPoint[] wet = [.. Cut(Begin(side).Concat(side.Points.Where(point => side.Features.IsFloodedAt(point.HeelDeg))), reach).DistinctBy(point => Math.Abs(point.HeelDeg))];
        return [.. wet.Select(point => new ChartPoint(way * Math.Abs(point.HeelDeg), way * point.LeverM)).OrderBy(point => point.Across)];
    }

    private static IEnumerable<ChartArea> Asked(RightingView shown, int way, DisplayUnits units, CultureInfo culture)
    {
        RightingSide side = shown.Drawn;
        foreach (DrawnCriterion criterion in shown.Criteria.Where(criterion => criterion.Unit == "MRad" && criterion.ToDeg > criterion.FromDeg))
        {
            double[] heels = [criterion.FromDeg, .. side.Points.Select(point => Math.Abs(point.HeelDeg)).Where(heel => heel > criterion.FromDeg && heel < criterion.ToDeg), criterion.ToDeg];
            ChartPoint[] upper = [.. heels.Select(heel => new ChartPoint(way * heel, way * LeverAt(side.Points, heel)))];
            AxisUnit unit = AxisUnit.For("MRad", units);
            string found = criterion.Value is { } value ? unit.FromModel(value).ToString("0.000", culture) : QuantityText.Unknown;
            yield return new ChartArea(
                string.Create(culture, $"{criterion.FromDeg:0.#}–{criterion.ToDeg:0.#}°: {found}, least {unit.FromModel(criterion.Least):0.000} {unit.Symbol}"), upper, [.. heels.Select(heel => new ChartPoint(way * heel, 0))]);
        }
    }

    private static IEnumerable<ChartArea> Doubt(RightingSide side, int way, double reach)
    {
        LeverPoint[] known = [.. Cut(side.Points, reach).Where(point => point.DeviationM is not null && !side.Features.IsFloodedAt(point.HeelDeg)).OrderBy(point => Math.Abs(point.HeelDeg))];
        if (known.Length > 1)
        {
            ChartPoint[] Edge(double factor) => [.. known.Select(point => new ChartPoint(way * Math.Abs(point.HeelDeg), way * (point.LeverM + (factor * point.DeviationM!.Value))))];
            yield return new ChartArea("± two standard deviations", Edge(BandFactor), Edge(-BandFactor), IsDoubt: true);
        }
    }

    private static ChartLimit Limit(DrawnCriterion criterion, int way, double reach)
    {
        double to = Math.Min(criterion.ToDeg, reach), from = Math.Min(criterion.FromDeg, to);
        return way < 0 ? new("least", -criterion.Least, -to, -from, criterion.Least) : new("least", criterion.Least, from, to);
    }

    private static IEnumerable<ChartMark> Marks(RightingSide side, int way, DisplayUnits units, CultureInfo culture)
    {
        string Deg(double heelDeg) => FloatingWords.Degrees(Math.Abs(heelDeg), units, culture);
        if (side.Greatest is { } most)
        {
            yield return new($"most {FloatingWords.Metres(most.LeverM, units, culture)} at {Deg(most.HeelDeg)}", way * Math.Abs(most.HeelDeg));
        }

        if (side.Features.DownfloodingDeg is { } flooding)
        {
            yield return new($"floods at {Deg(flooding)}: {side.FloodingTitle}", way * Math.Abs(flooding));
        }

        if (side.Features.VanishingDeg is { } vanishing)
        {
            yield return new($"vanishes at {Deg(vanishing)}", way * Math.Abs(vanishing));
        }
    }

    private static double LeverAt(ImmutableArray<LeverPoint> points, double heel)
    {
        for (int i = 1; i < points.Length; i++)
        {
            double before = Math.Abs(points[i - 1].HeelDeg), after = Math.Abs(points[i].HeelDeg);
            if (heel >= before && heel <= after)
            {
                return points[i - 1].LeverM + ((heel - before) / (after - before) * (points[i].LeverM - points[i - 1].LeverM));
            }
        }

        return double.NaN;
    }
}
