using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Electrics.AcSide;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>The earth of each AC source is joined to the hull and to the DC minus.</summary>
public sealed class AcEarthJoinedCheck : ICheck<ElectricsView>
{
    private const string ToHull = "French order of 23 November 1987, Division 240, 240-2.32: protective conductor bonded to the hull or an immersed plate";

    public CheckDescription Description { get; } = new(
        "ac-earth-joined",
        "The AC earth is joined to hull and DC minus",
        "The earth of each AC source leads, through metal that only a spanner parts, to a bar or post that is bonded to the hull, and so does the minus of each battery: a fault of the AC side to hull or battery wiring then opens its device.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) => AcCircuits.Sources(view).Select(source => Judge(view, source) with { Caution = Cautions.EarthFault });

    private Finding Judge(ElectricsView view, Part source)
    {
        BatteryBank[] batteries = [.. view.Boat.All<BatteryBank>()];
        Terminal? bond = EarthWay.BondReached(view, source.At(TerminalNames.Earth).ToString());
        BatteryBank? apart = batteries.FirstOrDefault(battery => !view.Grounding.IsGrounded(battery.At(TerminalNames.Minus).ToString()));
        if (bond is not null && apart is { IsMinusBonded: null })
        {
            return Unknown(Description, source.Id, null, Sentence.Of($"{source.Title}: whether the minus of {apart.Title} is joined to the AC earth is not known"), [new FindingInput(apart.Id, "isMinusBonded", IsMissing: true)]);
        }

        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = source.Id,
            Verdict = bond is not null && apart is null ? Verdict.Holds : Verdict.Fails,
            Headline = (bond, apart) switch
            {
                (null, _) => Sentence.Of($"{source.Title}: its earth leads to nothing that is bonded to the hull"),
                (_, { } battery) => Sentence.Of($"{source.Title}: its earth is bonded to the hull, but the minus of {battery.Title} is not: a fault to the battery wiring opens nothing"),
                _ => Sentence.Of($"{source.Title}: its earth is joined to the hull at {view.Boat.Find(bond.Value.Part)?.Title ?? bond.Value.Part}, as the DC minus is"),
            },
            WorkingWhenAsked = () =>
            [
                new WorkingLine("Earth of the source", bond is { } at ? $"bonded at {at}" : "no bonded bar or post along plain metal", null, "the wiring as drawn"),
                new WorkingLine("Minus of the batteries", batteries.Length == 0 ? "no battery" : apart is null ? "bonded" : $"{apart.Title} not bonded", null, "the wiring as drawn"),
                new WorkingLine("Wanted", "earth bonded to the hull", null, ToHull),
                new WorkingLine("Wanted", "earth joined to the DC minus", null, "ISO 13297", IsFromMemory: true),
            ],
            Inputs = [new FindingInput(source.Id, "id"), .. batteries.Select(battery => new FindingInput(battery.Id, "isMinusBonded"))],
        };
    }
}
