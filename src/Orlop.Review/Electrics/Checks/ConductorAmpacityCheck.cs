using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Working;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Each cable carries its current where it runs.</summary>
public sealed class ConductorAmpacityCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "conductor-ampacity",
        "Cable carries its current",
        "The greatest current of a cable's cores against its ampacity: table by size and insulation, corrected for the hottest space it passes and for the conductors loaded beside it.",
        [LimitIds.TableAmbientC, LimitIds.EngineSpaceC, LimitIds.GroupingFromV]);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from cable in view.Boat.All<Cable>()
        where cable.Cores.Any(core => !IsEarth(core))
        from condition in view.Conditions
        select Judge(view, cable, condition);

    internal static bool IsEarth(Core core) => core.From.Name == TerminalNames.Earth || core.To.Name == TerminalNames.Earth;

    private Finding Judge(ElectricsView view, Cable cable, Condition condition)
    {
        AmpacityOfCable where = view.AmpacityOf(cable, condition);
        if (where.Missing.Length > 0 && where.Result?.CurrentA is null)
        {
            return Unknown(Description, cable.Id, condition.Id, Sentence.Of($"{cable.Title}: what it may carry {In(condition)} cannot be told"), where.Missing);
        }

        if (view.Practice is not { } practice || where.Result is not { } ampacity)
        {
            return NoLimit(Description, cable.Id, condition.Id, cable.Title, "basis");
        }

        if (ampacity.Lookup == LookupKind.OutsideValidity && !ampacity.IsTooHot)
        {
            return Unknown(Description, cable.Id, condition.Id, Sentence.Of($"{cable.Title}: {ampacity.WhyNone}"), [new FindingInput(cable.Id, "areaMm2")]);
        }

        (string Id, double? CurrentA) fullest = cable.Cores.Where(core => !IsEarth(core))
            .Select(core => ElementIds.Core(cable, core))
            .Select(id => (Id: id, CurrentA: LoadedCurrents.GreatestA(view, condition, id)))
            .MaxBy(core => core.CurrentA ?? double.PositiveInfinity);
        if (fullest.CurrentA is not { } current)
        {
            return NotSolved(Description, cable.Id, condition, cable.Title);
        }

        double allowed = ampacity.IsTooHot ? 0 : ampacity.CurrentA ?? 0;
        Verdict verdict = Verdicts.Of(current, allowed);
        if (where.Missing.Length > 0 && verdict != Verdict.Fails)
        {
            return Unknown(Description, cable.Id, condition.Id, Sentence.Of($"{cable.Title}: what it may carry {In(condition)} cannot be told"), where.Missing);
        }

        ImmutableArray<FindingInput> missing = MissingInputs.OfCurrent(view, condition, cable.Cores.Where(core => !IsEarth(core)).Select(core => ElementIds.Core(cable, core)));
        if (missing.Length > 0 && verdict != Verdict.Fails)
        {
            return Unknown(Description, cable.Id, condition.Id, Sentence.Of($"{cable.Title} carries at least {A(current)} of {A(allowed)} {In(condition)}; what else it feeds is not known"), missing);
        }

        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = cable.Id,
            ConditionId = condition.Id,
            Verdict = verdict,
            UseFraction = Verdicts.UseOf(current, allowed),
            Headline = ampacity.IsTooHot
                ? Sentence.Of($"{cable.Title}: {where.SpaceTitle} at {new Amount(where.AmbientC, "C")} is as hot as its insulation may get")
                : where.Missing.Length > 0
                ? Sentence.Of($"{cable.Title} carries {A(current)} {In(condition)}; with the best insulation of all it may carry {A(allowed)}")
                : Sentence.Of($"{cable.Title} carries {A(current)} of the {A(allowed)} it may {In(condition)}"),
            WorkingWhenAsked = () =>
            [
                new WorkingLine("Greatest current", $"in core {fullest.Id.Split('.')[^1]}, the larger of normal and lowest charge", A(current), Solved(LoadedCurrents.GreatestCase(view, condition, fullest.Id), fullest.Id)),
                new WorkingLine("Hottest stretch", where.SpaceTitle, new Amount(where.AmbientC, "C"), ""),
                .. ampacity.Working.Select(step => Line(step, IsFromMemory(practice, step.Symbol))),
                Use(current, allowed),
            ],
            Inputs = [new FindingInput(cable.Id, "areaMm2"), new FindingInput(cable.Id, "insulationC", IsMissing: cable.InsulationC is null), new FindingInput(cable.Id, "run")],
        };
    }

    internal static bool IsFromMemory(Practice practice, string symbol) => symbol switch
    {
        "f_bundle" => practice.IsGroupingFromMemory,
        "I_table" => practice.IsAmpacityFromMemory,
        _ => false,
    };
}
