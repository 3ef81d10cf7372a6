using Orlop.Boat.Things;
using Orlop.Review.Electrics.AcSide;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Live and neutral exchanged ashore leave nothing live that a switch has opened.</summary>
public sealed class ShorePolarityCheck : ICheck<ElectricsView>
{
    private const string Source = "ISO 13297: polarity shown, unless devices open both poles";

    public CheckDescription Description { get; } = new(
        "shore-polarity",
        "Exchanged poles ashore are harmless or shown",
        "From each shore inlet to each AC load: every fuse, breaker and switch opens both poles, or a lamp or meter shows when live and neutral are exchanged ashore.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) => view.Boat.All<ShoreInlet>().Select(inlet => Judge(view, inlet) with { Caution = Cautions.MainsVoltage });

    private Finding Judge(ElectricsView view, ShoreInlet inlet)
    {
        AcCircuit[] circuits = [.. view.EarthFaults.Select(fault => fault.Circuit).Where(circuit => circuit.Source.Id == inlet.Id)];
        Part? onePole = circuits.SelectMany(circuit => circuit.Live).Select(edge => edge.Owner).OfType<Part>()
            .FirstOrDefault(part => part is Protection { IsTwoPole: false } or IsolatorSwitch { IsTwoPole: false });
        if (inlet.ShowsPolarity is null && onePole is not null)
        {
            return Unknown(Description, inlet.Id, null, Sentence.Of($"{inlet.Title}: {onePole.Title} opens one pole only, and whether anything shows exchanged poles is not known"), [new FindingInput(inlet.Id, "showsPolarity", IsMissing: true)]);
        }

        bool isShown = inlet.ShowsPolarity == true;
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = inlet.Id,
            Verdict = isShown || onePole is null ? Verdict.Holds : Verdict.Fails,
            Headline = (isShown, onePole) switch
            {
                (true, _) => Sentence.Of($"{inlet.Title}: exchanged poles ashore are shown; look before anything is switched on"),
                (_, null) => Sentence.Of($"{inlet.Title}: every device behind it opens both poles, so exchanged poles ashore leave nothing live that is switched off"),
                _ => Sentence.Of($"{inlet.Title}: with poles exchanged ashore, what {onePole.Title} switches off stays live, and nothing shows it"),
            },
            WorkingWhenAsked = () =>
            [
                new WorkingLine("Devices from the inlet on", onePole is null ? "all open both poles" : $"{onePole.Title} opens one", null, "the wiring as drawn"),
                new WorkingLine("Wanted", "both poles opened, or polarity shown", null, Source, IsFromMemory: true),
            ],
            Inputs = [new FindingInput(inlet.Id, "showsPolarity"), .. onePole is null ? [] : new[] { new FindingInput(onePole.Id, "isTwoPole") }],
        };
    }
}
