using Orlop.Boat.Things;
using Orlop.Review.Electrics.AcSide;
using Orlop.Review.Findings;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>In each mode the neutral is joined to earth once, and before the residual-current device.</summary>
public sealed class NeutralBondCheck : ICheck<ElectricsView>
{
    private const string One = "French order of 23 November 1987, Division 240, 240-2.31 VII: neutral earthed only at the active source";

    public CheckDescription Description { get; } = new(
        "neutral-earth-bond",
        "Neutral and earth are joined once",
        "While a source feeds, its neutral is joined to earth in exactly one place: inside it or ashore as it says, or along a conductor on board, and not behind a residual-current device. None: no breaker sees a fault. Two: current of the neutral flows in earth and hull.",
        []);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from source in AcCircuits.Sources(view)
        from condition in view.Conditions
        where AcCircuits.Takers(view).Any(taker => view.WayTo(taker, condition).SourceId == source.Id)
        select Judge(view, source, condition) with { Caution = Cautions.EarthFault };

    private Finding Judge(ElectricsView view, Part source, Condition condition)
    {
        NeutralBonds bonds = NeutralBonds.Of(view, source, condition);
        if (bonds.BehindResidual.IsEmpty && bonds.Places.Length < 2 && !bonds.Missing.IsEmpty)
        {
            return Unknown(Description, source.Id, condition.Id, Sentence.Of($"{source.Title}: where its neutral is joined to earth is not known"), bonds.Missing);
        }

        bool feedsOne = view.EarthFaults.Count(fault => fault.Circuit.Source.Id == source.Id) <= 1;
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = source.Id,
            ConditionId = condition.Id,
            Verdict = bonds.BehindResidual.IsEmpty && (bonds.Places.Length == 1 || (bonds.Places.IsEmpty && feedsOne)) ? Verdict.Holds : Verdict.Fails,
            Headline = HeadlineOf(source, bonds, feedsOne),
            WorkingWhenAsked = () =>
            [
                new WorkingLine("Joined", bonds.Places.IsEmpty ? "nowhere" : string.Join("; ", bonds.Places), null, "as the sources say, and the wiring as drawn"),
                new WorkingLine("Wanted", "one place while it feeds, at the source", null, One),
                .. bonds.Places.IsEmpty ? [new WorkingLine("Without any", feedsOne ? "one item from one floating source may be" : "only one item from one floating source may be", null, "IEC 60364-4-41, 413", IsFromMemory: true)] : Array.Empty<WorkingLine>(),
            ],
            Inputs = [new FindingInput(source.Id, "neutralBond"), .. bonds.OnBoard.Select(edge => new FindingInput(edge.Owner.Id, "id"))],
        };
    }

    private static Sentence HeadlineOf(Part source, NeutralBonds bonds, bool feedsOne) => bonds switch
    {
        { BehindResidual: [var behind, ..] } => Sentence.Of($"{source.Title}: neutral and earth are joined along {behind.Owner.Title}, behind the residual-current device, which then opens at once or is blind to a fault"),
        { Places.Length: 0 } when feedsOne => Sentence.Of($"{source.Title}: its neutral is joined to earth nowhere, and it feeds one item alone"),
        { Places.Length: 0 } => Sentence.Of($"{source.Title}: its neutral is joined to earth nowhere, so neither breaker nor residual-current device sees a fault"),
        { Places.Length: 1 } => Sentence.Of($"{source.Title}: its neutral is joined to earth once, {bonds.Places[0]}"),
        _ => Sentence.Of($"{source.Title}: its neutral is joined to earth {bonds.Places.Length} times ({string.Join("; ", bonds.Places)}), so current of the neutral flows in earth and hull"),
    };
}
