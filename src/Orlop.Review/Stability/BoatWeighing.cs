using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Hull.Measuring;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Working;
using Orlop.Review.Findings;
using FreeboardSurvey = Orlop.Boat.Things.FreeboardSurvey;

namespace Orlop.Review.Stability;

/// <summary>
/// Puts together the list and the berth tests into one estimate of mass, LCG, TCG and KG (weighted least squares, the list as prior), for the boat as she was at her latest
/// freeboard survey, or at her latest other test where there is none.
/// </summary>
internal sealed class BoatWeighing
{
    // Says no more of KG than that it is not told: the numbers read from it do not rest on it.
    private const double KeelDeviationM = 0.001;

    // Gauss-Newton: the righting moment is a product of displacement and KG.
    private const int MostRounds = 6;
    private const double SmallFraction = 1e-6;

    private readonly BoatModel _boat;
    private readonly HullBodies _bodies;
    private readonly TestEvidence _tests;
    private readonly ImmutableArray<TestTrouble>.Builder _trouble = ImmutableArray.CreateBuilder<TestTrouble>();

    private BoatWeighing(BoatModel boat, HullBodies bodies)
    {
        _boat = boat;
        _bodies = bodies;
        _tests = new TestEvidence(boat, bodies);
    }

    public static BoatWeight Of(BoatModel boat, HullBodies bodies)
    {
        BoatWeighing weighing = new(boat, bodies);
        BoatWeight weight = weighing.Weigh();
        return weight.Total is { } total
            ? weight with { Metacentre = weighing.MetacentreOf(total), Weak = [.. weighing.WeakOf(weight)], Impossible = ImpossibleCentre.Find(boat, bodies, weight) } : weight;
    }

    // An inclining test counts by what its line is worth; that this is little is said.
    private IEnumerable<WeakTest> WeakOf(BoatWeight weight) =>
        from test in _boat.All<Orlop.Boat.Things.InclinationTest>()
        let share = weight.KgShareFraction(test.Id)
        where share is not null
        let why = _tests.Read(test, weight.Aboard, weight.Total).Fit.Cautions
        where !why.IsEmpty
        select new WeakTest(test.Id, test.Title, string.Join("; ", why), share.Value);

    // Null where she has no hull, or would not float as she was.
    private MetacentreThen? MetacentreOf(WeightTotal total)
    {
        try
        {
            return _tests.MetacentreOf(total);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    private BoatWeight Weigh()
    {
        LedgerItem? bare = Bare(out ImmutableArray<FindingInput> missing);
        BerthTest[] tests = [.. _boat.All<BerthTest>().Where(test => test.TellsAboard).OrderBy(test => test.On ?? DateOnly.MinValue)];
        _trouble.AddRange(_boat.All<BerthTest>().Where(test => !test.TellsAboard).Select(test => new TestTrouble(test.Id, "what was aboard is not written down")));
        return From(tests, bare, missing);
    }

    // A test that does not count is no reference either: what came and went since the last one that counts is all that adds to its errors.
    private BoatWeight From(BerthTest[] tests, LedgerItem? bare, ImmutableArray<FindingInput> missing)
    {
        BerthTest? reference = tests.OfType<FreeboardSurvey>().LastOrDefault() ?? tests.LastOrDefault();
        if (reference is null)
        {
            return ListAlone(bare, missing);
        }

        ImmutableArray<LedgerItem> aboard = AboardThen.Of(_boat, reference);
        ImmutableArray<LedgerItem> ledger = bare is null ? [] : [bare, .. aboard];
        try
        {
            BoatWeight found = Combined(reference, tests, aboard, ledger, bare, missing);
            if (tests.Length == 1 || _trouble.All(trouble => trouble.TestId != reference.Id))
            {
                return found;
            }

            // What kept another test from counting may have been this one.
            BerthTest[] others = [.. tests.Where(test => test != reference)];
            _trouble.RemoveAll(trouble => others.Any(test => test.Id == trouble.TestId));
            return From(others, bare, missing);
        }
        catch (ArgumentException refused)
        {
            _trouble.Add(new TestTrouble(reference.Id, RefusalWords.Of(refused)));
            return new BoatWeight(null, reference.Id, aboard, [], [], missing, _trouble.ToImmutable());
        }
    }

    // A place off the water plane depends on KG, KM on displacement: round again from the estimate until it stays. Without the bare boat's own figures the freeboards begin.
    private BoatWeight Combined(BerthTest reference, BerthTest[] tests, ImmutableArray<LedgerItem> aboard, ImmutableArray<LedgerItem> ledger, LedgerItem? bare, ImmutableArray<FindingInput> missing)
    {
        WeightTotal? first = ledger.IsEmpty ? OfFreeboards(reference.Title, tests, aboard) : WeightTotal.Of(ledger);
        ImmutableArray<WeightEvidence> evidence = Evidence(tests, aboard, first);
        if (evidence.IsEmpty)
        {
            return ListAlone(bare, [.. missing, .. WhatTestsLack()]);
        }

        WeightEstimateOutcome outcome = WeightEstimate.Combine(reference.Title, ledger, evidence);
        for (int round = 0; round < MostRounds && outcome.Estimate is { } rough; round++)
        {
            evidence = Evidence(tests, aboard, WeightTotal.Of(rough));
            outcome = WeightEstimate.Combine(reference.Title, ledger, evidence);
            if (outcome.Estimate is { } better && Math.Abs(better.MassKg - rough.MassKg) <= SmallFraction * rough.MassKg && (better.Centre - rough.Centre).LengthM <= SmallFraction)
            {
                break;
            }
        }

        Contradiction? contradiction = outcome.Estimate is { } told ? Contradiction.Of(_boat, told) : null;
        return (outcome.Estimate, first) switch
        {
            ({ } estimate, _) => new BoatWeight(
                WeightTotal.Of(estimate).Widened(contradiction?.WiderRatio ?? 1), reference.Id, aboard, estimate.Fits, [.. estimate.Working, .. contradiction is null ? [] : new[] { contradiction.Step }], [], _trouble.ToImmutable())
            {
                Listed = ledger,
                Evidence = evidence,
                Contradiction = contradiction,
            },
            (_, { } afloat) => new BoatWeight(null, reference.Id, aboard, [], [], [.. missing.Where(input => input.Field == "kgM")], _trouble.ToImmutable()) { WithoutKg = afloat },
            _ => new BoatWeight(null, reference.Id, aboard, [], [], [.. missing, .. WhatTestsLack()], [.. _trouble, new TestTrouble(reference.Id, $"{outcome.Missing}; a freeboard survey tells displacement and where her centre lies along and across, an inclining or rolling test KG, the bare boat's own figures all of them")]),
        };
    }

    // Mass, LCG and TCG from the freeboard surveys alone, the centre taken at the keel: she is upright there, and what is measured afloat comes out again. Null where no survey can be read.
    private WeightTotal? OfFreeboards(string subject, BerthTest[] tests, ImmutableArray<LedgerItem> aboard)
    {
        BerthTest[] surveys = [.. tests.OfType<FreeboardSurvey>()];
        if (surveys.Length == 0 || _bodies.Hull is not { } hull)
        {
            return null;
        }

        WeightEvidence keel = WeightEvidence.OfKg("keel", hull.Lowest.ZM, KeelDeviationM);
        WeightTotal? about = null;
        for (int round = 0; round < 2; round++)
        {
            about = WeightEstimate.Combine(subject, [], [.. Evidence(surveys, aboard, about), keel]).Estimate is { } estimate ? WeightTotal.Of(estimate) : null;
        }

        return about;
    }

    // No test counts: the bare boat as typed, if there is one.
    private BoatWeight ListAlone(LedgerItem? bare, ImmutableArray<FindingInput> missing) => bare is null
        ? new BoatWeight(null, null, [], [], [], missing, _trouble.ToImmutable())
        : new BoatWeight(WeightTotal.Of([bare]), null, [], [], [BareLine(bare)], missing, _trouble.ToImmutable());

    private ImmutableArray<FindingInput> WhatTestsLack() =>
        _bodies.Hull is null ? [new FindingInput(_boat.All<HullLines>().FirstOrDefault()?.Id ?? "hull-lines", "stations", IsMissing: _bodies.Problems.IsEmpty)] : [];

    private ImmutableArray<WeightEvidence> Evidence(BerthTest[] tests, ImmutableArray<LedgerItem> aboard, WeightTotal? about)
    {
        ImmutableArray<WeightEvidence>.Builder evidence = ImmutableArray.CreateBuilder<WeightEvidence>();
        foreach (BerthTest test in tests.OrderBy(test => test is FreeboardSurvey ? 0 : 1))
        {
            try
            {
                evidence.AddRange(_tests.Of(test, aboard, about));
            }
            catch (ArgumentException refused)
            {
                if (_trouble.All(known => known.TestId != test.Id))
                {
                    _trouble.Add(new TestTrouble(test.Id, RefusalWords.Of(refused)));
                }
            }
        }

        return evidence.ToImmutable();
    }

    private LedgerItem? Bare(out ImmutableArray<FindingInput> missing)
    {
        BareBoat? bare = _boat.All<BareBoat>().FirstOrDefault();
        if (bare is { MassKg: { } mass, LcgM: { } lcg, KgM: { } kg })
        {
            missing = [];
            Point3 deviation = new(lcg.PlusMinus ?? 0.3, bare.TcgM?.PlusMinus ?? 0.05, kg.PlusMinus ?? 0.15);
            return new LedgerItem(bare.Id, mass.Value, WeightKnowledge.DeviationKg(mass), new Point3(lcg.Value, bare.TcgM?.Value ?? 0, kg.Value), deviation);
        }

        string id = bare?.Id ?? "bare-boat";
        missing =
        [
            .. new[] { ("massKg", bare?.MassKg), ("lcgM", bare?.LcgM), ("kgM", bare?.KgM) }.Where(field => field.Item2 is null).Select(field => new FindingInput(id, field.Item1, IsMissing: true)),
        ];
        return null;
    }

    private static WorkingStep BareLine(LedgerItem bare) =>
        new("bare boat", FormattableString.Invariant($"as typed, ± {2 * bare.MassDeviationKg:0.#} kg, two standard deviations; no test of the whole boat counts"), bare.MassKg, "kg", "owner's figure");
}
