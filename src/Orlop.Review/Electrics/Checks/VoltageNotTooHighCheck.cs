using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>No load sees more voltage than it bears.</summary>
public sealed class VoltageNotTooHighCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "voltage-not-too-high",
        "Not too much voltage at a load",
        "The highest voltage of any source that reaches a load with everything closed (a full battery, a charger's set voltage) against the practice's share of the load's nominal voltage. Nothing is taken off for what is lost on the way.",
        [LimitIds.GreatestVoltageFraction]);

    public IEnumerable<Finding> Run(ElectricsView view) => view.Boat.All<ElectricLoad>().Select(load => Judge(view, load));

    private Finding Judge(ElectricsView view, ElectricLoad load)
    {
        if (view.Practice?.Find(LimitIds.GreatestVoltageFraction) is not { } limit)
        {
            return NoLimit(Description, load.Id, null, load.Title, LimitIds.GreatestVoltageFraction);
        }

        Part[] sources = [.. view.SourcesReaching(load)];
        FindingInput[] unknown = [.. sources.Where(source => SystemVoltage.GreatestV(source) is null).Select(source => new FindingInput(source.Id, "openCircuit", IsMissing: true))];
        Part? highest = sources.MaxBy(SystemVoltage.GreatestV);
        double nominal = load.NominalV.Value, allowed = limit.Value * nominal;
        double? volts = highest is null ? null : SystemVoltage.GreatestV(highest);
        if (unknown.Length > 0 && !(volts > allowed))
        {
            return Unknown(Description, load.Id, null, Sentence.Of($"{load.Title}: the highest voltage it may see is not known"), [.. unknown]);
        }

        if (SystemVoltage.InSeries(view, sources) is { } upper && !(volts > allowed))
        {
            return Unknown(Description, load.Id, null, Sentence.Of($"{load.Title}: {upper.Title} stands in series on another source, so the highest voltage cannot be told"), [new FindingInput(upper.Id, "id")]);
        }

        if (highest is null || volts is not { } most)
        {
            return Unknown(Description, load.Id, null, Sentence.Of($"{load.Title}: no source reaches it, so its highest voltage is not known"), [new FindingInput(load.Id, "id")]);
        }

        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = load.Id,
            // System voltages come in steps: what is on the right system is well within the limit or just within it, and both are meant so.
            Verdict = Verdicts.Of(most, allowed) is Verdict.Tight ? Verdict.Holds : Verdicts.Of(most, allowed),
            UseFraction = Verdicts.UseOf(most, allowed),
            Headline = Sentence.Of($"{load.Title} for {V(nominal)} may see {V(most)} from {highest.Title}; it bears up to {V(allowed)}"),
            WorkingWhenAsked = () =>
            [
                new WorkingLine("Highest voltage", $"{highest.Title}, the highest of all that reach it: a full battery, a charger at its set voltage", V(most), SystemVoltage.SourceOfGreatest(sources)),
                Line(limit, "Over nominal it may see", "Fraction"),
                new WorkingLine("Bears", Formula.Of("{0} × {1}", v => v[0] * v[1], limit.Value, nominal), V(allowed), ""),
                Use(most, allowed),
            ],
            Inputs = [new FindingInput(load.Id, "nominalV")],
        };
    }
}
