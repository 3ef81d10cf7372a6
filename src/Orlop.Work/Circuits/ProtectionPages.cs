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
        if (sheet.Condition is not { } condition)
        {
            return;
        }

        (CircuitLine Line, ProtectionCurves Curves)[] drawn =
        [
            .. from line in sheet.Circuits
               let curves = ProtectionCurves.Of(sheet.View, line.Taker, condition)
               where curves is not null && !curves.Devices.IsEmpty
               select (line, curves),
        ];
        if (drawn.Length == 0)
        {
            return;
        }

        html.Open("section", ("id", "protection")).Put("h2", "How each is protected")
            .Put("p", "Between its two lines a device may open or not. Weakest fault: at the far end, lowest battery, hot conductors. Greatest: just behind the last device, full battery, every source.");
        html.Open("div", ("class", "charts"));
        int number = 0;
        foreach ((CircuitLine line, ProtectionCurves curves) in drawn)
        {
            html.Open("div", ("class", "levers")).Put("h3", line.Taker.Title)
                .Markup(ProtectionChart.Draw($"protection-{++number}", line.Taker.Title, curves, WidthPx, options.Units, options.Culture)).Close();
        }

        html.Close().Close();
    }
}
