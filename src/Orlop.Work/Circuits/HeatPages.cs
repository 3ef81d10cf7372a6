using Orlop.Drawings.Charts;
using Orlop.Presentation.Quantities;
using Orlop.Review.Findings;
using Orlop.Review.Heat;
using Orlop.Work.Paper;

namespace Orlop.Work.Circuits;

/// <summary>How warm spaces and the cables of each way get, on the owner's electrical pages.</summary>
internal static class HeatPages
{
    private const double WidthPx = 345;

    public static void Write(HtmlText html, ElectricalSheet sheet, PackText text, PaperOptions options)
    {
        if (sheet.Condition is not { } condition)
        {
            return;
        }

        SpaceWarmth[] spaces = [.. HeatTable.Spaces(sheet.View, condition)];
        BundleWarmth[] bundles = [.. HeatTable.Bundles(sheet.View, condition)];
        if (spaces.Length + bundles.Length == 0)
        {
            return;
        }

        html.Open("section", ("id", "heat")).Put("h2", "Heat of spaces and cables").Put("p", $"{condition.Title}, everything on for good, still air, clean openings. What is hot ages soon: feel and measure on the first long day.");
        if (spaces.Length > 0)
        {
            Spaces(html, sheet, spaces, text);
            Charts(html, sheet, spaces, options);
        }

        Bundles(html, bundles, text);
        html.Close();
    }

    private static void Spaces(HtmlText html, ElectricalSheet sheet, SpaceWarmth[] spaces, PackText text)
    {
        Head(html, "Space", "Heat in it", "Gets to", "By the share of the time", "Full rating up to", "Openings for that, low and high");
        foreach (SpaceWarmth warmth in spaces)
        {
            double? limit = HeatTable.LimitC(sheet.View, warmth.Space);
            html.Open("tr").Put("th", warmth.Space.Title, ("scope", "row"))
                .Put("td", Of(text, warmth.Missing.IsEmpty ? warmth.HeatW : null, "W"), ("data-head", "Heat in it"))
                .Put("td", warmth.WhyNone ?? Of(text, warmth.Most?.InsideC, "C"), ("data-head", "Gets to"))
                .Put("td", Of(text, warmth.Mean?.InsideC, "C"), ("data-head", "By the share of the time"))
                .Put("td", Of(text, limit, "C"), ("data-head", "Full rating up to"))
                .Put("td", Needed(text, warmth, limit), ("data-head", "Openings for that, low and high"))
                .Close();
        }

        html.Close().Close();
    }

    private static string Needed(PackText text, SpaceWarmth warmth, double? limitC) => (limitC is { } at ? warmth.OpeningNeededCm2(at) : null) switch
    {
        null when limitC is not null && warmth.Input is not null => "none is enough",
        null => QuantityText.Unknown,
        <= 0 => "none needed",
        { } needed => text.Of(new Amount(needed, "Cm2")),
    };

    private static void Charts(HtmlText html, ElectricalSheet sheet, SpaceWarmth[] spaces, PaperOptions options)
    {
        html.Open("div", ("class", "charts"));
        int number = 0;
        foreach (SpaceWarmth warmth in spaces)
        {
            if (warmth.Response() is { Moments.Length: > 1 } response)
            {
                html.Open("div", ("class", "levers")).Put("h3", warmth.Space.Title)
                    .Markup(HeatChart.Draw($"heat-{++number}", warmth.Space.Title, response, null, HeatTable.LimitC(sheet.View, warmth.Space), "full rating up to", WidthPx, options.Units, options.Culture)).Close();
            }
        }

        html.Close();
    }

    private static void Bundles(HtmlText html, BundleWarmth[] bundles, PackText text)
    {
        if (bundles.Length == 0)
        {
            return;
        }

        Head(html, "Way", "Cables", "Hottest", "Carries", "May by the table", "Copper by the network", "Insulation bears");
        foreach (BundleWarmth bundle in bundles)
        {
            BundleCable? worst = bundle.Worst;
            html.Open("tr").Put("th", bundle.Way.Title, ("scope", "row"))
                .Put("td", bundle.Cables.Length.ToString(System.Globalization.CultureInfo.InvariantCulture), ("data-head", "Cables"))
                .Put("td", worst?.Cable.Title ?? bundle.Result?.WhyNone ?? QuantityText.Unknown, ("data-head", "Hottest"))
                .Put("td", Of(text, worst?.CurrentA, "A"), ("data-head", "Carries"))
                .Put("td", Of(text, worst?.TableA, "A"), ("data-head", "May by the table"))
                .Put("td", Of(text, worst?.ConductorC, "C"), ("data-head", "Copper by the network"))
                .Put("td", Of(text, worst?.Cable.InsulationC?.Value, "C"), ("data-head", "Insulation bears"))
                .Close();
        }

        html.Close().Close();
    }

    private static void Head(HtmlText html, params ReadOnlySpan<string> heads)
    {
        html.Open("table", ("class", "named")).Open("thead").Open("tr");
        foreach (string head in heads)
        {
            html.Put("th", head, ("scope", "col"));
        }

        html.Close().Close().Open("tbody");
    }

    private static string Of(PackText text, double? value, string suffix) => value is { } known ? text.Of(new Amount(known, suffix)) : QuantityText.Unknown;
}
