using Orlop.Presentation.Quantities;
using Orlop.Presentation.Words;
using Orlop.Review.Electrics;
using Orlop.Review.Electrics.AcSide;
using Orlop.Review.Findings;
using Orlop.Work.Paper;

namespace Orlop.Work.Circuits;

/// <summary>The AC side, mode by mode: what a fault to earth does, and what ends it.</summary>
internal static class AcSidePages
{
    public static void Write(HtmlText html, ElectricalSheet sheet, PackText text)
    {
        if (sheet.AcSide.IsEmpty)
        {
            return;
        }

        html.Open("section", ("id", "ac-side")).Put("h2", "AC side: faults to earth");
        html.Open("div", ("class", "caution"), ("role", "note")).Put("b", "Mains voltage kills.").Text($" {Cautions.EarthFault}").Close();
        html.Open("table", ("class", "named")).Open("thead").Open("tr");
        foreach (string head in new[] { "Circuit", "Fed from", "Neutral to earth", "Loop, hot", "Loop, as read", "Fault", "On the metal", "Ended by", "Ends in" })
        {
            html.Put("th", head, ("scope", "col"));
        }

        html.Close().Close().Open("tbody");
        foreach (AcRow row in sheet.AcSide)
        {
            html.Open("tr").Put("th", row.Taker.Title, ("scope", "row"))
                .Put("td", row.Source.Title, ("data-head", "Fed from"))
                .Put("td", AcWords.Bond(row.BondPlaces), ("data-head", "Neutral to earth"))
                .Put("td", row.IsLimited ? "limited by its source" : Of(row.LoopOhm, "Ohm", text), ("data-head", "Loop, hot"))
                .Put("td", row.IsLimited && row.ColdLoopOhm is null ? "does not apply" : $"about {Of(row.ColdLoopOhm, "Ohm", text)}, at most {Of(Steps.AcTests.MostColdOhm(row), "Ohm", text)}", ("data-head", "Loop, as read"))
                .Put("td", Of(row.FaultA, "A", text), ("data-head", "Fault"))
                .Put("td", Of(row.TouchV, "V", text), ("data-head", "On the metal"))
                .Put("td", AcWords.EndedBy(row.HasEarth, row.EndedBy?.Title), ("data-head", "Ended by"))
                .Put("td", $"{Of(row.EndsS, "S", text)}, at most {Of(row.PermittedS, "S", text)}", ("data-head", "Ends in"))
                .Close();
        }

        html.Close().Close().Put("p", $"A fault of no resistance from live to the metal of what takes power. Hot: conductors at the temperature of their insulation. As read: what a loop tester should show with everything cold, and the most it may show so that the fault is still ended in time when the conductors are warm. {QuantityText.Unknown}: it cannot be told; its finding says why.", ("class", "small")).Close();
    }

    private static string Of(double? value, string suffix, PackText text) => value is { } known ? text.Of(new Amount(known, suffix)) : QuantityText.Unknown;
}
