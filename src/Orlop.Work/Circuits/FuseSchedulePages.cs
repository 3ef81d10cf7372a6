using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Words;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Work.Paper;

namespace Orlop.Work.Circuits;

/// <summary>The schedule of fuses and breakers.</summary>
internal static class FuseSchedulePages
{
    private const int MostNamed = 4;

    public static void Write(HtmlText html, ElectricalSheet sheet, PackText text)
    {
        if (sheet.Protection.IsEmpty)
        {
            return;
        }

        html.Open("section", ("id", "fuses")).Put("h2", "Fuses and breakers").Put("p", "Replace like with like: rating, kind and what it can break. A larger one is never a remedy.");
        html.Open("table", ("class", "named")).Open("thead").Open("tr");
        foreach (string head in new[] { "Device", "Rating", "Kind", "Breaks", "Where", "Feeds", "Not well" })
        {
            html.Put("th", head, ("scope", "col"));
        }

        html.Close().Close().Open("tbody");
        foreach (ProtectionLine line in sheet.Protection)
        {
            Protection device = line.Device;
            html.Open("tr").Put("th", device.Title, ("scope", "row"))
                .Put("td", text.Of(new Amount(device.RatedA.Value, "A")), ("data-head", "Rating"))
                .Put("td", $"{(device.Means == ProtectionMeans.Fuse ? "fuse" : "breaker")}, {Times(device)}", ("data-head", "Kind"))
                .Put("td", device.BreakingA is { } breaking ? text.Of(new Amount(breaking.Value, "A")) : QuantityText.Unknown, ("data-head", "Breaks"))
                .Put("td", device.Space is { } space ? sheet.Boat.Find(space)?.Title ?? space : QuantityText.Unknown, ("data-head", "Where"))
                .Put("td", Feeds(line), ("data-head", "Feeds"))
                .Put("td", string.Join("; ", line.Findings.Take(2).Select(finding => text.Of(finding.Headline))), ("data-head", "Not well"))
                .Close();
        }

        html.Close().Close().Close();
    }

    private static string Times(Protection device) => DeviceGates.ListedOf(device) is { } gates ? Wording.OfGates(gates)
        : device.OwnTimes.Count > 0 ? "times from its sheet"
        : device.Gates is null ? "times not known"
        : $"times not known (those given are of {(device.Means == ProtectionMeans.Fuse ? "a breaker" : "a fuse")})";

    private static string Feeds(ProtectionLine line) => line.Feeds.IsEmpty ? line.From.IsEmpty ? "nothing yet" : $"takes what {string.Join(", ", line.From.Select(part => part.Title))} gives" : line.Feeds.Length <= MostNamed
        ? string.Join(", ", line.Feeds.Select(part => part.Title))
        : $"{string.Join(", ", line.Feeds.Take(MostNamed - 1).Select(part => part.Title))} and {line.Feeds.Length - MostNamed + 1} more";
}
