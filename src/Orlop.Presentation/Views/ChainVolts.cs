using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Review.Networks;

namespace Orlop.Presentation.Views;

/// <summary>The voltages along a chain, out node against the way back as far as it has come, from the solved network.</summary>
internal sealed record ChainVolts(
    double? SourceV, double? StartingSourceV, ImmutableArray<double?> Running, ImmutableArray<double?> Starting, double? LoadV, double? StartingLoadV)
{
    // Below this a conductor carries nothing, and its own values move no voltage.
    private const double IdleA = 1e-6;

    /// <summary>The load is on in the condition.</summary>
    public bool IsOn { get; init; } = true;

    /// <summary>What is not given and the voltages rest on; there are none then.</summary>
    public ImmutableArray<FindingInput> Missing { get; init; } = [];

    public static ChainVolts None(Chain chain) => new(null, null, [.. chain.Out.Select(_ => (double?)null)], [.. chain.Out.Select(_ => (double?)null)], null, null);

    /// <summary>The voltages in a condition at its lowest charge. Where the load is off in it, those that stand there without it.</summary>
    public static ChainVolts Of(Chain chain, ElectricsView view, Condition condition)
    {
        SolvedNetwork running = view.Solve(condition, ChargeCase.Lowest);
        bool isOn = chain.Taker is not ElectricLoad load || LoadElements.IsOnIn(load, condition.Id);
        ImmutableArray<FindingInput> missing = MissingFor(chain, view, running, condition, isOn);
        if (missing.Length > 0)
        {
            return None(chain) with { IsOn = isOn, Missing = missing };
        }

        SolvedNetwork? starting = isOn && chain.Taker is ElectricLoad { StartRatio.Value: > 1 } ? view.Solve(new NetworkCase(condition.Id, ChargeCase.Lowest, chain.Taker.Id)) : null;
        return new ChainVolts(
            AtSource(chain, running),
            starting is null ? null : AtSource(chain, starting),
            Along(chain, running),
            starting is null ? None(chain).Starting : Along(chain, starting),
            isOn ? running.LoadV(chain.Taker.Id) : null,
            starting?.LoadV(chain.Taker.Id))
        {
            IsOn = isOn,
        };
    }

    // Anything missing on the chain itself, in a source that shares it, or in the draw of anything that does.
    private static ImmutableArray<FindingInput> MissingFor(Chain chain, ElectricsView view, SolvedNetwork solved, Condition condition, bool isOn)
    {
        HashSet<string> things = [chain.Taker.Id, .. chain.Out.Concat(chain.Back).Select(item => item.Thing.Id)];
        if (chain.Source is { } source)
        {
            things.Add(source.Id);
        }

        SupplyPaths paths = view.PathsIn(condition);
        bool Shares(string taker) => paths.ElementsTo(taker).Any(element => things.Contains(ElementIds.ThingOf(element)));
        bool Counts(string id) => !(solved.BranchA(id) is { } current && Math.Abs(current) < IdleA)
            && (things.Contains(ElementIds.ThingOf(id)) || Shares(id) || paths.TakersBehind(id) is { Count: > 1 } takers && takers.Any(Shares) || IsSourceBeside(id));
        bool IsSourceBeside(string id) => view.Boat.Find<Part>(id) is { } part && Poles.Giving(part) is not null
            && chain.Source is { } at && solved.NetworkOf(at.Id) is { } network && network == solved.NetworkOf(id);
        return
        [
            .. (isOn ? MissingInputs.OfVoltage(view, solved, condition, chain.Taker.Id) : [])
                .Concat(solved.Built.Gaps.Where(gap => Counts(gap.Key)).OrderBy(gap => gap.Key, StringComparer.Ordinal).SelectMany(gap => gap.Value)).Distinct(),
        ];
    }

    private static double? AtSource(Chain chain, SolvedNetwork solved) =>
        chain.Source is { } source && Poles.Giving(source) is { } poles ? solved.BetweenV(poles.Plus, poles.Minus) : null;

    private static ImmutableArray<double?> Along(Chain chain, SolvedNetwork solved)
    {
        string? back = chain.Back.Length > 0 ? chain.Back[0].EnteredAt : null;
        ImmutableArray<double?>.Builder volts = ImmutableArray.CreateBuilder<double?>(chain.Out.Length);
        foreach (ChainItem item in chain.Out)
        {
            back = chain.Back.FirstOrDefault(other => other.Thing.Id == item.Thing.Id)?.LeftAt ?? back;
            volts.Add(back is null ? null : solved.BetweenV(item.LeftAt, back));
        }

        return volts.ToImmutable();
    }
}
