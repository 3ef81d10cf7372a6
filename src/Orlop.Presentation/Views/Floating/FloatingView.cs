using System.Globalization;
using Orlop.Boat;
using Orlop.Hull.Floating;
using Orlop.Presentation.Quantities;
using Orlop.Review.Findings;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>How a boat floats in a condition, as tiles: each number with two standard deviations, and as built against a draft.</summary>
public sealed record FloatingView
{
    /// <summary>What the condition is called.</summary>
    public required string Condition { get; init; }

    /// <summary>Why there is no position, or what is wrong with it; null where nothing is.</summary>
    public required string? Trouble { get; init; }

    /// <summary>How grave that is: she capsizes or goes under, or it cannot be told.</summary>
    public required Verdict TroubleVerdict { get; init; }

    /// <summary>Displacement, draughts, trim, heel, GM and range.</summary>
    public required IReadOnlyList<Vital> Tiles { get; init; }

    /// <summary>What is not given and would change the numbers.</summary>
    public required IReadOnlyList<MissingField> Missing { get; init; }

    /// <summary>The tiles that stand on the boat's page.</summary>
    public IReadOnlyList<Vital> Short => [.. Tiles.Where(tile => tile.Name is DisplacementName or TrimName or HeelName or GmName)];

    /// <summary>The same tiles while they are being worked out, so that what stands below them keeps its place.</summary>
    public static IReadOnlyList<Vital> Pending { get; } =
        [.. new[] { DisplacementName, TrimName, HeelName, GmName }.Select(name => new Vital { Name = name, Value = "…", Of = "being worked out" })];

    private const string DisplacementName = "Displacement";
    private const string TrimName = "Trim";
    private const string HeelName = "Heel";
    private const string GmName = "GM";
    private const double OtherHeelDeg = 1;

    /// <summary>The view of one boat.</summary>
    /// <param name="view">The boat as shown.</param>
    /// <param name="facts">How she floats.</param>
    /// <param name="was">How she floats as built, with a draft open; null without one.</param>
    public static FloatingView Of(StabilityView view, FloatingFacts facts, FloatingFacts? was, DisplayUnits units, CultureInfo culture)
    {
        Vital[] before = was is null ? [] : [.. Tiled(view, was, units, culture)];
        return new FloatingView
        {
            Condition = facts.Condition.Title,
            Trouble = FloatingWords.Trouble(view, facts, units, culture),
            TroubleVerdict = FloatingWords.TroubleVerdict(facts),
            Tiles = [.. Tiled(view, facts, units, culture).Select((tile, index) => was is null || before[index].Value == tile.Value ? tile : tile with { Was = WasOf(before[index], facts, was, units, culture) })],
            Missing = [.. MissingField.Hull(view.Boat).Concat(MissingField.Of(facts.Loaded.Missing, view.Boat)).Concat(MissingField.Deck(view.Boat)).Distinct()],
        };
    }

    // A GM at one heel is no measure of a GM at another: where she lay is said with it.
    private static string WasOf(Vital before, FloatingFacts facts, FloatingFacts was, DisplayUnits units, CultureInfo culture) =>
        before.Name == GmName && facts.Position is { } now && was is { Fills: false, Position: { } then } && Math.Abs(now.Attitude.HeelDeg - then.Attitude.HeelDeg) >= OtherHeelDeg
            ? $"{before.Value}, {FloatingWords.Heel(then.Attitude.HeelDeg, units, culture)}" : before.Value;

    private static IEnumerable<Vital> Tiled(StabilityView view, FloatingFacts facts, DisplayUnits units, CultureInfo culture)
    {
        BoatModel boat = view.Boat;
        FloatingPosition? at = facts.Position;
        FloatingDeviations deviations = facts.Deviations;
        // Numbers that rest on a list with gaps are not sure.
        Verdict? doubt = FloatingWords.TroubleVerdict(facts) == Verdict.Fails && (at is null || facts.Fills) ? Verdict.Fails : at is null || facts.Under is not null || view.Weight is not { Contradiction: null, Impossible: null } || !facts.Loaded.Missing.IsEmpty ? Verdict.Unknown : null;
        string Band(double deviation, string suffix) => facts.Draughts.IsEmpty && at is null ? "" : FloatingWords.Band(deviation, suffix, units, culture);
        Vital Tile(string name, string? value, string of) => new() { Name = name, Value = value ?? (facts.Capsizes ? FloatingWords.None : QuantityText.Unknown), Of = of, Verdict = doubt };

        string[] weighed = [.. new[] { Band(deviations.MassKg, "Kg"), FloatingWords.Nobody(boat, facts) }.Where(words => words.Length > 0)];
        yield return Tile(DisplacementName, facts.MassKg is { } mass ? QuantityText.Shown(Math.Round(mass), "Kg", units, culture) : null, string.Join("; ", weighed));
        foreach (int index in Enumerable.Range(0, 3))
        {
            DraughtAt? draught = facts.Draughts.ElementAtOrDefault(index);
            string name = index switch { 0 => "Draught aft", 1 => "Draught amidships", _ => "Draught forward" };
            yield return Tile(name, draught is null ? null : FloatingWords.Metres(draught.DraughtM, units, culture),
                draught is null ? "" : index == 1 ? Band(deviations.DraughtM, "M") : $"over the base line, at x\u00A0{FloatingWords.Metres(draught.XM, units, culture)}");
        }

        yield return Tile(TrimName, facts.TrimM is { } trim ? FloatingWords.Trim(trim, units, culture) : null, Band(deviations.TrimM, "M"));
        yield return Tile(HeelName, (at?.Attitude.HeelDeg ?? facts.CapsizedHeelDeg) is { } heel ? FloatingWords.Heel(heel, units, culture) : null, at is null ? "" : Band(deviations.HeelDeg, "Deg"));
        yield return facts is { Fills: true, Under: { } under } ? Tile(GmName, FloatingWords.Filling, $"no GM of hers: {under.Title} is under water")
            : Tile(GmName, facts.GmM is { } gm ? FloatingWords.Metres(gm, units, culture) : null, at is null ? "" : $"{Band(deviations.GmM, "M")}{FloatingWords.At(at.Attitude.HeelDeg, units, culture)}");
        (string value, string of) = FloatingWords.Range(boat, facts, units, culture);
        yield return Tile("Range of stability", value, of) with { Verdict = OpeningsGiven.IsAny(boat) || doubt == Verdict.Fails ? doubt : Verdict.Unknown };
    }
}
