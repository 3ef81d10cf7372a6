using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Ways.Checks;

/// <summary>Each gland takes the cable that goes through it, and closes on it.</summary>
public sealed class GlandCheck : ICheck<WaysView>
{
    private const string Source = "common practice, no source: the range of diameters on the gland or its sheet";
    private const string BundleSource = "common practice, no source: a round seal closes on single conductors only with an insert of as many holes";

    public CheckDescription Description { get; } = new(
        "gland-closes-on-cable",
        "Gland takes its cable and closes on it",
        "For each cable and the glands on its run: its outer diameter against the gland's bore, which it must pass, and against the thinnest cable that the gland closes on. What is not told of a gland is asked where an alteration that is not built adds or changes the cable; of the cables that are there it says nothing then.",
        []);

    public IEnumerable<Finding> Run(WaysView view)
    {
        HashSet<Cable> drafted = [.. view.Boat.All<Alteration>().Where(alteration => alteration.Status is not (AlterationStatus.Built or AlterationStatus.Dropped))
            .SelectMany(alteration => alteration.Edits).Where(edit => edit.BuiltOn is null).Select(edit => edit.Becomes).OfType<Cable>()];
        return from cable in view.Boat.All<Cable>()
               let glands = GlandFit.On(cable, view.Boat).ToImmutableArray()
               where glands.Length > 0
               let finding = Judge(cable, glands, drafted.Contains(cable))
               where finding is not null
               select finding;
    }

    private Finding? Judge(Cable cable, ImmutableArray<PassedHole> glands, bool isDrafted)
    {
        PassedHole[] told = [.. glands.Where(gland => gland.Hole is { BoreMm: not null } or { LeastClampedMm: not null })];
        FindingInput[] missing =
        [
            .. isDrafted ? glands.Where(gland => gland.Hole is not { BoreMm: not null, LeastClampedMm: not null }).Select(gland => new FindingInput(gland.Way.Id, "holes", IsMissing: true)).Distinct() : [],
            .. cable.OuterDiameterMm is null && (isDrafted || told.Length > 0) ? new[] { new FindingInput(cable.Id, "outerDiameterMm", IsMissing: true) } : [],
        ];
        if (cable.OuterDiameterMm is { } outer)
        {
            if (told.FirstOrDefault(gland => GlandFit.IsOver(outer, gland.Hole.BoreMm) == true) is { } narrow)
            {
                return Told(cable, outer, glands, Verdict.Fails, Sentence.Of($"{cable.Title}, {Mm(outer)} thick, does not go through the gland at {narrow.Hole.Where}: it takes {Mm(narrow.Hole.BoreMm!)} at most"));
            }

            if (told.FirstOrDefault(gland => GlandFit.IsOver(gland.Hole.LeastClampedMm, outer) == true) is { } wide)
            {
                return Told(cable, outer, glands, Verdict.Fails, Sentence.Of($"{cable.Title}, {Mm(outer)} thick, is too thin for the gland at {wide.Hole.Where}: it closes on {Mm(wide.Hole.LeastClampedMm!)} and more"));
            }

            if (told.FirstOrDefault(gland => (GlandFit.IsOver(outer, gland.Hole.BoreMm) is null && gland.Hole.BoreMm is not null) || (GlandFit.IsOver(gland.Hole.LeastClampedMm, outer) is null && gland.Hole.LeastClampedMm is not null)) is { } near)
            {
                return Unknown(Description, cable.Id, null, Sentence.Of($"{cable.Title}: whether the gland at {near.Hole.Where} closes on it is within the ± of their diameters; measure both with a calliper"), [new FindingInput(cable.Id, "outerDiameterMm"), new FindingInput(near.Way.Id, "holes")]);
            }
        }

        return missing.Length > 0 ? Unknown(Description, cable.Id, null, Sentence.Of($"{cable.Title}: whether {(glands.Length == 1 ? $"the gland at {glands[0].Hole.Where} closes" : "the glands on its run close")} on it cannot be told while a diameter is missing"), [.. missing])
            : cable.OuterDiameterMm is { } known && told.Length == glands.Length && told.All(gland => gland.Hole is { BoreMm: not null, LeastClampedMm: not null })
                ? Told(cable, known, glands, Verdict.Holds, Sentence.Of($"{cable.Title}, {Mm(known)} thick: {(glands.Length == 1 ? $"the gland at {glands[0].Hole.Where} takes" : "the glands on its run take")} it"))
                : null;
    }

    private Finding Told(Cable cable, Quantity outer, ImmutableArray<PassedHole> glands, Verdict verdict, Sentence headline) => new()
    {
        CheckId = Description.Id,
        SubjectId = cable.Id,
        Verdict = verdict,
        Headline = headline,
        Working =
        [
            new WorkingLine("Outer diameter", "", Mm(outer), outer.Method ?? "as typed"),
            .. !cable.IsSheathed && cable.Cores.Count > 1 ? new[] { new WorkingLine("Without a sheath", $"{cable.Cores.Count} conductors, held as the bundle they make", null, BundleSource) } : [],
            .. glands.SelectMany(gland => new[] { Line(gland, "takes at most", gland.Hole.BoreMm), Line(gland, "closes on no less than", gland.Hole.LeastClampedMm) }),
        ],
        Inputs = [new FindingInput(cable.Id, "outerDiameterMm"), .. glands.Select(gland => new FindingInput(gland.Way.Id, "holes")).Distinct()],
    };

    private static WorkingLine Line(PassedHole gland, string what, Quantity? mm) => new($"Gland at {gland.Hole.Where}", mm is null ? $"{what}: not given" : what, mm is null ? null : Mm(mm), Source);

    private static Amount Mm(Quantity mm) => new(mm.Value, "Mm");
}
