using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Presentation.Views.Floating;
using Orlop.Presentation.Views.Hulls;
using Orlop.Review.Stability;
using Orlop.Work.Paper;

namespace Orlop.Work.Loading;

/// <summary>What the numbers of a sheet rest on: lines, water, weights, tanks, openings, tests; and what holds in every condition.</summary>
internal static class SheetBasis
{
    private const int MostNamedCount = 8;

    public static void Write(HtmlText html, LoadingSheet sheet, SheetText text, PaperOptions options)
    {
        html.Open("section", ("class", "follows")).Put("h2", "What it rests on").Open("ul", ("class", "basis"));
        foreach (string line in Lines(sheet, text, options))
        {
            html.Put("li", line);
        }

        html.Close();
        if (!sheet.Always.IsEmpty)
        {
            html.Put("h3", "In every condition");
            SheetConditionPages.CriteriaTable(html, sheet, null, sheet.Always, text);
        }

        html.Close();
    }

    private static IEnumerable<string> Lines(LoadingSheet sheet, SheetText text, PaperOptions options)
    {
        StabilityView view = sheet.Shown;
        BoatModel boat = view.Boat;
        HullLines? lines = boat.All<HullLines>().FirstOrDefault();
        yield return lines is null ? "Hull: no lines are given."
            : $"Hull: {lines.Title}, {lines.Stations.Count} stations{(lines.StarboardStations.Count > 0 ? ", each side by itself" : ", both sides taken as alike")}{(lines.Note is { Length: > 0 } note ? $"; {note.TrimEnd('.')}" : "; who measured them is not written down")}.";
        if (HullWords.NotMeasured(lines) is { } form)
        {
            yield return form;
        }

        yield return view.Bodies.Doubts.IsEmpty ? "No measured point stands off the run of its neighbours." : $"{view.Bodies.Doubts.Length} measured points stand off the run of their neighbours: measure them again.";
        yield return lines is { TightHouses.Count: > 0 } ? $"Deckhouses that hold her up: {string.Join(", ", lines.TightHouses.Select(house => house.Name))}; they must be shut." : "No deckhouse is counted.";
        yield return FloatingWords.Water(view, options.Units, options.Culture);
        yield return $"Her own weight: {LedgerView.KnownBy(view)}.";
        foreach (BerthTest test in boat.All<BerthTest>().OrderBy(test => test.On))
        {
            yield return Test(view, test, options);
        }

        WeightRow[] bare = [.. AllRows(sheet).Where(LedgerView.IsUnsaid)];
        if (bare.Length == 0 || AllRows(sheet).Any(LedgerView.LooksGuessed))
        {
            yield return Estimated(sheet, text);
        }

        if (bare.Length > 0)
        {
            yield return $"Masses taken as guessed, 30 % for one standard deviation, because nothing says how they are known: {Things(bare.Length)}, {text.Kg(bare.Sum(row => row.MassKg))} together; the heaviest: {Heaviest(bare, text)}.";
        }

        yield return Tanks(boat);
        yield return Openings(boat);
        yield return "Levers are solved with free trim and liquids that run, to both sides; each side is judged by the weaker. Still water, nothing swings, nothing shifts, no water on deck.";
        yield return FloatingWords.Deck(boat, options.Units, options.Culture);
        if (sheet.Conditions.All(condition => condition.Condition.Motion is null))
        {
            yield return "No motion is stated for these conditions: no accelerations are told.";
        }

        yield return "A criterion whose band of two standard deviations reaches its limit is unknown. It is settled by the berth test that its line names.";
    }

    private static string Test(StabilityView view, BerthTest test, PaperOptions options)
    {
        string day = test.On is { } on ? $", {on.ToString("d MMM yyyy", options.Culture)}" : ", no day given";
        string? trouble = view.Weight.Trouble.FirstOrDefault(trouble => trouble.TestId == test.Id)?.Message;
        return trouble is null
            ? $"Berth test: {test.Title}{day}, {(test.IsBare ? "nothing of the list aboard" : $"{Things(test.Aboard.Count)} aboard written down")}."
            : $"Berth test that does not count: {test.Title}{day}: {trouble}.";
    }

    private static string Estimated(LoadingSheet sheet, SheetText text)
    {
        WeightRow[] rows = [.. AllRows(sheet).Where(LedgerView.LooksGuessed)];
        if (rows.Length == 0)
        {
            return "No mass in the list is estimated or guessed.";
        }

        return $"Masses only estimated or guessed, {Things(rows.Length)}, {text.Kg(rows.Sum(row => row.MassKg))} together; the heaviest: {Heaviest(rows, text)}. Weigh them.";
    }

    private static IEnumerable<WeightRow> AllRows(LoadingSheet sheet) =>
        sheet.Conditions.SelectMany(condition => LedgerView.RowsOf(sheet.Shown, condition.Condition)).DistinctBy(row => row.ThingId).OrderByDescending(row => row.MassKg);

    private static string Heaviest(WeightRow[] rows, SheetText text) => string.Join(", ", rows.Take(MostNamedCount).Select(row => $"{row.Title} {text.Kg(row.MassKg)}"));

    private static string Things(int count) => count == 1 ? "1 thing" : $"{count} things";

    private static string Tanks(BoatModel boat)
    {
        Tank[] tanks = [.. boat.All<Tank>()];
        return tanks.Length == 0 ? "No tank is entered." : $"Tanks: {string.Join(", ", tanks.Select(tank => $"{tank.Title}, {(tank.IsHullSided ? "sided by the hull" : "a box")}"))}.";
    }

    private static string Openings(BoatModel boat)
    {
        HullOpening[] openings = [.. boat.All<HullOpening>().Where(opening => opening.IsWayIn)];
        if (openings.Length == 0)
        {
            return OpeningsGiven.IsOverEdge(boat) ? "No opening is entered: water comes in over the deck edge." : "No opening is entered: where water comes in is not known, and no angle of downflooding is in these numbers.";
        }

        string[] placeless = [.. openings.Where(opening => opening.WaterEntersAt is null).Select(opening => opening.Title)];
        return $"Openings: {string.Join(", ", openings.Select(opening => $"{opening.Title}{(opening.IsTightWhenShut == true ? " (tight when shut)" : opening.IsTightWhenShut == false ? " (not tight)" : " (not said whether tight)")}"))}{(placeless.Length > 0 ? $"; without a place, and so not in the numbers: {string.Join(", ", placeless)}" : "")}{(OpeningsGiven.IsOverEdge(boat) ? "; water comes in over the deck edge too" : "")}.";
    }
}
