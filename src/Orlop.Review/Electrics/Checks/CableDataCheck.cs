using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Mending;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Outer diameter, mass per metre and the part that a cable's note names are those of its own cross-section.</summary>
public sealed class CableDataCheck : ICheck<ElectricsView>
{
    private const string CopperSource = "density of copper, 8.89 kg/dm³ (IEC 60028)";
    private const double CopperKgPerMMm2 = 0.00889;

    // A cross-section is a nominal one, by its resistance: IEC 60228 allows the metal to be less.
    private const double NominalFraction = 0.85;

    public CheckDescription Description { get; } = new(
        "cable-data-of-its-size",
        "Diameter and mass are those of the cable's size",
        "Unknown for a cable whose cross-section was changed while its outer diameter or mass per metre stayed, whose mass is less than that of its copper, or whose note names a generic part of another cross-section; the weights, the ways and the bring list go by these. Nothing is said of other cables.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view)
    {
        Lazy<Catalogue> catalogue = new(() => Catalogue.Of(view.Boat));
        return view.Boat.All<Cable>().Select(cable => Judge(cable, catalogue)).OfType<Finding>();
    }

    private Finding? Judge(Cable cable, Lazy<Catalogue> catalogue)
    {
        (string Field, string What, double? OtherMm2)[] told = [("outerDiameterMm", "outer diameter", CableSizes.OtherMm2(cable.OuterDiameterMm)), ("massKgPerM", "mass per metre", CableSizes.OtherMm2(cable.MassKgPerM))];
        (string Field, string What, double? OtherMm2)[] others = [.. told.Where(each => each.OtherMm2 is not null)];
        double copperKg = NominalFraction * CopperKgPerMMm2 * cable.AreaMm2.Value * Math.Max(1, cable.Cores.Count);
        CataloguePart? named = MendBench.PartOf(cable.Note, catalogue) is { AreaMm2: { } area } part && !WantedCable.IsSameSize(cable.AreaMm2.Value, area.Value) ? part : null;
        bool isTooLight = cable.MassKgPerM is { } mass && mass.Value < copperKg;
        if (others.Length == 0 && named is null && !isTooLight)
        {
            return null;
        }

        ImmutableArray<FindingInput> inputs =
        [
            .. others.Select(each => new FindingInput(cable.Id, each.Field, IsMissing: true)),
            .. isTooLight && others.All(each => each.Field != "massKgPerM") ? new[] { new FindingInput(cable.Id, "massKgPerM", IsMissing: true) } : [],
            .. named is null ? [] : new[] { new FindingInput(cable.Id, "note", IsMissing: others.Length == 0 && !isTooLight) },
            new FindingInput(cable.Id, "areaMm2"),
        ];
        Sentence what = others.Length > 0
            ? Sentence.Of($"its {string.Join(" and ", others.Select(each => each.What))} {(others.Length == 1 ? "is" : "are")} still that of {Mm2(others[0].OtherMm2!.Value)}")
            : isTooLight ? Sentence.Of($"its mass per metre, {new Amount(cable.MassKgPerM!.Value, "KgPerM")}, is less than that of its copper")
            : Sentence.Of($"its note names another part");
        Sentence note = named is null ? Sentence.Of($"") : Sentence.Of($"; its note says {named.Title}");
        return Unknown(Description, cable.Id, null, Sentence.Of($"{cable.Title} is {Mm2(cable.AreaMm2.Value)}, but {what}{note}"), inputs) with
        {
            Working = isTooLight
                ? [new WorkingLine("Its copper alone", Formula.Of("{0} × {1} × {2} × {3}", v => v[0] * v[1] * v[2] * v[3], NominalFraction, CopperKgPerMMm2, cable.AreaMm2.Value, Math.Max(1, cable.Cores.Count)), new Amount(copperKg, "KgPerM"), $"{CopperSource}; a cross-section is nominal, the metal may be less")]
                : [],
        };
    }
}
