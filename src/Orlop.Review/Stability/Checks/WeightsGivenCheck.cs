using System.Collections.Immutable;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>Everything that weighs has a mass and a place.</summary>
public sealed class WeightsGivenCheck : ICheck<StabilityView>
{
    public CheckDescription Description { get; } = new(
        "weights-given",
        "Mass and place of everything are given",
        "Each gear, large part and deadweight that some condition has aboard, each tank, and the bare boat: whether mass, place, fill and liquid are given; and whether anybody is listed aboard under way (the engine runs, and no shore power) where the rules count people. Small parts (fuses, switches, bars, plugs) without a mass are left out. Only what is missing has a finding.",
        []);

    public IEnumerable<Finding> Run(StabilityView view) => view.Conditions
        .SelectMany(condition => view.LoadedIn(condition).Missing)
        .Distinct()
        .GroupBy(input => input.ThingId)
        .Select(group => Judge(view, group.Key, [.. group]));

    private Finding Judge(StabilityView view, string id, ImmutableArray<FindingInput> missing) =>
        missing.All(input => input.Field == "aboard")
        ? Unknown(Description, id, null, Sentence.Of($"Nobody is listed aboard {string.Join(" and ", view.Conditions.Where(condition => PeopleAboard.Untold(view, condition, view.LoadedIn(condition).Ledger).Any()).Select(condition => FindingLines.In(condition)))}, and the rules count {view.Basis!.PeopleCount!.Value} people: every number on weight and stability there lacks them"), missing)
        : Unknown(Description, id, null, Sentence.Of($"{view.Boat.Find(id)?.Title ?? "The bare boat"}: {string.Join(" and ", missing.Select(input => Words(input.Field)))} not given, and every number on weight and stability lacks it"), missing);

    private static string Words(string field) => field switch
    {
        "massKg" => "mass",
        "place" => "place",
        "fillFraction" => "fill",
        "liquidKgPerM3" => "the liquid's density",
        "lcgM" => "LCG",
        "kgM" => "KG",
        "aboard" => "who is aboard",
        _ => InputWords.Of(field),
    };
}
