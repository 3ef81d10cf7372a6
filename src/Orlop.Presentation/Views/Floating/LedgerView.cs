using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Hull.Measuring;
using Orlop.Hull.Surfaces;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Words;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>A line of the weight ledger as it is read.</summary>
/// <param name="ThingId">The thing it comes from; null for a sum.</param>
/// <param name="Title">What people call it.</param>
/// <param name="Kind">What kind of thing.</param>
/// <param name="Mass">Its mass.</param>
/// <param name="PlusMinus">Two standard deviations of the mass.</param>
/// <param name="X">Its centre, forward of the after perpendicular.</param>
/// <param name="Y">Its centre, to port of the centre line.</param>
/// <param name="Z">Its centre, above the base line.</param>
/// <param name="How">How it is known.</param>
/// <param name="IsGuess">Its mass looks guessed, or nothing says how it is known.</param>
/// <param name="IsSmall">It weighs less than a kilogram and does not change: it may be folded away.</param>
/// <param name="Change">"new" or what it weighed as built; null without a draft or where nothing changed.</param>
public sealed record LedgerLine(string? ThingId, string Title, string Kind, string Mass, string PlusMinus, string X, string Y, string Z, string How, bool IsGuess = false, string? Change = null, bool IsSmall = false);

/// <summary>The weight ledger of a boat in a condition: what is listed, what stands in tanks, and the whole boat by list and berth tests together.</summary>
public sealed record LedgerView
{
    private const double SmallKg = 1;

    /// <summary>What is listed aboard and what stands in tanks, the heaviest first.</summary>
    public required IReadOnlyList<LedgerLine> Rows { get; init; }

    /// <summary>Sums: all that is listed, the rest of the boat, the whole boat.</summary>
    public required IReadOnlyList<LedgerLine> Sums { get; init; }

    /// <summary>How the boat's own weight is known.</summary>
    public required string WeightKnown { get; init; }

    /// <summary>What is not given, and what is aboard in no condition; what it belongs to is not in the rows.</summary>
    public required IReadOnlyList<MissingField> Missing { get; init; }

    /// <summary>Berth tests that tell nothing, and tanks whose liquid is in no sum, each with why.</summary>
    public required IReadOnlyList<(string ThingId, string Text)> Trouble { get; init; }

    /// <summary>The rows of a boat's ledger in a condition, liquids in tanks among them.</summary>
    public static IReadOnlyList<WeightRow> RowsOf(StabilityView view, Condition condition) =>
        [.. view.LoadedIn(condition).Ledger.Rows, .. LiquidRows.Of(view.Boat, Liquids.Of(view.Boat, condition, view.Bodies).Tanks)];

    /// <summary>The whole boat in a condition, liquids in tanks with her, with errors; null when her own weight is not known.</summary>
    public static WeightTotal? WholeOf(StabilityView view, Condition condition) =>
        view.LoadedIn(condition).Total is { } total ? WithLiquids(total, RowsOf(view, condition)) : null;

    /// <summary>The view of one boat.</summary>
    /// <param name="view">The boat as shown.</param>
    /// <param name="asBuilt">The boat as built, with a draft open; null without one.</param>
    public static LedgerView Of(StabilityView view, StabilityView? asBuilt, Condition condition, DisplayUnits units, CultureInfo culture)
    {
        LoadedBoat loaded = view.LoadedIn(condition);
        IReadOnlyList<WeightRow> rows = RowsOf(view, condition);
        Dictionary<string, WeightRow>? before = asBuilt is null ? null : RowsOf(asBuilt, condition).DistinctBy(row => row.ThingId).ToDictionary(row => row.ThingId, StringComparer.Ordinal);
        return new LedgerView
        {
            Rows = [.. rows.OrderByDescending(row => row.MassKg).Select(row => Line(view.Boat, row, before, units, culture))],
            Sums = [.. SumsOf(view, condition).Select(sum => Line(sum, units, culture))],
            WeightKnown = KnownBy(view),
            Missing = [.. MissingField.Of(loaded.Missing, view.Boat), .. MissingField.Ashore(view.Boat)],
            Trouble =
            [
                .. view.Weight.Trouble.Select(trouble => (trouble.TestId, $"{view.Boat.Find(trouble.TestId)?.Title ?? trouble.TestId}: {trouble.Message}.")),
                .. view.Boat.All<Tank>().Where(tank => tank.IsHullSided && view.Bodies.Hull is null)
                    .Select(tank => (tank.Id, $"{tank.Title} is sided by the hull, and there is no hull to side it: what stands in it is in no row and no sum.")),
            ],
        };
    }

    /// <summary>What the rows come to, the rest of the boat, and the whole boat; numbers that are not known are null.</summary>
    public static IEnumerable<LedgerSum> SumsOf(StabilityView view, Condition condition)
    {
        LoadedBoat loaded = view.LoadedIn(condition);
        IReadOnlyList<WeightRow> rows = RowsOf(view, condition);
        WeightTotal? listed = WeightTotal.Of(rows.Select(WeightLedger.Item));
        if (listed is not null)
        {
            yield return LedgerSum.Of(SumKind.Listed, listed, "sum of the rows");
        }

        if (loaded.Total is not { } total)
        {
            yield return loaded.WithoutKg is { } afloat
                ? LedgerSum.Of(SumKind.Whole, WithLiquids(afloat.Total, rows), KnownBy(view)) with { ZM = null }
                : new LedgerSum(SumKind.Whole, null, null, null, null, null, KnownBy(view));
            yield break;
        }

        WeightTotal whole = WithLiquids(total, rows);
        double rest = whole.MassKg - (listed?.MassKg ?? 0);
        if (rest > 0)
        {
            Point3 centre = (1 / rest) * ((whole.MassKg * whole.Centre) - ((listed?.MassKg ?? 0) * (listed?.Centre ?? default)));
            yield return new LedgerSum(SumKind.Rest, rest, null, centre.XM, centre.YM, centre.ZM, "the whole less the rows");
        }

        yield return LedgerSum.Of(SumKind.Whole, whole, KnownBy(view));
    }

    /// <summary>A number with a mass in the reader's units, to the kilogram or, below ten, the tenth.</summary>
    public static string Kg(double massKg, DisplayUnits units, CultureInfo culture) => QuantityText.Shown(Math.Round(massKg, Math.Abs(massKg) < 10 ? 1 : 0), "Kg", units, culture);

    /// <summary>Two standard deviations of a mass, as it stands under ±.</summary>
    public static string BandKg(double deviationKg, DisplayUnits units, CultureInfo culture) => FloatingWords.Half(deviationKg, "Kg", units, culture);

    /// <summary>What stands at a table of the ledger: what ± is, and where places are measured from.</summary>
    public const string ColumnNote =
        "± is two standard deviations of the mass; a ± typed with a mass is one. Places are the centre of each: forward of the after perpendicular, to port of the centre line, up from the base line.";

    /// <summary>The mass of a row is no more than an estimate or a guess.</summary>
    public static bool LooksGuessed(WeightRow row) => row.How.EndsWith("guessed", StringComparison.Ordinal) || row.How.EndsWith("estimated", StringComparison.Ordinal);

    /// <summary>Nothing says how the mass of a row is known.</summary>
    public static bool IsUnsaid(WeightRow row) => row.How.EndsWith(WeightLedger.NothingSaid, StringComparison.Ordinal);

    private static LedgerLine Line(BoatModel boat, WeightRow row, Dictionary<string, WeightRow>? before, DisplayUnits units, CultureInfo culture)
    {
        WeightRow? was = before?.GetValueOrDefault(row.ThingId);
        string mass = Kg(row.MassKg, units, culture);
        string? change = before is null || (was is not null && was with { How = row.How, Title = row.Title } == row) ? null
            : was is null ? "new"
            : was.MassKg != row.MassKg ? $"was {Kg(was.MassKg, units, culture)}" : "moved";
        string M(double value) => QuantityText.Shown(Math.Round(value, 2), "M", units, culture);
        return new LedgerLine(
            row.ThingId, row.Title, boat.Find(row.ThingId) is { } thing ? Wording.KindOf(thing) : "", mass, BandKg(row.DeviationKg, units, culture),
            M(row.Place.XM), M(row.Place.YM), M(row.Place.ZM), row.How, LooksGuessed(row) || IsUnsaid(row), change, change is null && row.MassKg < SmallKg);
    }

    private static WeightTotal WithLiquids(WeightTotal total, IReadOnlyList<WeightRow> rows) =>
        total.With(rows.Where(row => row.Kind == WeightKind.Liquid).Select(row => new WeightChange(null, WeightLedger.Item(row))));

    // A whole boat of which nothing is known has one "unknown", in place of its mass; of one that floats without a known KG the height is.
    private static LedgerLine Line(LedgerSum sum, DisplayUnits units, CultureInfo culture)
    {
        string M(double? value) => value is { } m ? FloatingWords.Metres(m, units, culture) : sum.MassKg is null ? "" : QuantityText.Unknown;
        return new LedgerLine(
            null, sum.Title, "", sum.MassKg is { } mass ? Kg(mass, units, culture) : QuantityText.Unknown, sum.DeviationKg is { } deviation ? BandKg(deviation, units, culture) : "",
            M(sum.XM), M(sum.YM), M(sum.ZM), sum.How);
    }

    /// <summary>How the boat's own weight is known, in words.</summary>
    public static string KnownBy(StabilityView view) => view.Weight switch
    {
        { Total: null, WithoutKg: not null } => "displacement, LCG and TCG by the freeboards; the height of her centre (KG) is not known",
        { Total: null } => "her own weight is not known",
        { TestId: null, Trouble.IsEmpty: false } => "bare boat as typed, and the rows; no berth test counts",
        { TestId: null } => "bare boat as typed, and the rows",
        { TestId: { } test } => $"list and berth tests together, from {view.Boat.Find(test)?.Title ?? test} on",
    };
}
