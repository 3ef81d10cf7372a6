using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Ways.Checks;

/// <summary>No conduit is too full.</summary>
public sealed class ConduitFillCheck : ICheck<WaysView>
{
    public CheckDescription Description { get; } = new(
        "conduit-fill",
        "Conduit is not too full",
        "The cross-sections of the cables in a conduit, over their outer diameters, over its inside, against the share that the practice allows for one, two or more, or for a short conduit. Three cables of such a size that they may jam in a bend are tight at best.",
        [LimitIds.ConduitFillOneFraction, LimitIds.ConduitFillTwoFraction, LimitIds.ConduitFillMoreFraction, LimitIds.ConduitFillShortFraction]);

    public IEnumerable<Finding> Run(WaysView view) => view.Ways.Where(ConduitContents.IsConduit).Select(way => view.Contents(way)).Where(contents => !contents.Cables.IsEmpty).Select(Judge);

    private Finding Judge(ConduitContents contents)
    {
        Way way = contents.Way;
        if (contents.Limit is not { } limit)
        {
            return NoLimit(Description, way.Id, null, way.Title, ConduitContents.LimitOf(way, contents.Cables.Length));
        }

        if (contents.FillFraction is not { } fill)
        {
            return Unknown(Description, way.Id, null, Sentence.Of($"{way.Title}: how full it is cannot be told while a diameter is missing"), contents.Missing);
        }

        Verdict verdict = Verdicts.Of(fill, limit.Value);
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = way.Id,
            Verdict = verdict == Verdict.Holds && contents.MayJam ? Verdict.Tight : verdict,
            UseFraction = Verdicts.UseOf(fill, limit.Value),
            Headline = Sentence.Of($"{way.Title} is {Fraction(fill)} full of {contents.Cables.Length} {(contents.Cables.Length == 1 ? "cable" : "cables")}; {Fraction(limit.Value)} is allowed"),
            Working =
            [
                .. contents.Cables.Select(cable => new WorkingLine("Cable in it", cable.Title, new Amount(cable.OuterDiameterMm!.Value, "Mm"), "outer diameter as typed")),
                new WorkingLine("Inside", way.InsideMm2 is null ? "inner diameter as typed" : "cross-section as typed", way.InsideMm2 is { } area ? Mm2(area.Value) : new Amount(way.InnerDiameterMm!.Value, "Mm"), ""),
                new WorkingLine("Full", "sum of squares of the outer diameters over that of the inside, for round ones", Fraction(fill), "US NFPA 70, chapter 9"),
                .. contents.MayJam ? new[] { new WorkingLine("May jam", "three cables, inside 2.8 to 3.2 times their diameter: they may wedge in a bend", null, "US NFPA 70, chapter 9, Table 1, note") } : [],
                Line(limit, "Allowed", "Fraction"),
                Use(fill, limit.Value),
            ],
            Inputs = [new FindingInput(way.Id, way.InsideMm2 is null ? "innerDiameterMm" : "insideMm2"), .. contents.Cables.Select(cable => new FindingInput(cable.Id, "outerDiameterMm"))],
        };
    }
}
