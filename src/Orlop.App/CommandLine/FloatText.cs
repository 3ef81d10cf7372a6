using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Hull.Floating;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views;
using Orlop.Presentation.Views.Floating;
using Orlop.Presentation.Views.Hulls;
using Orlop.Review.Stability;

namespace Orlop.App.CommandLine;

/// <summary>How a boat floats, as plain text.</summary>
internal static class FloatText
{
    private const int ShownStepDeg = 10;

    public static void Write(TextWriter output, StabilityView view, IEnumerable<FloatingFacts> all, bool hasMotions, DisplayUnits units, CultureInfo culture)
    {
        foreach (FloatingFacts facts in all)
        {
            FloatingView words = FloatingView.Of(view, facts, null, units, culture);
            output.WriteLine(words.Condition);
            if (words.Trouble is not null)
            {
                output.WriteLine($"  {words.Trouble}");
            }

            foreach (Vital tile in words.Tiles)
            {
                output.WriteLine(Plain($"  {tile.Name,-20}{tile.Value,-24}{tile.Of}").TrimEnd());
            }

            Levers(output, view, facts, units, culture);
            Missing(output, words.Missing);
            if (hasMotions)
            {
                Motions(output, view, facts, units, culture);
            }

            output.WriteLine();
        }

        output.WriteLine(Plain(FloatingWords.Water(view, units, culture)));
        output.WriteLine(FloatingWords.Deck(view.Boat, units, culture));
        if (HullWords.NotMeasured(view.Boat.All<HullLines>().FirstOrDefault()) is { } form)
        {
            output.WriteLine(form);
        }

        output.WriteLine(FloatingWords.Caution);
    }

    /// <summary>What is not given.</summary>
    public static void Missing(TextWriter output, IReadOnlyList<MissingField> missing)
    {
        if (missing.Count > 0)
        {
            output.WriteLine($"  Not given, and so not in these numbers: {string.Join("; ", missing.Select(field => field.Text))}.");
        }
    }

    private static void Levers(TextWriter output, StabilityView view, FloatingFacts facts, DisplayUnits units, CultureInfo culture)
    {
        if (facts.Floating is not { } floating || floating.Starboard.Points.IsEmpty)
        {
            return;
        }

        output.WriteLine($"  {"Heel",-20}{"GZ to starboard",-24}GZ to port");
        for (int heel = 0; heel <= (int)Math.Abs(floating.Starboard.Points[^1].HeelDeg); heel += ShownStepDeg)
        {
            string Lever(RightingCurve curve, RightingFeatures? read, int side) => curve.At(side * heel) is { } point
                ? $"{QuantityText.Format(Math.Round(side * point.GzM, 3), "M", units, culture)}{(read?.IsFloodedAt(heel) == true ? $" {FloodedLevers.Mark}" : "")}" : QuantityText.Unknown;
            output.WriteLine($"  {heel.ToString(culture) + "°",-20}{Lever(floating.Starboard, facts.Starboard, 1),-24}{Lever(floating.Port, facts.Port, -1)}");
        }

        if (FloodedLevers.Text(view.Boat, facts, units, culture) is { } flooded)
        {
            output.WriteLine(Plain($"  {flooded}"));
        }
    }

    private static void Motions(TextWriter output, StabilityView view, FloatingFacts facts, DisplayUnits units, CultureInfo culture)
    {
        MotionView[] all = [.. facts.Loaded.Ledger.Rows.Select(row => MotionView.Of(view, facts, row, units, culture))];
        if (all.FirstOrDefault(motion => motion.Period is not null)?.Period is { } period)
        {
            output.WriteLine($"  Stated motion. {period} {MotionAt.Range}");
        }

        foreach (IGrouping<string?, MotionView> why in all.Where(motion => motion.Trouble is not null).GroupBy(motion => motion.Trouble))
        {
            output.WriteLine($"  Accelerations and tilt unknown at {string.Join(", ", why.Select(motion => motion.Title))}: {why.Key}");
        }

        foreach (MotionView motion in all.Where(motion => motion.Trouble is null))
        {
            output.WriteLine($"  {motion.Title}");
            foreach (MotionRow row in motion.Rows)
            {
                output.WriteLine(Plain($"    {row.Name,-34}{row.Value}"));
            }
        }
    }

    private static string Plain(string text) => text.Replace('\u00A0', ' ');
}
