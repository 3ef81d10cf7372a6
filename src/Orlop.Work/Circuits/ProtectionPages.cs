using Orlop.Boat.Things;
using Orlop.Drawings.Charts;
using Orlop.Review.Electrics;
using Orlop.Work.Paper;

namespace Orlop.Work.Circuits;

/// <summary>How each circuit is protected, over current and time.</summary>
internal static class ProtectionPages
{
    private const double WidthPx = 345;

    public static void Write(HtmlText html, ElectricalSheet sheet, PaperOptions options)
    {
        (CircuitLine Line, ProtectionCurves Curves, Condition Condition)[] drawn =
        [
            .. from line in sheet.Circuits
               let condition = line.RunningA?.Condition ?? sheet.Condition
               where condition is not null
               let curves = ProtectionCurves.Of(sheet.View, line.Taker, condition)
               where curves is not null && !curves.Devices.IsEmpty
               select (line, curves, condition),
        ];
        if (drawn.Length == 0)
        {
            return;
        }

        html.Open("section", ("id", "protection")).Put("h2", "How each is protected")
            .Put("p", "Between its two lines a device may open or not. Weakest fault: at the far end, lowest battery, hot conductors. Greatest: just behind the last device, full battery, every source.");
        html.Open("div", ("class", "charts"));
        int number = 0;
        foreach ((CircuitLine line, ProtectionCurves curves, Condition condition) in drawn)
        {
            html.Open("div", ("class", "levers")).Put("h3", sheet.Conditions.Length > 1 ? $"{line.Taker.Title}, {condition.Title}" : line.Taker.Title)
                .Markup(ProtectionChart.Draw($"protection-{++number}", line.Taker.Title, curves, WidthPx, options.Units, options.Culture)).Close();
        }

        html.Close().Close();
    }
}
