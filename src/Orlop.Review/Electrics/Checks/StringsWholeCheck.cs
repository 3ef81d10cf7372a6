using Orlop.Boat.Things;
using Orlop.Electrics.Strings;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>In each string every battery stands the right way round, and none is missing.</summary>
public sealed class StringsWholeCheck : ICheck<ElectricsView>
{
    // 25.6 V for 24 V is a fifteenth; one battery less of six in series is a sixth.
    private const double FedFraction = 0.15;

    // One cell less of sixteen is a sixteenth.
    private const double BesideFraction = 0.05;

    private const string StepSource = "common practice, no source: 25.6 V counts as made for 24 V, and a battery less of six in series shows";

    public CheckDescription Description { get; } = new(
        "strings-whole",
        "No battery reversed or missing in a string",
        "The sum of the nominal voltages of the batteries of a string, one that stands the wrong way round taken off, against the strings beside it and against what is wired across it.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from StringGroup stringGroup in view.Strings.InAny.Groups
        from BatteryString each in stringGroup.Strings
        let finding = Judge(view, stringGroup, each)
        where stringGroup.Strings.Length > 1 || each.Members.Length > 1 || finding.Verdict != Verdict.Holds
        select finding;

    private Finding Judge(ElectricsView view, StringGroup group, BatteryString each)
    {
        string title = StringWords.Title(view.Boat, each);
        string[] reversed = [.. each.Members.Where(member => member.IsReversed).Select(member => view.Boat.Find(member.Id)?.Title ?? member.Id)];
        double most = group.Strings.Max(other => other.NominalV);
        bool isOffBeside = IsOff(each.NominalV, most, BesideFraction), isOffFed = group.FedV is { } fed && IsOff(each.NominalV, fed, FedFraction);
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = each.Members[0].Id,
            Verdict = reversed.Length > 0 || isOffBeside || isOffFed ? Verdict.Fails : Verdict.Holds,
            Headline = reversed.Length > 0 ? Sentence.Of($"{string.Join(" and ", reversed)} {(reversed.Length == 1 ? "stands" : "stand")} the wrong way round: {title} {Gives(each)} {V(each.NominalV)}{Beside(isOffBeside, most)}")
                : isOffBeside ? Sentence.Of($"{title} {Gives(each)} {V(each.NominalV)} by the plates, beside strings of {V(most)}: a battery is missing, or is of another voltage")
                : isOffFed ? Sentence.Of($"{title} {Gives(each)} {V(each.NominalV)} by the plates, for what is made for {V(group.FedV!.Value)}: a battery is missing or too many")
                : Sentence.Of($"{title} {Gives(each)} {V(each.NominalV)} by the plates, every battery the right way round"),
            WorkingWhenAsked = () =>
            [
                new WorkingLine("Sum of the plates", string.Join(" ", each.Members.Select((member, k) => Term(view.Boat.Find<BatteryBank>(member.Id)!, member.IsReversed, k == 0))), V(each.NominalV), "the wiring as drawn"),
                .. group.Strings.Length > 1 ? new[] { new WorkingLine("Greatest of the strings beside it", "", V(most), "the wiring as drawn") } : [],
                .. group.FedV is { } feeds ? new[] { new WorkingLine("What is wired across it is made for", "most of it", V(feeds), "the wiring as drawn") } : [],
                new WorkingLine("May differ from the strings beside it by", "", Fraction(BesideFraction), StepSource),
                new WorkingLine("May differ from what is wired across it by", "", Fraction(FedFraction), StepSource),
            ],
            Inputs = [.. each.Members.Select(member => new FindingInput(member.Id, "nominalV"))],
            Caution = Cautions.Strings,
        };
    }

    private static string Gives(BatteryString each) => each.Members.Length == 1 ? "gives" : "give";

    private static string Beside(bool isOff, double most) => isOff ? FormattableString.Invariant($", beside {most:0.#} V: joined, it is a short circuit") : "";

    private static bool IsOff(double volts, double other, double byFraction) => !(Math.Abs(volts - other) <= byFraction * Math.Abs(other));

    private static string Term(BatteryBank battery, bool isReversed, bool isFirst) => $"{(isReversed ? "− " : isFirst ? "" : "+ ")}{N(battery.NominalV.Value)} V";
}
