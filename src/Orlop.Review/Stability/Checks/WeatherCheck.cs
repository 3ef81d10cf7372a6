using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Hull.Criteria;
using Orlop.Hull.Floating;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability.Checks;

/// <summary>She keeps the weather criterion to her worse side; for a boat below 24 m it is indicative, and the finding says so.</summary>
public sealed class WeatherCheck : ICheck<StabilityView>
{
    private static readonly ImmutableArray<string> Ids = ["steady-wind-heel", "gust-reserve"];

    public CheckDescription Description { get; } = new(
        "weather",
        "Severe wind and rolling",
        "Heel under a steady wind of 504 Pa, and the reserve of area against a gust after a roll to windward, Res. A.749(18) 3.2, where the owner chose it; the worse side, in every condition. Made for ships of 24 m and more: below that it is indicative, and says where its tables end.",
        [])
    {
        IsCriterion = true,
    };

    public IEnumerable<Finding> Run(StabilityView view) =>
        view.Basis is { } basis && basis.Rules.Contains(StabilityRule.Weather) ? view.Conditions.SelectMany(condition => Judge(view, basis, condition)) : [];

    private IEnumerable<Finding> Judge(StabilityView view, StabilityBasis basis, Condition condition)
    {
        LoadedBoat loaded = view.LoadedIn(condition);
        ImmutableArray<FindingInput> wind = [.. Missing(basis)];
        if (view.FloatingIn(condition) is null)
        {
            return Ids.Select(id => WhyUnknown.Of(Description, view, loaded, "how she bears the wind") with { SubjectId = Subject(view, id) });
        }

        if (!wind.IsEmpty)
        {
            return Ids.Select(id => Unknown(Description, Subject(view, id), condition.Id, Sentence.Of($"How she bears the wind {FindingLines.In(condition)} cannot be told: area and height of what the wind meets are not given"), wind));
        }

        WeatherCriterionResult?[] sides = [WeatherLevers.Of(view, basis, loaded, loaded.Input!, 1), WeatherLevers.Of(view, basis, loaded, loaded.Input!, -1)];
        Dictionary<(FloatingInput, int), WeatherCriterionResult?> near = [];
        return [.. Ids.Select(id => Judge(view, loaded, id, IsPortWorse(sides, id) ? -1 : 1, sides, NearOf))];

        WeatherCriterionResult? NearOf(FloatingInput boat, int side)
        {
            if (!near.TryGetValue((boat, side), out WeatherCriterionResult? result))
            {
                near[(boat, side)] = result = WeatherLevers.Of(view, basis, loaded, boat, side);
            }

            return result;
        }
    }

    private Finding Judge(StabilityView view, LoadedBoat loaded, string id, int side, WeatherCriterionResult?[] sides, Func<FloatingInput, int, WeatherCriterionResult?> nearOf)
    {
        WeatherCriterionResult? result = sides[side < 0 ? 1 : 0];
        if (result is null)
        {
            return Judged(Description, Subject(view, id), loaded, Verdict.Unknown, null, Sentence.Of($"How she bears the wind {FindingLines.In(loaded.Condition)} cannot be told: she does not float upright with a waterline"), []);
        }

        CriterionResult criterion = Of(result, id);
        IEnumerable<WorkingLine> working =
        [
            .. result.Roll.Working.Select(Line), .. result.Working.Select(Line), .. criterion.Working.Select(Line),
            .. criterion.Remarks.Select(remark => new WorkingLine("Remark", remark, null, criterion.Source)),
            .. OpeningsGiven.Taken(view.Boat),
            new WorkingLine("Side", $"wind heels her {Levers.Name(side)}, the worse one", null, "levers solved with free trim and running tank liquids"),
        ];
        string indicative = result.Roll.Warnings.IsEmpty ? "" : " (indicative only: she is outside what the rule was made for)";
        if (criterion.Value is not { } left)
        {
            Verdict without = criterion.Verdict == CriterionVerdict.Fails ? Verdict.Fails : Verdict.Unknown;
            return Judged(Description, Subject(view, id), loaded, without, null, Sentence.Of($"Wind {FindingLines.In(loaded.Condition)}: {criterion.Remarks.LastOrDefault() ?? "the levers do not reach far enough"}{indicative}"), working, OpeningsGiven.Missing(view.Boat));
        }

        Banded banded = ResultDeviation.Banded(loaded, left, boat => nearOf(boat, side) is { } near ? Of(near, id).Value : null);
        UseOf? use = result.Areas switch
        {
            { SteadyHeelDeg: { } steady } when id == Ids[0] => new UseOf(steady, steady + left),
            { AreaAMRad: { } work, AreaBMRad: { } reserve } => new UseOf(work, reserve),
            _ => null,
        };
        Verdict held = banded.AtLeast(0), within = held == Verdict.Holds ? Verdicts.OfUse(use?.Fraction) : held;
        // Outside what the rule was made for nothing holds by it.
        Verdict verdict = indicative.Length > 0 && within is (Verdict.Holds or Verdict.Tight) ? Verdict.Unknown : within;
        Sentence found = id == Ids[0]
            ? Sentence.Of($"Steady wind {FindingLines.In(loaded.Condition)} heels her {Deg(result.Areas!.SteadyHeelDeg!.Value)} {Levers.Name(side)}, at most {Deg(result.Areas.SteadyHeelDeg.Value + left)} allowed{indicative}")
            : Sentence.Of($"Gust {FindingLines.In(loaded.Condition)}: reserve of {Measure(result.Areas!.AreaBMRad!.Value, "m rad")} {Levers.Name(side)} against its work of {Measure(result.Areas.AreaAMRad!.Value, "m rad")}{indicative}");
        return Judged(Description, Subject(view, id), loaded, verdict, use, held == Verdict.Unknown ? Sentence.Of($"{found}; {Unsure(view, loaded, banded, criterion.Unit, 0)}") : found, [.. working, BandLine(banded, criterion.Unit)], OpeningsGiven.Missing(view.Boat));
    }

    private static CriterionResult Of(WeatherCriterionResult result, string id) => id == Ids[0] ? result.SteadyHeel : result.Reserve;

    private static bool IsPortWorse(WeatherCriterionResult?[] sides, string id) =>
        sides[0] is { } starboard && (sides[1] is not { } port || (Of(starboard, id).Value is { } value && !(Of(port, id).Value >= value - (1e-6 * Math.Abs(value)))));

    private static IEnumerable<FindingInput> Missing(StabilityBasis basis)
    {
        if (basis.WindAreaM2 is null)
        {
            yield return new FindingInput(basis.Id, "windAreaM2", IsMissing: true);
        }

        if (basis.WindCentreM is null)
        {
            yield return new FindingInput(basis.Id, "windCentreM", IsMissing: true);
        }
    }

    private static string Subject(StabilityView view, string id) => $"{WhyUnknown.SubjectOf(view)}.{id}";
}
