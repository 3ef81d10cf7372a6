using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Work.Bring;
using Orlop.Work.Ends;
using Orlop.Work.Labels;
using Orlop.Work.Loading;
using Orlop.Work.Readings;
using Orlop.Work.Steps;

namespace Orlop.Work;

/// <summary>What is printed or carried on a phone for a visit: what to bring, what to do in which order, what to measure.</summary>
public sealed record WorkPack
{
    /// <summary>The boat as built when the pack was made.</summary>
    public required BoatModel AsBuilt { get; init; }

    /// <summary>The boat as it will be.</summary>
    public required BoatModel AsAltered { get; init; }

    public required Alteration Alteration { get; init; }

    /// <summary>Edits that no longer fit the boat as built: nothing may be started until the owner has seen them.</summary>
    public required ImmutableArray<Clash> Clashes { get; init; }

    /// <summary>What the alteration takes as said and nobody builds; it goes into the boat as built with the last that is.</summary>
    public required ImmutableArray<Edit> Assumed { get; init; }

    /// <summary>What to bring for what is not built yet.</summary>
    public required ImmutableArray<BringItem> Bring { get; init; }

    /// <summary>What to cut for what is not built yet, and from which reels and offcuts.</summary>
    public required CutPlan Cutting { get; init; }

    /// <summary>The lengths to cut, longest first.</summary>
    public ImmutableArray<CableCut> Cuts => Cutting.Cuts;

    /// <summary>Where the cables go that are not built yet, and through which holes.</summary>
    public required ImmutableArray<CableWay> Ways { get; init; }

    /// <summary>The steps, in order, those already done among them.</summary>
    public required ImmutableArray<WorkStep> Steps { get; init; }

    /// <summary>Those whose test did not pass when it was last read: nothing that rests on it may go on.</summary>
    public ImmutableArray<WorkStep> FailedTests => [.. Steps.Where(step => step.Failed is not null)];

    /// <summary>How many people the steps need.</summary>
    public PeopleNeed People => PeopleNeed.Of(Steps);

    /// <summary>Every core end of the alteration's cables, as it is made off.</summary>
    public required ImmutableArray<CableEnd> Ends { get; init; }

    /// <summary>What lies on the studs that the alteration touches, from the face outward.</summary>
    public required ImmutableArray<EndStack> Stacks { get; init; }

    public required ImmutableArray<WorkLabel> Labels { get; init; }

    /// <summary>What to measure at commissioning.</summary>
    public required ImmutableArray<PredictedReading> Readings { get; init; }

    /// <summary>What the alteration does to the boat's weight.</summary>
    public required WeighingPlan Weights { get; init; }

    /// <summary>What the boat is called.</summary>
    public string BoatTitle => AsBuilt.Particulars?.Title is { Length: > 0 } title ? title : "Boat";
}
