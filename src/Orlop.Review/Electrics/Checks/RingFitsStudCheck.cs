using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>The hole of each ring is of the stud's thread: a smaller one does not go on, a larger one has less face and may lie askew.</summary>
public sealed class RingFitsStudCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "ring-fits-stud",
        "Ring fits its stud",
        "The thread that each ring on a terminal is made for against the terminal's stud, and against the other rings on it, on batteries and wherever the stud is told; elsewhere rings of two threads on one terminal are found. A bar is left out where its stud is not told.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from stud in view.Rings.All
        let part = view.Boat.Find<Part>(stud.Key.Part)
        where part is not null
        let rings = stud.Where(ring => ring.IsBolted && ring.Core is not null).ToArray()
        let told = part.StudOf(stud.Key.Name)
        where rings.Length > 0 && (told is not null || part is BatteryBank || (rings.Length > 1 && part is not Busbar))
        let finding = Judge(stud.Key, part, told, rings)
        where finding.Verdict != Verdict.Unknown || told is not null || part is BatteryBank
        select finding;

    private Finding Judge(Terminal at, Part part, Stud? told, StudRing[] rings)
    {
        string title = $"{part.Title}, {at.Name}";
        double? threadMm = told?.SizeMm ?? rings.Select(ring => ring.End!.StudMm).Max();
        StudRing[] other = [.. rings.Where(ring => ring.End!.StudMm is { } holeMm && Math.Abs(holeMm - threadMm!.Value) > StudRings.SameThreadMm)];
        if (other.Length == 0 && (told is null || rings.Any(ring => ring.End!.StudMm is null)))
        {
            ImmutableArray<FindingInput> missing =
            [
                .. told is null ? new[] { new FindingInput(part.Id, "studs", IsMissing: true) } : [],
                .. rings.Where(ring => ring.End!.StudMm is null).Select(ring => new FindingInput(ring.Owner.Id, EndField(ring, "studMm"), IsMissing: true)),
            ];
            return Unknown(Description, at.ToString(), null, Sentence.Of($"{title}: {(told is null ? "the thread of its stud is not known" : "the thread that a ring on it is made for is not known")}"), missing);
        }

        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = at.ToString(),
            Verdict = other.Length > 0 ? Verdict.Fails : Verdict.Holds,
            Headline = other.Length > 0
                ? Sentence.Of($"{title}, {Thread(threadMm!.Value)}: the ring of {string.Join(" and of ", other.Select(ring => $"{ring.Title} is made for {Thread(ring.End!.StudMm!.Value)}"))}")
                : Sentence.Of($"{title}, {Thread(threadMm!.Value)}: {(rings.Length == 1 ? "its ring fits" : rings.Length == 2 ? "both rings fit" : $"all {rings.Length} rings fit")}"),
            WorkingWhenAsked = () =>
            [
                new WorkingLine("Thread of the stud", told is null ? "not told: the largest of its rings" : "", new Amount(threadMm.Value, "Mm"), told is null ? "" : "as typed"),
                .. rings.Select(ring => new WorkingLine(ring.Title, ring.End!.StudMm is null ? "not given" : "its ring is made for", ring.End.StudMm is { } mm ? new Amount(mm, "Mm") : null, "as typed")),
            ],
            Inputs = [new FindingInput(part.Id, "studs", IsMissing: told is null), .. rings.Select(ring => new FindingInput(ring.Owner.Id, EndField(ring, "studMm"), IsMissing: ring.End!.StudMm is null))],
            Caution = part is BatteryBank ? Cautions.BatteryPost : null,
        };
    }

    private static string Thread(double mm) => FormattableString.Invariant($"M{mm:0.#}");

    /// <summary>Where a ring's own values are typed: <c>cores/plus/fromEnd/studMm</c>.</summary>
    internal static string EndField(StudRing ring, string field) => $"cores/{ring.Core!.Id}/{(ring.ElementId.EndsWith("@from", StringComparison.Ordinal) ? "fromEnd" : "toEnd")}/{field}";
}
