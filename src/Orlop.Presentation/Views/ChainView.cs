using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Presentation.Words;
using Orlop.Review;
using Orlop.Review.Electrics;
using Orlop.Review.Electrics.AcSide;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using Orlop.Review.Practices;

namespace Orlop.Presentation.Views;

/// <summary>A circuit as a chain from source to load, in one condition at its lowest charge, with the voltage along it.</summary>
public sealed record ChainView
{
    public required Chain Chain { get; init; }

    /// <summary>The condition the voltages are for; null when the boat has none.</summary>
    public Condition? Condition { get; init; }

    /// <summary>Source, everything on the way out, load.</summary>
    public required ImmutableArray<ChainItemView> Items { get; init; }

    /// <summary>Things that only the way back passes.</summary>
    public required ImmutableArray<ChainItemView> BackOnly { get; init; }

    /// <summary>Least voltage the load works at, in volts; null when it does not say.</summary>
    public double? LeastV { get; init; }

    /// <summary>What protects it, over current and time; null where no battery feeds it or nothing protects it.</summary>
    public ProtectionCurves? Protection { get; init; }

    /// <summary>How a fault to earth ends where the shore feeds it; null where anything else does, or it is not told.</summary>
    public AcRow? OnShore { get; init; }

    /// <summary>Its start in time, at the lowest charge; null for what has none, or is off in the condition.</summary>
    public StartInTime? Start { get; init; }

    /// <summary>Why its start cannot be told, in a sentence; null where it can, or it has none.</summary>
    public string? WhyNoStart { get; init; }

    /// <summary>Why some or all of the voltages are not there, in a sentence; null when they are.</summary>
    public string? WhyNoVoltage { get; init; }

    /// <summary>What its voltages wait for, each with where it is typed; empty when they are there, or nothing typed would bring them.</summary>
    public ImmutableArray<FindingInput> Waiting { get; init; } = [];

    /// <summary>The view of a chain, from what feeds it in the condition shown.</summary>
    /// <param name="traced">The chain with everything closed.</param>
    /// <param name="asBuilt">To see what a draft changes.</param>
    /// <param name="conditionId">The condition wanted; otherwise the first in which the load is on.</param>
    public static ChainView Of(Chain traced, BoatModel boat, BoatModel asBuilt, FindingsView? findings, string? conditionId, Memo memo)
    {
        Condition? condition = ConditionOf(traced, boat, conditionId);
        ElectricsView view = new(boat, Practice.Of(boat, memo), memo, CancellationToken.None);
        Chain chain = condition is null ? traced : Chain.In(boat, view.Wiring, traced.Taker, condition.Id)!;
        ChainVolts volts = condition is null ? ChainVolts.None(chain) : ChainVolts.Of(chain, view, condition);
        double? alongM = 0;
        ChainItemView Item(Thing thing, int? outIndex, double? runningV, double? startingV) => new()
        {
            Thing = thing,
            Kind = Wording.KindOf(thing),
            Facts = findings is null ? "" : ThingFacts.Of(thing, findings.Units, findings.Culture),
            RunningV = runningV,
            StartingV = startingV,
            AlongM = alongM,
            Findings = findings is null ? [] : [.. findings.About(thing.Id).Where(row => row.Pair.After is not null)],
            IsChanged = !Equals(asBuilt.Find(thing.Id), thing),
            OutIndex = outIndex,
        };

        ImmutableArray<ChainItemView>.Builder items = ImmutableArray.CreateBuilder<ChainItemView>();
        if (chain.Source is { } source)
        {
            items.Add(Item(source, null, volts.SourceV, volts.StartingSourceV));
        }

        for (int i = 0; i < chain.Out.Length; i++)
        {
            alongM += LengthM(chain.Out[i]);
            items.Add(Item(chain.Out[i].Thing, i, volts.Running[i], volts.Starting[i]));
        }

        items.Add(Item(chain.Taker, null, volts.LoadV, volts.StartingLoadV));
        StartInTime? start = condition is not null && chain.Taker is ElectricLoad starter && LoadElements.HasStart(starter) ? StartInTime.Of(view, starter, condition, ChargeCase.Lowest) : null;
        HashSet<string> shown = [.. items.Select(item => item.Thing.Id)];
        return new ChainView
        {
            Chain = chain,
            Condition = condition,
            Items = items.ToImmutable(),
            BackOnly = [.. chain.Back.Where(item => !shown.Contains(item.Thing.Id)).DistinctBy(item => item.Thing.Id).Select(item => Item(item.Thing, null, null, null))],
            Protection = condition is null || !chain.IsComplete ? null : ProtectionCurves.Of(view, chain.Taker, condition),
            OnShore = chain is { IsComplete: true, Source: ShoreInlet shore } ? AcTable.Of(view).FirstOrDefault(row => row.Taker.Id == chain.Taker.Id && row.Source.Id == shore.Id) : null,
            Start = start,
            WhyNoStart = start is { Missing: [_, ..] missing } ? $"Its start in time cannot be told: {MissingWords.Of(missing, boat)} not given." : start?.WhyNone,
            Waiting = [.. volts.Missing.Concat(start?.Missing ?? []).Concat(RatioMissing(chain, condition)).Distinct()],
            LeastV = (chain.Taker as ElectricLoad)?.LeastV?.Value,
            WhyNoVoltage = chain.Source is null ? $"Nothing feeds {chain.Taker.Title} yet: no way leads from it to a source."
                : !chain.IsComplete ? $"The way back from {chain.Taker.Title} to {chain.Source.Title} is not closed."
                : condition is null ? "The boat has no condition to reckon in."
                : WhyNot(volts, chain, boat),
        };
    }

    private static FindingInput[] RatioMissing(Chain chain, Condition? condition) =>
        condition is not null && chain.Taker is ElectricLoad load && LoadElements.IsOnIn(load, condition.Id) && Starts.IsRatioMissing(load) ? [new FindingInput(load.Id, "startRatio", IsMissing: true)] : [];

    private static string? WhyNot(ChainVolts volts, Chain chain, BoatModel boat) => volts switch
    {
        { Missing: [_, ..] missing } => $"The voltages cannot be told in this condition: {MissingWords.Of(missing, boat)} not given.",
        { SourceV: null } => "The voltages cannot be told in this condition: the circuit has no working state.",
        { IsOn: false } => $"{chain.Taker.Title} is off in this condition: the voltages are those without it, as far as a closed switch lets them through.",
        { LoadV: null } => $"{chain.Taker.Title} draws nothing that is known in this condition.",
        _ when chain.Taker is ElectricLoad load && Starts.IsRatioMissing(load) => $"The voltages while {chain.Taker.Title} starts cannot be told: how much it draws then is not given.",
        _ => null,
    };

    private static Condition? ConditionOf(Chain chain, BoatModel boat, string? conditionId) =>
        (conditionId is null ? null : boat.Find<Condition>(conditionId))
        ?? (chain.Taker as ElectricLoad)?.Uses.Select(use => boat.Find<Condition>(use.Condition)).FirstOrDefault(found => found is not null)
        ?? boat.All<Condition>().FirstOrDefault();

    private static double? LengthM(ChainItem item) => item.Thing switch
    {
        Cable cable => item.Edges.Select(edge => edge.Core).OfType<Core>().Distinct()
            .Aggregate((double?)0, (sum, core) => sum + (core.LengthM?.Value ?? cable.LengthM?.Value ?? (cable.Run.Count == 0 ? null : cable.Run.Sum(leg => leg.LengthM)))),
        Link link => link.LengthM?.Value ?? 0,
        _ => 0,
    };
}
