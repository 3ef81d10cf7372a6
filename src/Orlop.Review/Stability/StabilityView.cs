using System.Collections.Concurrent;
using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Floating;
using Orlop.Hull.Measuring;
using Orlop.Hull.Surfaces;
using Orlop.Review.Practices;
using InclinationTest = Orlop.Boat.Things.InclinationTest;

namespace Orlop.Review.Stability;

/// <summary>What the checks of stability read: the boat, her hull, her weight, and how she floats in each condition, found when first asked for. Safe from several threads.</summary>
public sealed class StabilityView
{
    private const double SeaWaterKgPerM3 = 1025;

    private readonly Memo _memo;
    private readonly Lazy<ImmutableArray<(BerthTest Test, ImmutableArray<UntoldThing> Things)>> _untold;
    private readonly ConcurrentDictionary<string, LoadedBoat> _loaded = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, UnderAtRest?> _under = new(StringComparer.Ordinal);

    public StabilityView(BoatModel boat, Practice? practice, Memo memo)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(memo);
        Boat = boat;
        Practice = practice;
        _memo = memo;
        Bodies = memo.Get(boat.Things.Where(thing => thing is HullLines).ToValueList(), () => HullBodies.Of(boat));
        Weight = memo.Get(
            (Bodies, boat.Things.Where(thing => thing is BerthTest or BareBoat or Particulars or Orlop.Boat.Things.Tank).ToValueList(), boat.All<BerthTest>().SelectMany(test => AboardThen.Of(boat, test)).ToValueList()), () => BoatWeighing.Of(boat, Bodies));
        Conditions = [.. boat.All<Condition>()];
        Basis = boat.All<StabilityBasis>().FirstOrDefault();
        _untold = new(FindUntold);
    }

    public BoatModel Boat { get; }

    /// <summary>The chosen practice; null when the boat has chosen none.</summary>
    public Practice? Practice { get; }

    public ImmutableArray<Condition> Conditions { get; }

    /// <summary>What holds her up.</summary>
    public HullBodies Bodies { get; }

    /// <summary>How many of her stations nobody measured, within a sentence; null where all are, or it is not told.</summary>
    public string? NotMeasured => UnmeasuredStations.Of(Boat.All<HullLines>().FirstOrDefault());

    /// <summary>What is known of her weight.</summary>
    public BoatWeight Weight { get; }

    /// <summary>What she is judged by; null when nothing is chosen.</summary>
    public StabilityBasis? Basis { get; }

    /// <summary>Rules that her stability is held against are chosen.</summary>
    public bool HasRules => Basis is { Rules.Count: > 0 };

    /// <summary>Density of the water she floats in.</summary>
    public double WaterKgPerM3 => Boat.Particulars?.WaterDensityKgPerM3?.Value ?? SeaWaterKgPerM3;

    /// <summary>The boat has something to float her by: lines, or a weight.</summary>
    public bool IsAsked => Bodies.Hull is not null || !Bodies.Problems.IsEmpty || Boat.Things.Any(thing => thing is BareBoat or BerthTest or StabilityBasis);

    /// <summary>The boat as loaded in a condition.</summary>
    public LoadedBoat LoadedIn(Condition condition) => _loaded.GetOrAdd(condition.Id, _ => Load(condition));

    /// <summary>How she floats in a condition; null when her weight or her hull is not known.</summary>
    public FloatingBoat? FloatingIn(Condition condition)
    {
        LoadedBoat loaded = LoadedIn(condition);
        return loaded.Input is not { } input
            ? null
            : _memo.Get((KeyOf(input), OpeningsIn(condition).ToValueList()), () => FloatingBoat.Of(input, OpeningsIn(condition)));
    }

    /// <summary>Heel at which the deck edge first goes under along a curve of levers, in degrees without a sign; null where it stays dry, or there are no lines.</summary>
    public double? EdgeUnderDeg(RightingCurve curve)
    {
        ArgumentNullException.ThrowIfNull(curve);
        return curve.FirstUnderDeg(DeckEdge.Of(Boat)) is { } heel ? Math.Abs(heel) : null;
    }

    /// <summary>What is under water where she comes to rest in a condition, or may be; where KG alone is not known, at the waterline of her freeboards. Null where nothing is, or she has no such place.</summary>
    public UnderAtRest? UnderAtRestIn(Condition condition) => _under.GetOrAdd(condition.Id, _ => LoadedIn(condition) is { WithoutKg: not null } loaded
        ? UnderAtRest.OfFreeboards(this, loaded) : UnderAtRest.Of(this, LoadedIn(condition), FloatingIn(condition)?.Rest));

    /// <summary>Each berth test with the things of which nobody told whether they are what was aboard then, the one that tells what was aboard first; empty where all is told.</summary>
    internal ImmutableArray<(BerthTest Test, ImmutableArray<UntoldThing> Things)> Untold => _untold.Value;

    /// <summary>The same boat as if what nobody told of had been aboard at each test as it is now; null where all is told.</summary>
    internal StabilityView? IfSame => Untold.IsEmpty ? null : _memo.Get((nameof(IfSame), Boat, Practice), () =>
    {
        Dictionary<string, BerthTest> corrected = Untold.ToDictionary(one => one.Test.Id, one => UntoldThing.Corrected(one.Test, one.Things), StringComparer.Ordinal);
        return new StabilityView(Boat.WithThings(Boat.Things.Select(thing => corrected.GetValueOrDefault(thing.Id) ?? thing)), Practice, _memo);
    });

    /// <summary>Where a boat loaded otherwise than a condition lists comes to rest; null without a hull or a weight.</summary>
    internal FloatingResult? RestOf(LoadedBoat loaded) => loaded.Input is { } input ? _memo.Get((nameof(RestOf), KeyOf(input)), () => Equilibrium.Solve(input)) : null;

    /// <summary>What of a space lies inside the hull; null without a hull.</summary>
    internal BoxCutResult? InsideOf(Space space) => Bodies.Hull is { } hull
        ? _memo.Get((hull, space.Title, space.From, space.To), () => BoxCut.Calculate(space.Title, hull, WeightLedger.At(space.From), WeightLedger.At(space.To)))
        : null;

    /// <summary>How sure what is read of her at rest in a condition is.</summary>
    internal NearbyRests NearbyIn(Condition condition) => NearbyOf(LoadedIn(condition), FloatingIn(condition)?.Rest);

    /// <summary>The same of a boat loaded otherwise than a condition lists.</summary>
    internal NearbyRests NearbyOf(LoadedBoat loaded, FloatingResult? rest) => new(loaded, loaded is not { Input: { } input, Total: { } total } ? [] : _memo.Get(
        (nameof(NearbyOf), KeyOf(input), total.MassDeviationKg, total.LcgDeviationM, total.TcgDeviationM, total.KgDeviationM), () => NearbyRests.Solved(loaded, rest)));

    /// <summary>Openings through which water comes in a condition: all that are not shut, or do not keep water out when shut; of an open boat, or one of whose well the sides are not known, the corners of her deck edge too.</summary>
    public ImmutableArray<Opening> OpeningsIn(Condition condition) =>
    [
        .. Boat.All<HullOpening>()
            .Where(opening => opening.IsWayIn && !(opening.IsTightWhenShut == true && opening.ShutIn.Contains(condition.Id)))
            .SelectMany(opening => OpeningCorners.Of(Boat, opening)),
        .. OpeningsGiven.IsOverEdge(Boat) ? DeckEdge.Of(Boat) : [],
    ];

    /// <summary>Where she floats with a thing at another place, for a hand that drags it; null where that is not known, or where the thing has no weight of its own in the condition.</summary>
    public FloatingResult? RestWith(Condition condition, string thingId, Place place)
    {
        if (FloatingIn(condition) is not { } known || LoadedIn(condition) is not { Total: { } total, Input: { } input } loaded)
        {
            return null;
        }

        WeightChange[] changes = [.. loaded.Ledger.Rows.Where(row => row.ThingId == thingId).Select(row => new WeightChange(WeightLedger.Item(row), WeightLedger.Item(row with { Place = place })))];
        if (changes.Length == 0)
        {
            return null;
        }

        WeightTotal moved = total.With(changes);
        return Equilibrium.Solve(input with { MassKg = moved.MassKg, CentreOfGravity = moved.Centre }, known.Rest.Position?.Attitude);
    }

    /// <summary>A freeboard survey as read; throws an <see cref="ArgumentException"/> that says why it cannot be.</summary>
    public FreeboardResult Read(Orlop.Boat.Things.FreeboardSurvey survey) => new TestEvidence(Boat, Bodies).Read(survey);

    /// <summary>A rolling test as read; throws an <see cref="ArgumentException"/> that says why it cannot be.</summary>
    public RollingReading Read(RollingTest rolling) => new TestEvidence(Boat, Bodies).Read(rolling);

    /// <summary>How far below the lowest point of her hull the GM of a rolling test puts her centre of gravity, in m; null where it does not, or where her displacement then is not known.</summary>
    public double? BelowKeelM(RollingTest rolling)
    {
        if (Bodies.Hull is not { } hull || (Weight.Total ?? Weight.WithoutKg) is not { } about)
        {
            return null;
        }

        try
        {
            double below = hull.Lowest.ZM - new TestEvidence(Boat, Bodies).ReadKgM(rolling, Weight.Aboard, about);
            return below > 0 ? below : null;
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    /// <summary>An inclining test as read, with the displacement that all evidence gives; throws an <see cref="ArgumentException"/> that says why it cannot be.</summary>
    public InclinationFound Read(InclinationTest inclining) => new TestEvidence(Boat, Bodies).Read(inclining, Weight.Aboard, Weight.Total ?? Weight.WithoutKg);

    /// <summary>Tanks that were slack at a rolling or an inclining test, and what they took from the GM that it read; null at a freeboard survey, or where none was.</summary>
    public SlackAtTest? SlackAt(BerthTest test) => test is RollingTest or InclinationTest ? new TestEvidence(Boat, Bodies).Slack(test, Weight.Aboard, Weight.Total ?? Weight.WithoutKg) : null;

    /// <summary>Many draws of her weight in a condition, each held against the general criteria; null when her weight or her hull is not known. Takes a second or more: only when asked, and remembered once it is whole.</summary>
    public StabilitySamplingResult? DrawnIn(Condition condition, IProgress<double>? progress = null, CancellationToken token = default)
    {
        token.ThrowIfCancellationRequested();
        if (LoadedIn(condition) is not { Input: { } input, Total: { } total, Missing.IsEmpty: true })
        {
            return null;
        }

        WeightSpread spread = total.Spread();
        ImmutableArray<Opening> openings = OpeningsIn(condition);
        return _memo.Get(
            (KeyOf(input), spread.Covariance.ToValueList(), openings.ToValueList()),
            () => StabilitySampling.Calculate(new StabilitySamplingInput { Boat = input, Weight = spread, Openings = openings }, progress, token));
    }

    /// <summary>Where the deck edge stands lowest over the water in a condition, and how high; null where she has no position of rest or no lines.</summary>
    public (string Where, double HeightM)? LeastFreeboardIn(Condition condition) =>
        FloatingIn(condition)?.Rest is { Status: FloatingStatus.Floats, Position: { } at } && DeckEdge.Lowest(DeckEdge.Of(Boat), at.Attitude) is { } lowest ? (lowest.Place.Id, lowest.HeightM) : null;

    /// <summary>All tanks with the liquid that a condition puts in them, filled so far as a rule asks.</summary>
    internal ImmutableArray<Orlop.Hull.Floating.Tank> TanksIn(Condition condition, double fillFraction) =>
        Liquids.Of(Boat.WithThings(Boat.Things.Select(thing => thing is Orlop.Boat.Things.Tank tank ? tank with { Fills = [], FillFraction = fillFraction } : thing)), condition, Bodies).Tanks;

    private ImmutableArray<(BerthTest Test, ImmutableArray<UntoldThing> Things)> FindUntold()
    {
        // Gear, parts and cables are aboard in every condition.
        WeightLedger? ledger = Weight.TestId is null || Conditions.IsEmpty ? null : LoadedIn(Conditions[0]).Ledger;
        return ledger is null ? [] :
        [
            .. Boat.All<BerthTest>().OrderByDescending(test => test.Id == Weight.TestId)
                .Select(test => (Test: test, Things: UntoldThing.Of(Boat, test, ledger))).Where(one => !one.Things.IsEmpty),
        ];
    }

    private LoadedBoat Load(Condition condition)
    {
        WeightLedger ledger = WeightLedger.Of(Boat, condition);
        Liquids liquids = Liquids.Of(Boat, condition, Bodies);
        WeightChange[] changes = [.. TestEvidence.Changes(Weight.Aboard, [.. ledger.Rows.Select(WeightLedger.Item)])];
        WeightTotal? total = Weight.Total?.With(changes), withoutKg = Weight.WithoutKg?.With(changes);
        FloatingInput? Afloat(WeightTotal? weight) => weight is { MassKg: > 0 } && Bodies.Hull is not null
            ? new FloatingInput
            {
                Subject = condition.Title,
                Buoyancy = Bodies.All,
                MassKg = weight.MassKg,
                CentreOfGravity = weight.Centre,
                WaterKgPerM3 = WaterKgPerM3,
                Tanks = liquids.Tanks,
            }
            : null;
        return new LoadedBoat
        {
            Condition = condition,
            Ledger = ledger,
            Changes = [.. changes],
            Total = total,
            Weak = Weight.Weak,
            HullNotMeasured = NotMeasured,
            Input = Afloat(total),
            WithoutKg = withoutKg is not null && Afloat(withoutKg) is { } upright ? new AfloatWithoutKg(withoutKg, upright) : null,
            Missing = [.. ledger.Missing, .. liquids.Missing, .. Weight.Total is null ? Weight.Missing : [], .. PeopleAboard.Untold(this, condition, ledger)],
        };
    }

    // Bodies and tank shapes are the same objects while nothing of them is edited.
    private object KeyOf(FloatingInput input) => (
        Bodies, input.Subject, input.MassKg, input.CentreOfGravity, input.WaterKgPerM3,
        Boat.All<Orlop.Boat.Things.Tank>().ToValueList());
}
