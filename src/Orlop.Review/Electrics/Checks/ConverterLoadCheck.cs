using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Heat;
using Orlop.Review.Networks;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Inverters and converters bear what they feed, running and starting.</summary>
public sealed class ConverterLoadCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "converter-carries-load",
        "Inverter or converter bears its loads",
        "Output of an inverter or DC converter against its rating, running; and while each load behind it starts, against the overload that it bears for as long as that start lasts. Where its sheet says how warm its air may be, the rating is what it carries there.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from part in view.Boat.All<Part>()
        where part is Inverter or DcConverter
        from condition in view.Conditions
        from finding in Judge(view, part, condition)
        select finding;

    private IEnumerable<Finding> Judge(ElectricsView view, Part part, Condition condition)
    {
        if (view.Solve(condition, ChargeCase.Normal).GroupOf(part.Id) is null)
        {
            yield break;
        }

        double ratedW = part is Inverter inverter ? inverter.RatedW.Value : ((DcConverter)part).OutputV.Value * ((DcConverter)part).RatedA.Value;
        Derating derating = Derating.Of(view, part, condition);
        yield return Running(view, part, condition, ratedW, derating);
        foreach (ElectricLoad load in LoadsBehind(view, part, condition).Where(Starts.HasOne))
        {
            yield return Starting(view, part, condition, load, ratedW, derating);
        }
    }

    private static IEnumerable<ElectricLoad> LoadsBehind(ElectricsView view, Part part, Condition condition) =>
        view.Boat.All<ElectricLoad>().Where(load => LoadElements.IsOnIn(load, condition.Id) && view.PathsIn(condition).TakersBehind(part.Id).Contains(load.Id));

    private Finding Running(ElectricsView view, Part part, Condition condition, double nominalW, Derating derating)
    {
        double ratedW = derating.ShareFraction * nominalW;
        ImmutableArray<FindingInput> missing = MissingInputs.OfCurrent(view, condition, part.Id);
        if (Output(view, part, condition, null) is not (var solved, var outputW))
        {
            return NotSolved(Description, part.Id, condition, part.Title);
        }

        if (derating.Missing.Length > 0 && outputW <= ratedW)
        {
            return Hot(part, condition, derating);
        }

        if (missing.Length > 0 && outputW <= ratedW)
        {
            return Unknown(Description, part.Id, condition.Id, Sentence.Of($"{part.Title} gives at least {new Amount(outputW, "W")} {In(condition)}; what else it feeds is not known"), missing);
        }

        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = part.Id,
            ConditionId = condition.Id,
            Verdict = Verdicts.Of(outputW, ratedW),
            UseFraction = Verdicts.UseOf(outputW, ratedW),
            Headline = Sentence.Of($"{part.Title} gives {new Amount(outputW, "W")} of {new Amount(ratedW, "W")} {In(condition)}"),
            WorkingWhenAsked = () =>
            [
                new WorkingLine("Output", "everything on that it feeds", new Amount(outputW, "W"), Solved(solved, part.Id)),
                new WorkingLine("Rating", "continuous", new Amount(nominalW, "W"), "as typed"),
                .. Lines(derating, nominalW),
                Use(outputW, ratedW),
            ],
            Inputs = [new FindingInput(part.Id, part is Inverter ? "ratedW" : "ratedA")],
        };
    }

    private Finding Hot(Part part, Condition condition, Derating derating) =>
        Unknown(Description, part.Id, condition.Id, Sentence.Of($"{part.Title}: what it carries in the air where it stands {In(condition)} cannot be told"), derating.Missing);

    private static IEnumerable<WorkingLine> Lines(Derating derating, double nominalW) => derating.Working.IsEmpty ? []
        : derating.Working.Append(new WorkingLine("Rating there", Formula.Of("{0} × {1}", v => v[0] * v[1], derating.ShareFraction, nominalW), new Amount(derating.ShareFraction * nominalW, "W"), ""));

    // The greater of normal and lowest charge: a charger on its output takes work off it.
    private static (SolvedNetwork Solved, double OutputW)? Output(ElectricsView view, Part part, Condition condition, string? startingId)
    {
        var both = new[] { ChargeCase.Normal, ChargeCase.Lowest }.Select(charge => view.Solve(new NetworkCase(condition.Id, charge, startingId)))
            .Select(solved => (Solved: solved, OutputW: solved.ConverterOutputW(part.Id)))
            .ToArray();
        return both.All(each => each.OutputW is not null) ? both.Select(each => (each.Solved, each.OutputW!.Value)).MaxBy(each => each.Value) : null;
    }

    private Finding Starting(ElectricsView view, Part part, Condition condition, ElectricLoad load, double nominalW, Derating derating)
    {
        double ratedW = derating.ShareFraction * nominalW;
        if (Starts.IsRatioMissing(load))
        {
            return Starts.RatioUnknown(Description, part.Id, condition.Id, load);
        }

        if (Output(view, part, condition, load.Id) is not (var solved, var outputW))
        {
            return NotSolved(Description, part.Id, condition, part.Title);
        }

        // However short a start is: no more than the greatest overload of all.
        double leastS = load.StartS?.Value ?? 0;
        double ratio = part is Inverter inverter
            ? inverter.Overloads.Where(overload => overload.DurationS >= leastS).Select(overload => overload.RatingRatio).DefaultIfEmpty(1).Max()
            : 1;
        double allowedW = ratio * ratedW;
        if (derating.Missing.Length > 0 && outputW <= allowedW)
        {
            return Hot(part, condition, derating);
        }

        if (load.StartS is null && outputW <= allowedW)
        {
            return Unknown(Description, part.Id, condition.Id, Sentence.Of($"{load.Title}: how long its start lasts is not known"), [new FindingInput(load.Id, "startS", IsMissing: true)]);
        }

        ImmutableArray<FindingInput> missing = MissingInputs.OfCurrent(view, condition, part.Id);
        if (missing.Length > 0 && outputW <= allowedW)
        {
            return Unknown(Description, part.Id, condition.Id, Sentence.Of($"{part.Title} gives at least {new Amount(outputW, "W")} while {load.Title} starts; what else it feeds is not known"), missing);
        }

        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = part.Id,
            ConditionId = condition.Id,
            Verdict = Verdicts.Of(outputW, allowedW),
            UseFraction = Verdicts.UseOf(outputW, allowedW),
            Headline = load.StartS is { } duration
                ? Sentence.Of($"{part.Title} gives {new Amount(outputW, "W")} for {Seconds(duration.Value)} while {load.Title} starts; it bears {new Amount(allowedW, "W")} that long")
                : Sentence.Of($"{part.Title} gives {new Amount(outputW, "W")} while {load.Title} starts; it bears {new Amount(allowedW, "W")} at most"),
            WorkingWhenAsked = () =>
            [
                new WorkingLine("Output at the start", $"{load.Title} at {N(load.StartRatio!.Value)} × its running current", new Amount(outputW, "W"), Solved(solved, part.Id)),
                .. Lines(derating, nominalW),
                new WorkingLine("Bears", $"{Formula.Of("{0} × {1}", v => v[0] * v[1], ratio, ratedW)}, {(load.StartS is { } lasts ? $"for at least {N(lasts.Value)} s" : "for however short a time")}", new Amount(allowedW, "W"), "as typed"),
                Use(outputW, allowedW),
            ],
            Inputs = [new FindingInput(load.Id, "startRatio"), new FindingInput(load.Id, "startS"), new FindingInput(part.Id, part is Inverter ? "overloads" : "ratedA")],
        };
    }
}
