using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Conductors;
using Orlop.Electrics.Heat;
using Orlop.Review.Electrics;
using Orlop.Review.Electrics.Checks;
using Orlop.Review.Findings;
using Orlop.Review.Networks;

namespace Orlop.Review.Heat;

/// <summary>A cable of a bundle: what the table says of it, and what the network does.</summary>
/// <param name="Cable">The cable.</param>
/// <param name="CurrentA">Greatest current of its cores; null where the circuit has no working state.</param>
/// <param name="TableA">What it may carry by the table and its factors; null where that cannot be told.</param>
/// <param name="ConductorC">Its copper at rest, with the cable in the middle of the bundle; null where that cannot be told.</param>
public sealed record BundleCable(Cable Cable, double? CurrentA, double? TableA, double? ConductorC)
{
    /// <summary>Rise over the rise that its insulation allows; null where it cannot be told, or nothing is allowed.</summary>
    public double? UseFraction(double ambientC) => ConductorC is { } conductor && Cable.InsulationC is { } insulation ? Verdicts.UseOf(Math.Max(0, conductor - ambientC), insulation.Value - ambientC) : null;
}

/// <summary>How warm the cables of a way get together in a condition.</summary>
public sealed record BundleWarmth
{
    /// <summary>Share of the outside that air reaches where a way lies against something: a cable clipped to a wall loses some 0.8 of one in free air.</summary>
    public const double AgainstSomethingFraction = 0.8;

    /// <summary>Where that is from.</summary>
    public const string AgainstSource = "IEC 60287-2-1, clipped to a wall beside in free air, from memory";

    /// <summary>The way.</summary>
    public required Way Way { get; init; }

    /// <summary>The condition.</summary>
    public required Condition Condition { get; init; }

    /// <summary>Its cables, in the owner's order.</summary>
    public ImmutableArray<BundleCable> Cables { get; init; } = [];

    /// <summary>Air around; null where it cannot be told.</summary>
    public double? AmbientC { get; init; }

    /// <summary>The bundle taken apart for the engine; null where something is missing.</summary>
    public BundleInput? Input { get; init; }

    /// <summary>What came of it; null where something is missing or a circuit has no working state.</summary>
    public BundleResult? Result { get; init; }

    /// <summary>What is missing or in the way.</summary>
    public ImmutableArray<FindingInput> Missing { get; init; } = [];

    /// <summary>What a current lacks that is known only in part: it may be more.</summary>
    public ImmutableArray<FindingInput> MissingCurrents { get; init; } = [];

    /// <summary>The cable that is nearest to what its insulation bears.</summary>
    public BundleCable? Worst => AmbientC is not { } ambient ? null : Cables.Where(cable => cable.ConductorC is not null).MaxBy(cable => cable.UseFraction(ambient) ?? double.PositiveInfinity);

    /// <summary>How the worst cable warms, all currents switched on at once; null where it cannot be told.</summary>
    public ThermalResponseResult? Response() => Input is null || Worst is null ? null : BundleHeat.Response(Input, Cables.IndexOf(Worst));

    /// <summary>The cables that run along a way, in the owner's order.</summary>
    public static ImmutableArray<Cable> CablesOf(ElectricsView view, Way way)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(way);
        return [.. view.CablesAlong(way.Id)];
    }

    internal static BundleWarmth Of(ElectricsView view, Way way, Condition condition)
    {
        ImmutableArray<Cable> cables = CablesOf(view, way);
        List<FindingInput> missing = [.. cables.SelectMany(Lacks)];
        Surroundings around = way.Space is { } id && view.Boat.Find<Space>(id) is { } space
            ? view.Air.Of(space, condition)
            : new Surroundings(null, null, false, [new FindingInput(way.Id, "space", IsMissing: true)]);
        missing.AddRange(around.Missing);
        if (way.Means == WayKind.Conduit && way.InnerDiameterMm is null)
        {
            missing.Add(new FindingInput(way.Id, "innerDiameterMm", IsMissing: true));
        }

        BundleWarmth bundle = new()
        {
            Way = way,
            Condition = condition,
            AmbientC = around.AmbientC,
            Cables = [.. cables.Select(cable => new BundleCable(cable, CurrentOf(view, cable, condition), view.AmpacityOf(cable, condition) is { Missing.IsEmpty: true, Result: { } table } ? table.IsTooHot ? 0 : table.CurrentA : null, null))],
            MissingCurrents = MissingInputs.OfCurrent(view, condition, cables.SelectMany(Live)),
        };
        if (missing.Count > 0 || bundle.Cables.Any(cable => cable.CurrentA is null))
        {
            return bundle with { Missing = [.. missing.Distinct()] };
        }

        BundleInput input = new()
        {
            Subject = way.Id,
            AmbientC = around.AmbientC!.Value,
            OpenFraction = way.Means == WayKind.Gland ? 1 : AgainstSomethingFraction,
            ConduitInnerMm = way.Means == WayKind.Conduit ? way.InnerDiameterMm!.Value : null,
            Cables = [.. cables.Select(cable => new BundledCable(cable.Id, cable.OuterDiameterMm!.Value, CopperMm2(cable), LossWPerM(view, cable, condition)))],
        };
        if (input.ConduitInnerMm <= input.BundleMm)
        {
            return bundle with { Missing = [new FindingInput(way.Id, "innerDiameterMm")] };
        }

        BundleResult result = view.HeatOf(input);
        return bundle with
        {
            Input = input,
            Result = result,
            Cables = result.WhyNone is not null ? bundle.Cables : [.. bundle.Cables.Zip(result.Cables, (cable, found) => cable with { ConductorC = found.ConductorC })],
        };
    }

    private static IEnumerable<string> Live(Cable cable) => cable.Cores.Where(core => !ConductorAmpacityCheck.IsEarth(core)).Select(core => ElementIds.Core(cable, core));

    private static double? CurrentOf(ElectricsView view, Cable cable, Condition condition) => Live(cable).ToArray() is { Length: > 0 } live ? LoadedCurrents.GreatestA(view, condition, live) : 0;

    private static double CopperMm2(Cable cable) => cable.AreaMm2.Value * Math.Max(1, cable.Cores.Count);

    // A cable whose copper does not go into it is in the way as it is typed.
    private static IEnumerable<FindingInput> Lacks(Cable cable)
    {
        if (cable.InsulationC is null)
        {
            yield return new FindingInput(cable.Id, "insulationC", IsMissing: true);
        }

        if (cable.OuterDiameterMm is not { } outer)
        {
            yield return new FindingInput(cable.Id, "outerDiameterMm", IsMissing: true);
        }
        else if (Math.Sqrt(4 * CopperMm2(cable) / Math.PI) >= outer.Value)
        {
            yield return new FindingInput(cable.Id, "outerDiameterMm");
        }
    }

    // Rounded up to three digits, so that a millivolt more somewhere solves no bundle again.
    private static double LossWPerM(ElectricsView view, Cable cable, Condition condition)
    {
        double ohmPerM = ConductorResistance.OfMetreAt20(cable.AreaMm2.Value, ConductorElements.StrandOf(cable), ConductorElements.IsTinned(cable)).MostOhm;
        double loss = Live(cable).Sum(id => LoadedCurrents.GreatestA(view, condition, id) is { } current ? current * current * ohmPerM : 0);
        if (!(loss > 1e-6))
        {
            return 0;
        }

        double step = Math.Pow(10, Math.Floor(Math.Log10(loss)) - 2);
        return Math.Ceiling(loss / step) * step;
    }
}
