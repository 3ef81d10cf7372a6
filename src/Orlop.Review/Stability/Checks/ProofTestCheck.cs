using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Hull.Criteria;
using Orlop.Hull.Floating;
using Orlop.Hull.Hydrostatics;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>She would pass a simplified proof test, as far as that can be foreseen.</summary>
public sealed class ProofTestCheck : ICheck<StabilityView>
{
    private const double PersonKg = 83.9;
    private const double TestFillFraction = 0.75;
    private static readonly ImmutableArray<string> Ids = ["us-proof-immersion", "us-proof-heel"];

    public CheckDescription Description { get; } = new(
        "proof-test",
        "Simplified proof test",
        "The moment of 46 CFR 178.330, the greater of people to one side and wind, put on her as computed: freeboard that may go under, and 14° (from memory); where the owner chose it, with the most people of 83.9 kg (46 CFR 170.090) where the condition lists some and all tanks three-quarters full, on the worse side. To 19.8 m. The test itself is done afloat, before an inspector.",
        [])
    {
        IsCriterion = true,
    };

    public IEnumerable<Finding> Run(StabilityView view)
    {
        if (view.Basis is not { } basis || !basis.Rules.Contains(StabilityRule.SimplifiedUnited))
        {
            return [];
        }

        FindingInput[] missing = [.. Missing(view.Boat, basis)];
        if (missing.Length > 0)
        {
            return Ids.Select(id => Unknown(Description, Subject(basis, id), null, Sentence.Of($"Whether she would pass a simplified proof test cannot be told: not all that it rests on is given"), [.. missing]));
        }

        Condition[] manned = PeopleAboard.Manned(view);
        return manned.Length == 0
            ? Ids.Select(id => Unknown(Description, Subject(basis, id), null, Sentence.Of($"Whether she would pass a simplified proof test cannot be told: no condition lists people aboard, so nothing says how high they stand"), [PeopleAboard.Unlisted(view)]))
            : manned.SelectMany(condition => Judge(view, basis, view.LoadedIn(condition)));
    }

    private IEnumerable<Finding> Judge(StabilityView view, StabilityBasis basis, LoadedBoat loaded)
    {
        if (view.FloatingIn(loaded.Condition) is null)
        {
            return Ids.Select(id => WhyUnknown.Of(Description, view, loaded, "whether she would pass a simplified proof test") with { SubjectId = Subject(basis, id) });
        }

        LoadedBoat tested = PeopleAboard.With(view, loaded, basis.PeopleCount!.Value * PersonKg, middle => middle).Boat;
        tested = tested with { Input = tested.Input! with { Tanks = view.TanksIn(loaded.Condition, TestFillFraction) } };
        ImmutableArray<CriterionResult>[] sides = [.. new[] { 1, -1 }.Select(side => Test(view, basis, tested.Input!, side))];
        return Ids.Select((id, index) =>
        {
            int side = sides[1][index].Value is { } port && sides[0][index].Value is { } starboard && port < starboard - (1e-6 * Math.Abs(starboard)) || sides[1][index].Value is null ? -1 : 1;
            return Judge(view, basis, tested, sides[side < 0 ? 1 : 0][index], index, side);
        });
    }

    private Finding Judge(StabilityView view, StabilityBasis basis, LoadedBoat tested, CriterionResult criterion, int index, int side)
    {
        IEnumerable<WorkingLine> working =
        [
            .. criterion.Working.Select(Line),
            .. criterion.Remarks.Select(remark => new WorkingLine("Remark", remark, null, criterion.Source)),
            new WorkingLine("Loaded", FormattableString.Invariant($"{basis.PeopleCount} people of {PersonKg} kg, all tanks {TestFillFraction:0.##} full; levers {Levers.Name(side)}, the worse side"), null, "46 CFR 178.330, 170.090"),
        ];
        string subject = Subject(basis, criterion.Id);
        if (criterion.Value is not { } left)
        {
            Verdict verdict = criterion.Verdict == CriterionVerdict.Fails ? Verdict.Fails : Verdict.Unknown;
            return Judged(Description, subject, tested, verdict, null, Sentence.Of($"{tested.Condition.Title}, proof test, {criterion.Subject}: {criterion.Remarks.FirstOrDefault() ?? "cannot be told"}"), working);
        }

        Banded banded = ResultDeviation.Banded(tested, left, boat => Test(view, basis, boat, side)[index].Value);
        Verdict told = banded.AtLeast(0);
        double heelDeg = criterion.Working.First(step => step.Symbol == ProofTest.HeelSymbol).Value!.Value;
        Sentence found = left >= 0
            ? Sentence.Of($"{tested.Condition.Title}, proof test {Levers.Name(side)}: {criterion.Subject} is {Measure(left, criterion.Unit)}, at {Levers.Heel(heelDeg)}")
            : Sentence.Of($"{tested.Condition.Title}, proof test {Levers.Name(side)}: {(index == 0 ? "the deck edge goes under" : "she heels past 14° by")} {Measure(-left, criterion.Unit)}{(index == 0 ? " more than may" : "")}, at {Levers.Heel(heelDeg)}");
        return Judged(Description, subject, tested, told, null, told == Verdict.Unknown ? Sentence.Of($"{found}; {Unsure(view, tested, banded, criterion.Unit, 0)}") : found, [.. working, BandLine(banded, criterion.Unit)]);
    }

    private static ImmutableArray<CriterionResult> Test(StabilityView view, StabilityBasis basis, FloatingInput boat, int side)
    {
        RightingCurve curve = Levers.To(side, boat, []);
        Attitude upright = curve.Points.IsEmpty ? Attitude.Upright(0) : curve.Points[0].Attitude;
        // 1 is starboard, where y is below 0.
        Opening lowest = DeckEdge.Lowest(DeckEdge.Of(view.Boat).Where(corner => side * corner.Place.YM <= 0), upright)!.Value.Place;
        double water = upright.WaterHeightM(0.5 * (view.Bodies.Hull!.Lowest.XM + view.Bodies.Hull.Highest.XM), 0) ?? double.NaN;
        return ProofTest.Check(new ProofTestInput
        {
            Curve = curve,
            Exposure = basis.Waters switch { Waters.Protected => WaterExposure.Protected, Waters.PartiallyProtected => WaterExposure.PartiallyProtected, _ => WaterExposure.Exposed },
            LengthM = view.Boat.Particulars!.LengthOverAllM!.Value,
            LowestDeckEdge = lowest.Place,
            PersonsKg = basis.PeopleCount!.Value * PersonKg,
            PersonsBreadthM = basis.PeopleBreadthM!.Value,
            WindAreaM2 = basis.WindAreaM2!.Value,
            WindHeightM = basis.WindCentreM!.Value - water is var height && height > 0 ? height : null,
            CockpitLengthM = basis.CockpitLengthM!.Value,
        });
    }

    private static IEnumerable<FindingInput> Missing(BoatModel boat, StabilityBasis basis)
    {
        (string Thing, string Field, bool IsGiven)[] needed =
        [
            (boat.Particulars?.Id ?? "particulars", "lengthOverAllM", boat.Particulars?.LengthOverAllM is not null),
            (basis.Id, "peopleCount", basis.PeopleCount is not null),
            (basis.Id, "peopleBreadthM", basis.PeopleBreadthM is not null),
            (basis.Id, "windAreaM2", basis.WindAreaM2 is not null),
            (basis.Id, "windCentreM", basis.WindCentreM is not null),
            (basis.Id, "cockpitLengthM", basis.CockpitLengthM is not null),
            (basis.Id, "waters", basis.Waters is not null),
        ];
        return needed.Where(field => !field.IsGiven).Select(field => new FindingInput(field.Thing, field.Field, IsMissing: true));
    }

    private static string Subject(StabilityBasis basis, string criterionId) => $"{basis.Id}.{criterionId}";
}
