using Orlop.Work.Paper;

namespace Orlop.Work.Circuits;

/// <summary>The whole wiring in one line, a stretch from bar to bar a row.</summary>
internal static class WiringPages
{
    public static void Write(HtmlText html, ElectricalSheet sheet, PaperOptions options)
    {
        // The way back is told by the bars; each stretch out is drawn once.
        HashSet<string> all = [.. sheet.Chains.SelectMany(chain => chain.Out).Select(item => item.Thing.Id)];
        if (!sheet.Circuits.IsEmpty)
        {
            DiagramPages.Write(html, "One-line diagram, bar by bar", sheet.AsBuilt, sheet.Boat, all, options);
        }
    }
}
