using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Presentation.Words;
using Orlop.Work.Readings;
using Orlop.Work.Steps;

namespace Orlop.Work.Paper;

/// <summary>The readings at commissioning, with what is expected and room to write.</summary>
internal static class ReadingPages
{
    public static void Write(HtmlText html, WorkPack pack, PackText text)
    {
        if (pack.Readings.IsEmpty)
        {
            return;
        }

        html.Open("section", ("class", "follows"), ("id", "readings")).Put("h2", "Readings");
        html.Put("p", $"A reading outside its range is a bad joint until shown otherwise. {CommissionSteps.RunLimit} Keep the probes' guards on; one hand where you can.");
        int number = 0;
        foreach (IGrouping<string, PredictedReading> condition in pack.Readings.GroupBy(reading => reading.ConditionId))
        {
            Condition? state = pack.AsAltered.Find<Condition>(condition.Key);
            html.Put("h3", state is null ? condition.Key : Wording.Of(state)).Open("table", ("class", "readings")).Open("thead").Open("tr")
                .Put("th", "", ("class", "tick")).Put("th", "Read", ("scope", "col")).Put("th", "Expect", ("scope", "col")).Put("th", "Accept", ("scope", "col")).Put("th", "Reading", ("scope", "col"))
                .Close().Close().Open("tbody");
            foreach (PredictedReading reading in condition)
            {
                Row(html, reading, (++number).ToString(CultureInfo.InvariantCulture), text);
            }

            html.Close().Close();
        }

        html.Close();
    }

    private static void Row(HtmlText html, PredictedReading reading, string number, PackText text)
    {
        html.Open("tr").Put("td", number, ("class", "tick")).Open("td").Put("b", text.Of(reading.What)).Put("div", reading.Where, ("class", "small")).Close();
        _ = reading.Expected is { } band
            ? html.Put("td", text.Reading(band.Nominal), ("class", "num")).Put("td", text.Range(band), ("class", "accept"))
            : html.Put("td", "unknown").Put("td", reading.WhyNot ?? "", ("class", "small"));
        html.Open("td").Put("span", "", ("class", "write")).Close().Close();
    }
}
