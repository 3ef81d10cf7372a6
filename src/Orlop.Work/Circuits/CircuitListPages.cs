using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Review.Findings;
using Orlop.Work.Paper;

namespace Orlop.Work.Circuits;

/// <summary>The list of circuits.</summary>
internal static class CircuitListPages
{
    public static void Write(HtmlText html, ElectricalSheet sheet, PackText text)
    {
        html.Open("section", ("class", "follows"), ("id", "circuits")).Put("h2", "Circuits");
        if (sheet.Circuits.IsEmpty)
        {
            html.Put("p", "No part of the boat takes power yet.").Close();
            return;
        }

        html.Open("table", ("class", "named")).Open("thead").Open("tr");
        foreach (string head in new[] { "Circuit", "Fed from", "Through", "Cable", "Runs at", "Sees at least", "Weakest fault" })
        {
            html.Put("th", head, ("scope", "col"));
        }

        html.Close().Close().Open("tbody");
        foreach (CircuitLine line in sheet.Circuits)
        {
            html.Open("tr").Put("th", line.Taker.Title, ("scope", "row"))
                .Put("td", line.From?.Title ?? "nothing", ("data-head", "Fed from"))
                .Put("td", string.Join(", ", line.Devices.Select(device => Named(device, text))), ("data-head", "Through"))
                .Put("td", string.Join("; ", line.Cables.Select(cable => Sized(cable, text))), ("data-head", "Cable"))
                .Put("td", Of(line.RunningA, "A", sheet, text), ("data-head", "Runs at"))
                .Put("td", Of(line.LeastV, "V", sheet, text), ("data-head", "Sees at least"))
                .Put("td", Of(line.WeakestFaultA, "A", sheet, text), ("data-head", "Weakest fault"))
                .Close();
        }

        html.Close().Close().Put("p", $"{(sheet.Conditions.Length > 1 ? "Each over all conditions, with that in which it stands so. " : "")}Runs at: the greatest, at normal charge, everything of the condition on. Sees at least: lowest charge, no charger. Weakest fault: at the end of its last cable. –: it is off then, or cannot be told.", ("class", "small")).Close();
    }

    private static string Of(ToldIn? told, string suffix, ElectricalSheet sheet, PackText text) => told is null ? "–"
        : $"{text.Of(new Amount(told.Value, suffix))}{(sheet.Conditions.Length > 1 ? $", {told.Condition.Title}" : "")}{(told.UntoldCount > 0 ? $"; {told.UntoldCount} more cannot be told" : "")}";

    private static string Named(Part device, PackText text) =>
        device is Protection protection ? $"{device.Title} {text.Of(new Amount(protection.RatedA.Value, "A"))}" : device.Title;

    private static string Sized(Cable cable, PackText text) => string.Create(CultureInfo.InvariantCulture,
        $"{text.Of(new Amount(cable.AreaMm2.Value, "Mm2"))}, {(cable.LengthM is { } length ? text.Of(new Amount(length.Value, "M")) : QuantityText.Unknown)}");
}
