using Orlop.Boat.Things;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Heat.Checks;

/// <summary>A charger gives its full output in the warmth of its space.</summary>
public sealed class ChargerOutputCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "charger-output",
        "A charger gives its full output where it stands",
        "For each charger whose sheet says how warm its air may be, in each condition in which it works: the current that it gives in the air of its space, against its full output. Less is tight, for the battery charges slower and a day plan counts on no more; nothing at all fails. Conductors and devices are held against its full output: its space may be cool.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from charger in view.Boat.All<Charger>()
        where charger.FullRatingC is not null || charger.MostAmbientC is not null
        from condition in view.Conditions
        where ChargerOutput.WorksIn(charger, condition)
        select Judge(view, charger, condition);

    private Finding Judge(ElectricsView view, Charger charger, Condition condition)
    {
        Derating derating = Derating.Of(view, charger, condition);
        if (!derating.Missing.IsEmpty)
        {
            return Unknown(Description, charger.Id, condition.Id, Sentence.Of($"{charger.Title}: what it gives in the air where it stands {In(condition)} cannot be told"), derating.Missing);
        }

        double fullA = charger.LimitA.Value, givesA = derating.ShareFraction * fullA;
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = charger.Id,
            ConditionId = condition.Id,
            Verdict = derating.ShareFraction switch { >= 1 => Verdict.Holds, > 0 => Verdict.Tight, _ => Verdict.Fails },
            Headline = givesA > 0 ? Sentence.Of($"{charger.Title} gives {A(givesA)} of {A(fullA)} in the {new Amount(derating.AmbientC!.Value, "C")} of its space {In(condition)}")
                : Sentence.Of($"{charger.Title} gives nothing in the {new Amount(derating.AmbientC!.Value, "C")} of its space {In(condition)}"),
            GravityRatio = 1 - derating.ShareFraction,
            Working =
            [
                new WorkingLine("Full output", "", A(fullA), "as typed"),
                .. derating.Working.IsEmpty ? [new WorkingLine("Air around it", "no warmer than its full rating bears", new Amount(derating.AmbientC.Value, "C"), "as in the check of its space")] : derating.Working,
                new WorkingLine("It gives", Formula.Of("{0} × {1}", v => v[0] * v[1], derating.ShareFraction, fullA), A(givesA), ""),
            ],
            Inputs = [new FindingInput(charger.Id, "limitA"), new FindingInput(charger.Id, "fullRatingC"), new FindingInput(charger.Id, "lostPerKFraction"), new FindingInput(charger.Id, "mostAmbientC")],
        };
    }
}
