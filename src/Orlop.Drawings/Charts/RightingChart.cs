using System.Collections.Immutable;
using System.Globalization;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views.Floating;

namespace Orlop.Drawings.Charts;

/// <summary>The righting levers over heel: as shown, and as built dashed; where she floods, where stability vanishes, what is asked of them, and how sure they are.</summary>
public static class RightingChart
{
    private const double BandFactor = 2;
    private const double BeyondDeg = 10;
    private const double LastDeg = 180;

    /// <summary>The chart as SVG.</summary>
    /// <param name="id">Id of the drawing's outermost element, unique on its page.</param>
    /// <param name="shown">The boat as shown.</param>
    /// <param name="asBuilt">The boat as built, with a draft open; null without one.</param>
    /// <param name="showsBothSides">Both sides, port to the left; otherwise the weaker side alone.</param>
    public static string Draw(string id, string condition, RightingView shown, RightingView? asBuilt, bool showsBothSides, double widthPx, DisplayUnits units, CultureInfo culture)
    {
        RightingSide weaker = shown.Weaker;
        double reach = Reach([shown.Weaker, .. showsBothSides ? new[] { shown.Port, shown.Starboard } : []]);
        // A side alone is drawn to the right, whichever it is.
        int sign = weaker.IsPort && !showsBothSides ? -1 : 1;
        ImmutableArray<LeverPoint> points = showsBothSides ? Joined(shown, reach) : Cut(weaker.Points, reach);
        ImmutableArray<LeverPoint> before = asBuilt is null ? [] : showsBothSides ? Joined(asBuilt, reach) : Cut((weaker.IsPort ? asBuilt.Port : asBuilt.Starboard).Points, reach);
        ChartSeries now = new(asBuilt is null ? "Righting lever" : "With the draft", [.. points.Select(point => new ChartPoint(sign * point.HeelDeg, point.LeverM))]);
        return new Chart
        {
            Id = id,
            Title = $"Righting levers, {condition}, {(showsBothSides ? "to both sides" : $"to {weaker.Name}, the weaker side")}",
            Across = new(showsBothSides ? "Heel: to port below 0, to starboard above" : $"Heel to {weaker.Name}", "Deg"),
            Up = new("Righting lever GZ", "M"),
            Series = before.IsEmpty ? [now] : [now, new("As built", [.. before.Select(point => new ChartPoint(sign * point.HeelDeg, point.LeverM))], IsDashed: true)],
            Areas = [.. Asked(shown, showsBothSides, units, culture), .. Doubt(weaker, showsBothSides, reach)],
            Limits = [.. shown.Criteria.Where(criterion => criterion.Unit == "M").Select(criterion => Limit(criterion, weaker.IsPort && showsBothSides, reach))],
            Marks = [.. (showsBothSides ? new[] { shown.Port, shown.Starboard } : [weaker]).SelectMany(side => Marks(side, showsBothSides, units, culture))],
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

    private static ImmutableArray<LeverPoint> Cut(IEnumerable<LeverPoint> points, double reach) => [.. points.Where(point => Math.Abs(point.HeelDeg) <= reach)];

    // Levers to either side are above 0 where they right her; at 0 the two differ in sign, and the break says so.
    private static ImmutableArray<LeverPoint> Joined(RightingView view, double reach) =>
        [.. Cut(view.Port.Points, reach).Reverse(), .. Cut(view.Starboard.Points, reach)];

    private static IEnumerable<ChartArea> Asked(RightingView shown, bool showsBothSides, DisplayUnits units, CultureInfo culture)
    {
        RightingSide side = shown.Weaker;
        int sign = side.IsPort && showsBothSides ? -1 : 1;
        foreach (DrawnCriterion criterion in shown.Criteria.Where(criterion => criterion.Unit == "MRad" && criterion.ToDeg > criterion.FromDeg))
        {
            double[] heels = [criterion.FromDeg, .. side.Points.Select(point => Math.Abs(point.HeelDeg)).Where(heel => heel > criterion.FromDeg && heel < criterion.ToDeg), criterion.ToDeg];
            ChartPoint[] upper = [.. heels.Select(heel => new ChartPoint(sign * heel, LeverAt(side.Points, heel)))];
            AxisUnit unit = AxisUnit.For("MRad", units);
            string found = criterion.Value is { } value ? unit.FromModel(value).ToString("0.000", culture) : QuantityText.Unknown;
            yield return new ChartArea(
                string.Create(culture, $"{criterion.FromDeg:0.#}–{criterion.ToDeg:0.#}°: {found}, least {unit.FromModel(criterion.Least):0.000} {unit.Symbol}"), upper, [.. heels.Select(heel => new ChartPoint(sign * heel, 0))]);
        }
    }

    private static IEnumerable<ChartArea> Doubt(RightingSide side, bool showsBothSides, double reach)
    {
        LeverPoint[] known = [.. Cut(side.Points, reach).Where(point => point.DeviationM is not null).OrderBy(point => Math.Abs(point.HeelDeg))];
        if (known.Length > 1)
        {
            int sign = side.IsPort && !showsBothSides ? -1 : 1;
            yield return new ChartArea(
                "± two standard deviations",
                [.. known.Select(point => new ChartPoint(sign * point.HeelDeg, point.LeverM + (BandFactor * point.DeviationM!.Value)))],
                [.. known.Select(point => new ChartPoint(sign * point.HeelDeg, point.LeverM - (BandFactor * point.DeviationM!.Value)))],
                IsDoubt: true);
        }
    }

    private static ChartLimit Limit(DrawnCriterion criterion, bool isToTheLeft, double reach)
    {
        double to = Math.Min(criterion.ToDeg, reach), from = Math.Min(criterion.FromDeg, to);
        return isToTheLeft ? new("least", criterion.Least, -to, -from) : new("least", criterion.Least, from, to);
    }

    private static IEnumerable<ChartMark> Marks(RightingSide side, bool showsBothSides, DisplayUnits units, CultureInfo culture)
    {
        int sign = side.IsPort && !showsBothSides ? -1 : 1;
        string Deg(double heelDeg) => FloatingWords.Degrees(Math.Abs(heelDeg), units, culture);
        if (side.Features is { GreatestGzDeg: { } greatest, GreatestGzM: { } lever })
        {
            yield return new($"most {FloatingWords.Metres(lever, units, culture)} at {Deg(greatest)}", sign * greatest);
        }

        if (side.Features.DownfloodingDeg is { } flooding)
        {
            yield return new($"{side.FloodingTitle} under at {Deg(flooding)}", sign * flooding);
        }

        if (side.Features.VanishingDeg is { } vanishing)
        {
            yield return new($"vanishes at {Deg(vanishing)}", sign * vanishing);
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
