using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Hull.Criteria;
using Orlop.Hull.Measuring;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>The boat has not drifted far from what her latest berth test found.</summary>
public sealed class DriftCheck : ICheck<StabilityView>
{
    private const string Retest = "retest";

    public CheckDescription Description { get; } = new(
        "drift-since-test",
        "Little changed since the latest berth test",
        "What came, went and moved of gear, parts and cables since the latest test that lists what was aboard (what the test marks as carried, such as people and shifted weights, was no part of her; where it does not say and the thing is gone, unknown; unknown too, naming each, where a thing counts with another mass than in the test's list, or was not in it, and no alteration since the test brought it or gave it that mass: criteria are then judged both ways, and unknown where they differ), against 2 % of the light boat's mass, 1 % of her length in LCG and 1 % of KG, when SOLAS II-1/5 wants her inclined anew; tight from half of each, when it wants new stability papers. A measure for a small boat, not a duty.",
        []);

    public IEnumerable<Finding> Run(StabilityView view)
    {
        BerthTest[] tests = [.. view.Boat.All<BerthTest>().Where(test => test.TellsAboard).OrderBy(test => test.On ?? DateOnly.MinValue)];
        BerthTest? latest = tests.LastOrDefault(test => view.Weight.Trouble.All(trouble => trouble.TestId != test.Id)) ?? tests.LastOrDefault();
        return latest is not null && !view.Conditions.IsEmpty ? [Judge(view, latest)] : [];
    }

    private Finding Judge(StabilityView view, BerthTest test)
    {
        HashSet<string> carried = [.. test.Aboard.Where(item => item.IsCarried == true || !IsOfTheBoat(view, item.Id)).Select(item => item.Id)];
        ImmutableArray<LedgerItem> aboard = AboardThen.Of(view.Boat, test);
        AboardItem[] unmarked = [.. test.Aboard.Where(item => item.IsCarried is null && view.Boat.Find(item.Id) is null)];
        if (unmarked.Length > 0)
        {
            string names = string.Join(", ", unmarked.Select(item => item.Id));
            return Unknown(Description, test.Id, null, Sentence.Of($"How far she has drifted since {test.Title} cannot be told: its list does not say whether {names} {(unmarked.Length == 1 ? "was" : "were")} carried or of the boat, and {(unmarked.Length == 1 ? "it is" : "they are")} not there any more"), [new FindingInput(test.Id, "aboard", IsMissing: true)]);
        }

        LedgerItem[] then = [.. aboard.Where(item => !carried.Contains(item.Id))];
        LoadedBoat loaded = view.LoadedIn(view.Conditions[0]);
        LedgerItem[] now = [.. loaded.Ledger.Rows.Where(row => row.Kind != WeightKind.Deadweight).Select(WeightLedger.Item)];
        ImmutableArray<FindingInput> missing = [.. loaded.Missing.Where(input => input.Field != "aboard" && IsOfTheBoat(view, input.ThingId))];
        WeightTotal? whole = view.Weight.Total?.With(TestEvidence.Changes(view.Weight.Aboard, aboard));
        WeightTotal? light = whole?.With(aboard.Where(item => carried.Contains(item.Id)).Select(item => new WeightChange(item, null)));
        if (view.Weight.TestId is null || light is not { MassKg: > 0 })
        {
            return Unknown(Description, test.Id, null, Sentence.Of($"How far she has drifted since {test.Title} cannot be told: what she weighed then is not known, for no berth test counts"), view.Weight.Missing);
        }

        WeightChange[] changes = [.. TestEvidence.Changes([.. then], [.. now]).Where(IsChange)];
        UntoldThing[] untold = [.. view.Untold.Where(one => one.Test.Id == test.Id).SelectMany(one => one.Things)];
        WeightTotal changed = light.With(changes);
        double length = view.Boat.Particulars?.LengthOverAllM?.Value ?? (view.Bodies.Hull is { } hull ? hull.Highest.XM - hull.Lowest.XM : double.NaN);
        if (!(length > 0))
        {
            return Unknown(Description, test.Id, null, Sentence.Of($"How far she has drifted since {test.Title} cannot be told: her length is not given"), [new FindingInput(WhyUnknown.SubjectOf(view), "lengthOverAllM", IsMissing: true)]);
        }

        double mass = changed.MassKg - light.MassKg, lcg = changed.Centre.XM - light.Centre.XM, kg = changed.Centre.ZM - light.Centre.ZM;
        ImmutableArray<CriterionResult> limits = EmptyBoatDrift.Check(test.Title, length, Empty(light), Empty(light)), left = EmptyBoatDrift.Check(test.Title, length, Empty(light), Empty(changed));
        UseOf? use = left.Zip(limits).Where(pair => pair.First.Id.StartsWith(Retest, StringComparison.Ordinal) && pair is { First.Value: not null, Second.Value: not null })
            .Select(pair => (UseOf?)new UseOf(pair.Second.Value!.Value - pair.First.Value!.Value, pair.Second.Value.Value)).MaxBy(used => used!.Value.Fraction);
        Verdict found = VerdictOf(left);
        // What fails without the things of which it is not told whether they came since, fails.
        bool isSure = untold.Length == 0 || (found == Verdict.Fails && VerdictOf(EmptyBoatDrift.Check(test.Title, length, Empty(light), Empty(light.With(changes.Where(change => untold.All(thing => thing.Row.ThingId != change.Now?.Id)))))) == Verdict.Fails);
        Verdict verdict = isSure && (missing.IsEmpty || found == Verdict.Fails) ? found : Verdict.Unknown;
        string end = verdict switch
        {
            Verdict.Fails => "incline her anew",
            Verdict.Tight => "new stability papers are due",
            Verdict.Unknown when untold.Length > 0 => "but whether that came since is not told",
            Verdict.Unknown => "but not all that it takes is given, so this cannot be told",
            _ => "little enough",
        };
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = test.Id,
            Verdict = verdict,
            UseFraction = verdict == Verdict.Unknown ? null : use?.Fraction,
            Headline = changes.Length == 0 && verdict == Verdict.Holds ? Sentence.Of($"Since {test.Title} nothing of the boat herself has come, gone or moved") : Sentence.Of($"Since {test.Title} the boat herself has become {Kg(Math.Abs(mass))} {(mass < 0 ? "lighter" : "heavier")} of {Kg(light.MassKg)}, her centre has moved {M(Math.Abs(lcg))} {(lcg < 0 ? "aft" : "forward")} and {M(Math.Abs(kg))} {(kg < 0 ? "down" : "up")}: {end}{HowToTell(untold)}"),
            Working =
            [
                .. changes.Select(change => ChangeLine(view, change)),
                new WorkingLine("Light boat then", "without deadweight and tank liquids", Kg(light.MassKg), "list and berth tests together"),
                .. left.SelectMany(criterion => criterion.Working.Select(Line)),
                .. verdict != Verdict.Unknown && use is { } used ? new[] { Electrics.FindingLines.Use(used.Asked, used.Allowed) } : [],
            ],
            Inputs = untold.Length == 0 ? missing : [.. missing, new FindingInput(test.Id, "aboard")],
            Caution = Caution,
        };
    }

    private static Verdict VerdictOf(ImmutableArray<CriterionResult> left) => left.Any(criterion => criterion.Verdict == CriterionVerdict.Unknown) ? Verdict.Unknown
        : left.Any(criterion => criterion.Verdict == CriterionVerdict.Fails && criterion.Id.StartsWith(Retest, StringComparison.Ordinal)) ? Verdict.Fails
        : left.Any(criterion => criterion.Verdict == CriterionVerdict.Fails) ? Verdict.Tight : Verdict.Holds;

    private static Sentence HowToTell(UntoldThing[] untold) => untold.Length == 0 ? Sentence.Of($"")
        : Sentence.Of($": {UntoldThing.Names([.. untold])}. What was aboard then as it is now: correct it in the test's list (Change on Berth tests). What was exchanged or fitted since: record that as an alteration");

    private static EmptyBoat Empty(WeightTotal total) => new(total.MassKg, total.Centre.XM, total.Centre.ZM > 0 ? total.Centre.ZM : null);

    // What is not in the boat any more was part of her where the test's list says that it was not carried.
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
