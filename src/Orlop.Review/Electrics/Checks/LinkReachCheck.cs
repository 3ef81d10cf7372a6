using Orlop.Boat.Things;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>A link is metal bolted from terminal to terminal: over a gap that no strap bridges something else leads.</summary>
public sealed class LinkReachCheck : ICheck<ElectricsView>
{
    /// <summary>What a strap between two parts bridges at most, in metres. Common practice, no source.</summary>
    public const double MostM = 0.15;

    public CheckDescription Description { get; } = new(
        "link-reaches",
        "Bolted link reaches",
        "The straight distance between the boxes around the two parts that a link bolts together, against 0.15 m (common practice, no source). Unknown where they stand further apart and the link is not given as long as that: a place is wrong, or a cable leads there, with ends, heat and drop of its own. Nothing is said of other links, nor where a place is not given.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from link in view.Boat.All<Link>()
        let @from = view.Boat.Find<Part>(link.From.Part)
        let to = view.Boat.Find<Part>(link.To.Part)
        where @from?.Place is not null && to?.Place is not null
        let apartM = PartGap.StraightM(@from, to)
        where apartM > MostM && !(link.LengthM?.Value >= apartM)
        select new Finding
        {
            CheckId = Description.Id,
            SubjectId = link.Id,
            Verdict = Verdict.Unknown,
            Headline = Sentence.Of($"{link.Title}: whether a bolted link reaches cannot be told, {@from.Title} and {to.Title} are {M(apartM)} apart; put a cable in its place, or correct places or length"),
            WorkingWhenAsked = () =>
            [
                new WorkingLine("One end", $"{@from.Title}: {PartGap.Where(@from)}", null, ""),
                new WorkingLine("Other end", $"{to.Title}: {PartGap.Where(to)}", null, ""),
                new WorkingLine("Straight between them", Formula.Of("√({0} × {0} + {1} × {1} + {2} × {2})", v => Math.Sqrt((v[0] * v[0]) + (v[1] * v[1]) + (v[2] * v[2])), PartGap.AlongM(@from, to)), M(apartM), "no way is shorter than the straight one"),
                new WorkingLine("What a link bridges", "common practice, no source", M(MostM), ""),
                new WorkingLine("Length of metal", link.LengthM is null ? "not given" : "as it is given", link.LengthM is { } length ? M(length.Value) : null, ""),
            ],
            Inputs = [new FindingInput(link.Id, "lengthM", IsMissing: link.LengthM is null), new FindingInput(@from.Id, "place"), new FindingInput(to.Id, "place")],
        };
}
