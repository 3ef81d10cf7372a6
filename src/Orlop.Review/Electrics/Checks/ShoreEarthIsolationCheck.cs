using Orlop.Boat.Things;
using Orlop.Review.Electrics.AcSide;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>The earth from ashore is not joined straight to the metal under water.</summary>
public sealed class ShoreEarthIsolationCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "shore-earth-isolation",
        "Shore earth and underwater metal are kept apart for small voltages",
        "Where the earth of a shore inlet leads to what is bonded to the hull: a galvanic isolator or an isolating transformer stands between, or the underwater metal of all boats on that earth makes a battery with yours.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) => view.Boat.All<ShoreInlet>().Select(inlet => Judge(view, inlet));

    private Finding Judge(ElectricsView view, ShoreInlet inlet)
    {
        bool isJoined = EarthWay.BondReached(view, inlet.At(TerminalNames.Earth).ToString()) is not null;
        if (isJoined && inlet.EarthIsolation is null)
        {
            return Unknown(Description, inlet.Id, null, Sentence.Of($"{inlet.Title}: its earth is joined to the hull, and whether a galvanic isolator or a transformer stands between is not known"), [new FindingInput(inlet.Id, "earthIsolation", IsMissing: true)]);
        }

        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = inlet.Id,
            Verdict = isJoined && inlet.EarthIsolation == EarthIsolation.None ? Verdict.Fails : Verdict.Holds,
            Headline = (isJoined, inlet.EarthIsolation) switch
            {
                (false, _) => Sentence.Of($"{inlet.Title}: its earth is joined to nothing that is bonded to the hull"),
                (_, EarthIsolation.GalvanicIsolator) => Sentence.Of($"{inlet.Title}: a galvanic isolator keeps the small voltages of other boats from the hull"),
                (_, EarthIsolation.IsolatingTransformer) => Sentence.Of($"{inlet.Title}: an isolating transformer keeps the shore's earth off the boat"),
                _ => Sentence.Of($"{inlet.Title}: the shore's earth is joined straight to the hull, whose anodes and plating then waste for other boats too"),
            },
            WorkingWhenAsked = () =>
            [
                new WorkingLine("Earth of the inlet", isJoined ? "leads to what is bonded to the hull" : "leads to nothing bonded", null, "the wiring as drawn"),
                new WorkingLine("Remedy", "never by leaving the earth off: a galvanic isolator in it, made for the fault current, or a transformer", null, "common practice, no source"),
            ],
            Inputs = [new FindingInput(inlet.Id, "earthIsolation")],
        };
    }
}
