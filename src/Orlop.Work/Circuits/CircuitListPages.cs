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
                .Put("td", Of(line.RunningA, "A", text), ("data-head", "Runs at"))
                .Put("td", Of(line.LeastV, "V", text), ("data-head", "Sees at least"))
                .Put("td", Of(line.WeakestFaultA, "A", text), ("data-head", "Weakest fault"))
                .Close();
        }

        html.Close().Close().Put("p", "Runs at: normal charge, everything of the condition on. Sees at least: lowest charge, no charger. Weakest fault: at the end of its last cable. –: it is off then, or cannot be told.", ("class", "small")).Close();
    }

    private static string Of(double? value, string suffix, PackText text) => value is { } known ? text.Of(new Amount(known, suffix)) : "–";

    private static string Named(Part device, PackText text) =>
        device is Protection protection ? $"{device.Title} {text.Of(new Amount(protection.RatedA.Value, "A"))}" : device.Title;

    private static string Sized(Cable cable, PackText text) => string.Create(CultureInfo.InvariantCulture,
        $"{text.Of(new Amount(cable.AreaMm2.Value, "Mm2"))}, {(cable.LengthM is { } length ? text.Of(new Amount(length.Value, "M")) : QuantityText.Unknown)}");
}
