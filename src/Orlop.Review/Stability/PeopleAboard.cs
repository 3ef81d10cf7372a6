using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Measuring;
using Orlop.Review.Findings;

namespace Orlop.Review.Stability;

/// <summary>The people that a condition lists, and the boat with another number of them.</summary>
internal static class PeopleAboard
{
    /// <summary>A person of the rules for small craft (MGN 280, ISO 12217-1).</summary>
    public const double PersonKg = 75;

    /// <summary>What a person is taken to weigh in a condition: 75 kg of the rules, or what the heaviest of those listed weigh, whichever is more.</summary>
    public static double PersonKgIn(StabilityView view, LoadedBoat loaded) => Of(view, loaded)
        .Select(row => view.Boat.Find<Deadweight>(row.ThingId)?.MassKg?.Value ?? 0)
        .Append(PersonKg).Max();

    /// <summary>Who is aboard, where that is missed: under way (the engine runs, and no shore power) with nobody listed, though the rules give people. Otherwise nothing.</summary>
    public static IEnumerable<FindingInput> Untold(StabilityView view, Condition condition, WeightLedger ledger) =>
        view.Basis?.PeopleCount is > 0 && condition is { EngineRuns: true, OnShore: false } && !ledger.HasPeople(view.Boat) && ledger.Missing.All(input => !IsPeople(view, input.ThingId))
            ? [Unlisted(view)] : [];

    private static bool IsPeople(StabilityView view, string id) => view.Boat.Find<Deadweight>(id) is { Use: DeadweightUse.People };

    // From the deck edge to where people stand at the side (common practice, no source).
    private const double InboardM = 0.2;

    /// <summary>Their rows of the ledger.</summary>
    public static WeightRow[] Of(StabilityView view, LoadedBoat loaded) =>
        [.. loaded.Ledger.Rows.Where(row => IsPeople(view, row.ThingId))];

    /// <summary>Conditions that list people.</summary>
    public static Condition[] Manned(StabilityView view) => [.. view.Conditions.Where(condition => Of(view, view.LoadedIn(condition)).Length > 0)];

    /// <summary>Where people are listed, or a first row of them that is still to be made.</summary>
    public static FindingInput Unlisted(StabilityView view) =>
        new(view.Boat.All<Deadweight>().FirstOrDefault(deadweight => deadweight.Use == DeadweightUse.People)?.Id ?? "deadweight", "aboard", IsMissing: true);

    /// <summary>The boat with so many in place of those listed, and where they are: from the middle of those listed, moved as asked.</summary>
    public static (LoadedBoat Boat, Place At) With(StabilityView view, LoadedBoat loaded, double massKg, Func<Place, Place> moved)
    {
        WeightRow[] people = Of(view, loaded);
        double listed = people.Sum(row => row.MassKg);
        double Middle(Func<Place, double> along) => people.Sum(row => row.MassKg * along(row.Place)) / listed;
        Place at = moved(new Place(Middle(place => place.XM), Middle(place => place.YM), Middle(place => place.ZM)));
        LedgerItem all = new("people", massKg, 0, WeightLedger.At(at), default);
        return (loaded.Instead(view.Weight, [.. people.Select(row => row.ThingId)], all)!, at);
    }

    /// <summary>The boat as listed; and, where people are listed and the rules give a greater number, with so many of them where the listed ones are. Each with how to say it.</summary>
    public static IEnumerable<(LoadedBoat Boat, string With)> ListedAndMost(StabilityView view, LoadedBoat loaded)
    {
        yield return (loaded, "");
        double listed = Of(view, loaded).Sum(row => row.MassKg);
        if (view.Basis?.PeopleCount is { } most && listed > 0 && most * PersonKgIn(view, loaded) is var all && all > listed)
        {
            yield return (With(view, loaded, all, middle => middle).Boat, FormattableString.Invariant($"{most} people aboard"));
        }
    }

    /// <summary>The boat with so many at one side, as far forward and as high as those listed, and where they are.</summary>
    /// <param name="view">The boat.</param>
    /// <param name="loaded">A condition that lists people.</param>
    /// <param name="count">How many.</param>
    /// <param name="side">1 for starboard, -1 for port.</param>
    public static (LoadedBoat Boat, Place At) ToOneSide(StabilityView view, LoadedBoat loaded, int count, int side) =>
        With(view, loaded, count * PersonKgIn(view, loaded), middle => middle with { YM = -side * Math.Max(0, (DeckEdge.HalfBreadthM(view.Boat, middle.XM, -side) ?? 0) - InboardM) });
}
