using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>A residual-current device stands between every AC source and every AC load.</summary>
public sealed class ResidualDeviceCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "residual-current-device",
        "AC loads are behind a residual-current device",
        "No way leads from an AC source to an AC load without passing a two-pole device that opens at the practice's residual current or less.",
        [LimitIds.ResidualA]);

    public IEnumerable<Finding> Run(ElectricsView view) => view.Boat.All<ElectricLoad>().Where(load => load.IsAc).Select(load => Judge(view, load));

    private Finding Judge(ElectricsView view, ElectricLoad load)
    {
        if (view.Practice?.Find(LimitIds.ResidualA) is not { } limit)
        {
            return NoLimit(Description, load.Id, null, load.Title, LimitIds.ResidualA) with { Caution = Cautions.MainsVoltage };
        }

        if (Unguarded(view, load, 0) is null)
        {
            return Unknown(Description, load.Id, null, Sentence.Of($"{load.Title}: no AC source reaches it, so what guards it is not known"), [new FindingInput(load.Id, "id")]) with { Caution = Cautions.MainsVoltage };
        }

        Part? unguarded = Unguarded(view, load, limit.Value);
        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = load.Id,
            Verdict = unguarded is null ? Verdict.Holds : Verdict.Fails,
            Headline = unguarded is null
                ? Sentence.Of($"{load.Title} is behind a residual-current device of at most {A(limit.Value)}")
                : Sentence.Of($"{load.Title} is fed by {unguarded.Title} with no residual-current device of {A(limit.Value)} or less between"),
            Working = [Line(limit, "Residual current", "A"), new WorkingLine("Ways from AC sources", unguarded is null ? "all pass such a device" : $"one from {unguarded.Title} passes none", null, "the wiring as drawn"), new WorkingLine("Neutral", "the device sees a fault only where neutral and earth are joined at the source: that has a finding of its own", null, "")],
            Inputs = [new FindingInput(load.Id, "isAc")],
            Caution = Cautions.MainsVoltage,
        };
    }

    private static Part? Unguarded(ElectricsView view, ElectricLoad load, double mostA)
    {
        Queue<string> queue = new([load.At(TerminalNames.Live).ToString()]);
        HashSet<string> seen = [.. queue];
        while (queue.TryDequeue(out string? node))
        {
            if (view.Boat.All<Part>().FirstOrDefault(part => Poles.Giving(part) is { IsAc: true } giving && giving.Plus == node) is { } source)
            {
                return source;
            }

            foreach (WiringEdge edge in view.Wiring.At(node).Where(edge => !(edge.Owner is Protection { IsTwoPole: true, ResidualA: { } residual } && residual.Value <= mostA)))
            {
                if (seen.Add(edge.Other(node)))
                {
                    queue.Enqueue(edge.Other(node));
                }
            }
        }

        return null;
    }
}
