using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Hull.Measuring;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>The boat has not drifted far from what her latest berth test found.</summary>
public sealed class DriftCheck : IStabilityCheck
{
    private const double MostMassFraction = 0.02;
    private const double MostLcgFraction = 0.01;
    private const double TightShare = 0.5;
    private const string Source = "SOLAS II-1/5.4-5.5, MSC.429(98)/Rev.1";

    public CheckDescription Description { get; } = new(
        "drift-since-test",
        "Little changed since the latest berth test",
        "What came, went and moved of gear, parts and cables since the latest test that lists what was aboard, against 2 % of the light boat's mass and 1 % of her length in LCG, when SOLAS wants her inclined anew; tight from half of that, when it wants new stability papers. A measure for a small boat, not a duty.",
        []);

    public IEnumerable<Finding> Run(StabilityView view)
    {
        BerthTest? latest = view.Boat.All<BerthTest>().Where(test => test.Aboard.Count > 0).OrderBy(test => test.On ?? DateOnly.MinValue).LastOrDefault();
        return latest is not null && !view.Conditions.IsEmpty ? [Judge(view, latest)] : [];
    }

    private Finding Judge(StabilityView view, BerthTest test)
    {
        LedgerItem[] then = [.. BoatWeighing.ItemsOf(test).Where(item => IsOfTheBoat(view, item.Id))];
        LoadedBoat loaded = view.LoadedIn(view.Conditions[0]);
        LedgerItem[] now = [.. loaded.Ledger.Rows.Where(row => row.Kind != WeightKind.Deadweight).Select(WeightLedger.Item)];
        ImmutableArray<FindingInput> missing = [.. loaded.Missing.Where(input => IsOfTheBoat(view, input.ThingId))];
        ImmutableArray<LedgerItem> aboard = BoatWeighing.ItemsOf(test);
        WeightTotal? whole = view.Weight.Total?.With(TestEvidence.Changes(view.Weight.Aboard, aboard));
        WeightTotal? light = whole?.With(aboard.Where(item => !IsOfTheBoat(view, item.Id)).Select(item => new WeightChange(item, null)));
        if (light is not { MassKg: > 0 })
        {
            return Unknown(Description, test.Id, null, Sentence.Of($"How far she has drifted since {test.Title} cannot be told: what she weighed then is not known"), view.Weight.Missing);
        }

        WeightChange[] changes = [.. TestEvidence.Changes([.. then], [.. now]).Where(IsChange)];
        WeightTotal changed = light.With(changes);
        double length = view.Boat.Particulars?.LengthOverAllM?.Value ?? (view.Bodies.Hull is { } hull ? hull.Highest.XM - hull.Lowest.XM : double.NaN);
        double mass = changed.MassKg - light.MassKg, lcg = changed.Centre.XM - light.Centre.XM;
        double use = Math.Max(Math.Abs(mass) / (MostMassFraction * light.MassKg), Math.Abs(lcg) / (MostLcgFraction * length));
        Verdict found = !double.IsFinite(use) ? Verdict.Unknown : use > 1 ? Verdict.Fails : use >= TightShare ? Verdict.Tight : Verdict.Holds;
        Verdict verdict = missing.IsEmpty ? found : found == Verdict.Fails ? found : Verdict.Unknown;
        string end = verdict switch
        {
            Verdict.Fails => "incline her anew",
            Verdict.Tight => "new stability papers are due",
            Verdict.Unknown => "but a mass or a place is not given, so this cannot be told",
            _ => "little enough",
        };
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = test.Id,
            Verdict = verdict,
            UseFraction = verdict == Verdict.Unknown ? null : use,
            Headline = Sentence.Of($"Since {test.Title} the boat herself has become {Kg(Math.Abs(mass))} {(mass < 0 ? "lighter" : "heavier")} of {Kg(light.MassKg)}, her LCG has moved {M(Math.Abs(lcg))} {(lcg < 0 ? "aft" : "forward")}: {end}"),
            Working =
            [
                .. changes.Select(change => ChangeLine(view, change)),
                new WorkingLine("Light boat then", "without deadweight and tank liquids", Kg(light.MassKg), "list and berth tests together"),
                new WorkingLine("May change by", "2 % of the light boat", Kg(MostMassFraction * light.MassKg), Source),
                new WorkingLine("LCG may move by", "1 % of length", double.IsFinite(length) ? M(MostLcgFraction * length) : null, Source),
            ],
            Inputs = missing,
            Caution = Caution,
        };
    }

    // What is not in the boat any more counts as having been part of her: nothing says that it was not.
    private static bool IsOfTheBoat(StabilityView view, string id) => view.Boat.Find(id) is not (Deadweight or Tank);

    // A better known mass or place of the same thing is not a change of the boat.
    private static bool IsChange(WeightChange change) => change.Was?.MassKg != change.Now?.MassKg || change.Was?.Place != change.Now?.Place;

    private static WorkingLine ChangeLine(StabilityView view, WeightChange change)
    {
        string id = (change.Now ?? change.Was)!.Id;
        string what = (change.Was, change.Now) switch
        {
            (null, { } now) => FormattableString.Invariant($"came, at {now.Place}"),
            ({ } was, null) => FormattableString.Invariant($"went, from {was.Place}"),
            var (was, now) => FormattableString.Invariant($"{was!.MassKg:0.#} kg at {was.Place} is now {now!.MassKg:0.#} kg at {now.Place}"),
        };
        return new WorkingLine(view.Boat.Find(id)?.Title ?? id, what, Kg((change.Now?.MassKg ?? 0) - (change.Was?.MassKg ?? 0)), "list of the test and list now");
    }
}
