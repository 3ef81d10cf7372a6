using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>How tests at the berth are done: cautions, marks to begin with, and what was aboard.</summary>
public static class BerthTestGuide
{
    // A nanometre, a microgram: what was typed in feet or pounds stays as it is, what reckoning leaves behind does not.
    private const int StoredDecimals = 9;

    /// <summary>What every ± of the tests is and is not, and how many stations nobody measured.</summary>
    public static string Bands(HullLines? lines) =>
        $"± is two standard deviations, from the errors of the tests and of her list alone; errors of the lines are not in it{(UnmeasuredStations.Of(lines) is { } said ? $", and {said}" : "")}.";

    /// <summary>How and when freeboards are measured (common practice, no source).</summary>
    public static IReadOnlyList<string> FreeboardCautions { get; } =
    [
        "Calm water, no wind to speak of, no wash: wait for a quiet hour, and note what passes.",
        "All lines slack, fenders and gangway clear of her, nothing touching the bottom.",
        "Nobody moves while a mark is read. Whoever is aboard is in the list of what was aboard and stands at the place it names; where it names none, on the centre line.",
        "Measure plumb from the mark to the water, from a steady dinghy or pontoon; two people, lifejackets on, neither of them aboard her. Read every mark twice.",
        "Take the water's density with a hydrometer where she lies: a harbour is seldom sea water.",
    ];

    /// <summary>How a roll is timed (common practice, no source).</summary>
    public static IReadOnlyList<string> RollingCautions { get; } =
    [
        "Calm deep water, wind still, all lines slack: a line that comes tight spoils the roll and can part.",
        "Hatches shut, gear stowed and lashed, tanks pressed full or empty: liquid that runs, and people who move, falsify the period.",
        "Lifejackets on, and nobody works alone: a boat or a second person ready ashore.",
        "Start a small roll, 5° or so, by hand at the side or with a pull from the jetty, and then nobody moves. Never bring an opening or the deck edge near the water, never with people on the rail, never with a crane's load hung from her.",
        "A roll is there and back. Count nought when she is furthest over to one side, and one each time she is furthest over to that same side again: who counts at both sides counts half rolls, and finds a GM four times too great. Ten rolls, three times over. Stop if she feels slow or hangs at the end of a roll: that is a warning by itself.",
    ];

    /// <summary>How a boat is inclined (common practice, no source, but for the heel of the largest shift: IS Code annex 1).</summary>
    public static IReadOnlyList<string> InclinationCautions { get; } =
    [
        "Calm water, no wind or current across her, moorings slack, gangway off, nothing touching the bottom: a line that comes tight spoils the reading, and can part.",
        "Nobody moves while a heel is read, and everybody stands in the same place at every reading. Nobody works alone; lifejackets on; a boat or a second person ready ashore.",
        "Small heels: 2° to 4° at the largest shift (2008 IS Code annex 1, as quoted by a national inspectorate). Begin with a tenth of the moment, stop if she heels more than expected, and never bring the deck edge or an opening near the water.",
        "Weights that one can hold and that cannot roll: chock each before letting go. No crane's load hung from her. Lift as two.",
        "Tanks pressed full or empty, cross-connections shut, bilges dry. Shut hatches and seacocks not needed.",
        "Where your code asks for a witnessed test, this one does not replace it.",
    ];

    /// <summary>Marks to begin with: the deck edge to port and starboard at the after end, the middle and forward; unnamed places where the hull has no lines.</summary>
    public static IReadOnlyList<(string Name, Place? Mark)> Marks(BoatModel boat)
    {
        StationPoint[] edge = [.. (boat.All<HullLines>().FirstOrDefault()?.Stations ?? []).Where(station => station.Points.Count > 0).Select(station => station.Points[^1]).Where(point => point.HalfBreadthM > 0)];
        (string Name, StationPoint? Point)[] places = edge.Length < 3
            ? [("Aft", null), ("Forward", null)]
            : [("Aft", edge[0]), ("Amidships", edge[edge.Length / 2]), ("Forward", edge[^1])];
        return
        [
            .. places.SelectMany(place => new[] { (Side: "port", Sign: 1), (Side: "starboard", Sign: -1) }.Select(side => (
                $"{place.Name}, {side.Side}", place.Point is { } point ? new Place(point.XM, side.Sign * point.HalfBreadthM, point.HeightM) : null))),
        ];
    }

    // A liquid's centroid leaves rounding where it lies on the centre line: -6.7E-18 m is no place, and 0.35000000000000003 kg no mass.
    private static double Rounded(double value) => Math.Round(value, StoredDecimals) + 0.0;

    private static Place Rounded(Place place) => new(Rounded(place.XM), Rounded(place.YM), Rounded(place.ZM));

    /// <summary>What is aboard in a condition, liquids too, to be kept with a test as it is now.</summary>
    public static ValueList<AboardItem> Aboard(StabilityView asBuilt, Condition condition) =>
    [
        .. LedgerView.RowsOf(asBuilt, condition).Select(row => new AboardItem(row.ThingId, Rounded(row.MassKg), Rounded(row.Place), Rounded(row.DeviationKg), Rounded(row.PlaceDeviationM), row.Kind is WeightKind.Deadweight or WeightKind.Liquid)),
    ];
}
