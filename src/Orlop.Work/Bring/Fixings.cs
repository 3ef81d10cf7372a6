using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using Orlop.Review.Ways;
using Orlop.Work.Scope;
using Orlop.Work.Steps;
using Orlop.Work.Tables;

namespace Orlop.Work.Bring;

/// <summary>
/// What holds cables and things: clips by the supports that each way tells, screws, bolts, glands, grommets, sealant and glue. What nobody has told is counted by common practice (no source), and says so;
/// stock is found by a word of its name. Of what holds gear that lifts or pulls nothing is counted: its maker or designer says.
/// </summary>
internal static class Fixings
{
    private sealed record Held(Thing Thing, Quantity? Mass, bool IsLight);

    public static IEnumerable<BringItem> Of(PackScope scope, ImmutableArray<CableCut> cuts, IReadOnlyList<StockItem> stock)
    {
        Clipped[] clipped = [.. cuts.GroupBy(cut => cut.CableId, StringComparer.Ordinal).Select(cable => Clipped.Of(scope, cable)).Where(cable => cable.Count > 0)];
        int clips = clipped.Sum(cable => cable.Count);
        Held[] all = [.. Things(scope)], lifting = [.. all.Where(thing => Pulls(thing.Thing))], held = [.. all.Except(lifting)], light = [.. held.Where(thing => thing.IsLight)], bolted = [.. held.Where(thing => !thing.IsLight)];
        if (clips > 0)
        {
            yield return ClipLine.Of(clipped, stock);
        }

        if (clips + light.Length > 0)
        {
            yield return new PieceNeed("screws", BringKind.Fastening, Sentence.Of($"Screws"), clips + (light.Length * Allowances.FixingsEachCount), Ids(light), item => StockWords.Is(item.Title, "screw"))
            {
                Remarks = [.. clips > 0 ? [Sentence.Of($"{clips} for the clips.")] : Array.Empty<Sentence>(), .. light.Select(Each), Measure],
            }.Match(stock);
        }

        if (bolted.Length > 0)
        {
            yield return new PieceNeed("bolts", BringKind.Fastening, Sentence.Of($"Bolts with nuts and washers"), bolted.Length * Allowances.FixingsEachCount, Ids(bolted), item => StockWords.Is(item.Title, "bolt"))
            {
                Remarks = [.. bolted.Select(Each), Measure, Sentence.Of($"Whether they are strong enough is not worked out here.")],
            }.Match(stock);
            yield return Look(scope, "backing-plates", Sentence.Of($"Backing plates or large washers behind what pulls: {Titles(bolted)}"), "plate", "backing");
        }

        if (lifting.Length > 0)
        {
            yield return OfLifting(lifting);
        }

        foreach (BringItem item in Holes(scope, bolted.Length + lifting.Length > 0, stock))
        {
            yield return item;
        }

        if (clips > 0)
        {
            yield return Look(scope, "glue", Sentence.Of($"Glue and bases for clips where no screw may go: hull side, tanks, plating"), "glue", "adhesive", "epoxy");
        }
    }

    // Lifting gear, and what takes a rope's pull (by a word of its name; common practice, no source).
    private static bool Pulls(Thing thing) => TrialLifts.IsLifting(thing) || (thing is Gear or ElectricLoad && StockWords.Says(thing.Title, "winch", "winches", "windlass", "windlasses", "capstan", "hauler"));

    // What holds it is reckoned by whoever makes or designs it: no count, no size and no stock are told of it.
    private static BringItem OfLifting(Held[] lifting) => new()
    {
        Key = "lifting-fixings",
        Kind = BringKind.Fastening,
        What = Sentence.Of($"What holds gear that lifts or pulls: {Titles(lifting)}"),
        State = StockState.Look,
        Remarks =
        [
            Sentence.Of($"Number, size and grade of bolts, backing plates, what they go through: as its maker, or whoever designs it, says. Not known here: strength is not worked out, and nothing is taken from stock."),
            Sentence.Of($"Until that is told nothing is lifted or pulled with it."),
        ],
        For = Ids(lifting),
    };

    // Holes that are still to be made, each with what guards its edge; what goes through a deck or bulkhead is sealed.
    private static IEnumerable<BringItem> Holes(PackScope scope, bool isBolted, IReadOnlyList<StockItem> stock)
    {
        PassedHole[] made =
        [
            .. scope.Of(ChangeKind.Cable).Where(change => !change.IsBuilt).Select(change => change.Thing).OfType<Cable>().SelectMany(cable => PassedHole.On(cable, scope.Whole))
                .Where(hole => !hole.Hole.IsMade || (hole.Index < 0 && IsNew(scope, hole.Way))).DistinctBy(hole => (hole.Way.Id, hole.Index)),
        ];
        foreach ((EdgeGuard guard, string key, string name, string word) in new[] { (EdgeGuard.Gland, "glands", "Glands", "gland"), (EdgeGuard.Grommet, "grommets", "Grommets", "grommet") })
        {
            PassedHole[] own = [.. made.Where(hole => hole.Hole.Guard == guard)];
            if (own.Length > 0)
            {
                yield return new PieceNeed(key, BringKind.Fastening, Sentence.Of($"{name}, one for each hole that is made"), own.Length, [.. own.Select(hole => hole.Way.Id).Distinct()], item => StockWords.Is(item.Title, word))
                {
                    Remarks = [Sentence.Of($"For: {string.Join("; ", own.Select(hole => hole.Hole.Where))}."), Sentence.Of($"Of a size that fits hole and cable: look.")],
                }.Match(stock);
            }
        }

        PassedHole[] bare = [.. made.Where(hole => hole.Hole.Guard is null or EdgeGuard.Bare)];
        if (bare.Length > 0)
        {
            yield return Look(scope, "edge-guards", Sentence.Of($"What keeps the edge off the cable; nobody has said what: {string.Join("; ", bare.Select(hole => hole.Hole.Where))}"), "grommet", "gland", "edging");
        }

        if (made.Length > 0 || isBolted)
        {
            yield return Look(scope, "sealant", Sentence.Of($"Sealant for every hole through deck, hull or bulkhead"), "sealant");
        }
    }

    private static bool IsNew(PackScope scope, Way way) => scope.Changes.Any(change => change is { IsAddition: true, IsBuilt: false } && change.Id == way.Id);

    // A fuse or breaker that is exchanged for one of its form keeps the holder or place that is there.
    private static IEnumerable<Held> Things(PackScope scope) =>
        from change in scope.Of(ChangeKind.Fit, ChangeKind.Move, ChangeKind.Exchange)
        where !change.IsBuilt && change.Thing is Part or Gear && !(change.Kind == ChangeKind.Exchange && change.Thing is Protection && !DeviceMounts.IsRemounted(change))
        let mass = change.Thing switch { Part part => part.MassKg, Gear gear => gear.MassKg, _ => null }
        select new Held(change.Thing, mass, mass is not { Value: var massKg } || massKg < Allowances.BoltedFromKg);

    private static Sentence Each(Held held) => held.Mass is { } mass
        ? Sentence.Of($"{Allowances.FixingsEachCount} for {held.Thing.Title}, {new Amount(mass.Value, "Kg")}.")
        : IsSmall(held.Thing) ? Sentence.Of($"{Allowances.FixingsEachCount} for {held.Thing.Title}.")
        : Sentence.Of($"{Allowances.FixingsEachCount} for {held.Thing.Title}, mass not given: weigh it; from {new Amount(Allowances.BoltedFromKg, "Kg")} on bolts with nuts and washers instead, and a backing plate behind what pulls.");

    // What is screwed down whatever it weighs.
    private static bool IsSmall(Thing thing) => thing is Protection or IsolatorSwitch or Changeover or PlugAndSocket or Busbar;

    private static Sentence Measure => Sentence.Of($"{Allowances.FixingsEachCount} for each thing is common practice, no source: look at its feet, and measure what it stands on.");

    private static ImmutableArray<string> Ids(Held[] held) => [.. held.Select(thing => thing.Thing.Id)];

    private static string Titles(Held[] held) => string.Join("; ", held.Select(thing => thing.Thing.Title));

    private static BringItem Look(PackScope scope, string key, Sentence what, params string[] words) => SafetyLines.Line(scope, key, what, null, words) with { Key = key, Kind = BringKind.Fastening };
}
