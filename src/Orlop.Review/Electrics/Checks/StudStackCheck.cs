using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Several rings on one stud lie with the greatest current on the face, with no washer between.</summary>
public sealed class StudStackCheck : ICheck<ElectricsView>
{
    private const string OrderSource = "common practice, no source: the greatest current passes the fewest joints";
    private const string WasherSource = "FAA AC 43.13-1B 11-174b: current goes from face to face, not through washer or stud";

    public CheckDescription Description { get; } = new(
        "stud-stack",
        "Rings on a stud lie in order",
        "The place of each ring on a terminal that carries several against the greatest current through it, running or starting, in any condition; and whether a washer lies under or between them: on batteries, and wherever a stud or a place is told. Bars are left out.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from stud in view.Rings.All
        let part = view.Boat.Find<Part>(stud.Key.Part)
        where part is not null and not Busbar && stud.Count(ring => ring.IsBolted) > 1 && stud.Any(ring => ring.Core is not null) && (IsAsked(part, stud.Key) || stud.Any(ring => ring.End?.FromFaceCount is not null))
        let finding = Judge(view, part, StudStack.Of(view, stud.Key))
        where finding.Verdict != Verdict.Unknown || IsAsked(part, stud.Key)
        select finding;

    // Elsewhere nobody is asked for what lies on a stud, and what is told is judged.
    private static bool IsAsked(Part part, Terminal at) => part is BatteryBank || part.StudOf(at.Name) is not null;

    private Finding Judge(ElectricsView view, Part part, StudStack stack)
    {
        string title = $"{part.Title}, {stack.At.Name}";
        Stud? stud = part.StudOf(stack.At.Name);
        (StackedRing Nearer, StackedRing Farther)? wrong = stack.Wrong;
        ImmutableArray<FindingInput> missing = Missing(part, stack, stud);
        if (stud?.HasWasherUnder != true && wrong is null && missing.Length > 0)
        {
            return Unknown(Description, stack.At.ToString(), null, Sentence.Of($"{title}: whether its {stack.Rings.Length} rings lie in order is not known; {Order(stack)}"), missing);
        }

        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = stack.At.ToString(),
            Verdict = stud?.HasWasherUnder == true || wrong is not null ? Verdict.Fails : Verdict.Holds,
            Headline = stud?.HasWasherUnder == true ? Sentence.Of($"{title}: a washer lies under or between its rings, and the current goes through it; it belongs over them, under the nut")
                : wrong is (var nearer, var farther) ? Sentence.Of($"{title}: {farther.Ring.Title} ({A(farther.CurrentA!.Value)}) lies outside {nearer.Ring.Title} ({A(nearer.CurrentA!.Value)}); {Order(stack)}")
                : Sentence.Of($"{title}: its {stack.Rings.Length} rings lie in order, the greatest current on the face"),
            WorkingWhenAsked = () =>
            [
                .. stack.Rings.Select(each => new WorkingLine(each.Ring.Title, each.Ring.Core is null ? "a link, on the face" : $"lies at place {each.Ring.End?.FromFaceCount?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "not given"}", each.CurrentA is { } current ? A(current) : null, OrderSource)),
                new WorkingLine("Washer under or between the rings", stud?.HasWasherUnder switch { true => "yes", false => "none", _ => "not told" }, null, WasherSource),
            ],
            Inputs = [new FindingInput(part.Id, "studs"), .. stack.Rings.Where(each => each.Ring.Core is not null).Select(each => new FindingInput(each.Ring.Owner.Id, RingFitsStudCheck.EndField(each.Ring, "fromFaceCount")))],
            Caution = part is BatteryBank ? Cautions.BatteryPost : null,
        };
    }

    private static string Order(StudStack stack) => $"from the face outward: {string.Join(", ", stack.Rings.Select(each => each.Ring.Title))}";

    private static ImmutableArray<FindingInput> Missing(Part part, StudStack stack, Stud? stud) =>
    [
        .. stud?.HasWasherUnder is null ? new[] { new FindingInput(part.Id, "studs", IsMissing: true) } : [],
        .. stack.Rings.Where(each => each.Ring.Core is not null && (each.Ring.End?.FromFaceCount is null || stack.Rings.Any(other => other != each && other.Ring.End?.FromFaceCount == each.Ring.End.FromFaceCount)))
            .Select(each => new FindingInput(each.Ring.Owner.Id, RingFitsStudCheck.EndField(each.Ring, "fromFaceCount"), IsMissing: true)),
        .. stack.Missing,
        .. stack.Rings.Where(each => each.CurrentA is null).Select(each => new FindingInput(each.Ring.Owner.Id, "id")),
    ];
}
