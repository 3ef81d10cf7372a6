using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Review;
using Orlop.Review.Electrics;
using Orlop.Review.Networks;
using Orlop.Review.Practices;

namespace Orlop.Presentation.Views;

/// <summary>The voltages along a chain, out node against the way back as far as it has come, from the solved network.</summary>
internal sealed record ChainVolts(
    double? SourceV, double? StartingSourceV, ImmutableArray<double?> Running, ImmutableArray<double?> Starting, double? LoadV, double? StartingLoadV)
{
    public static ChainVolts None(Chain chain) => new(null, null, [.. chain.Out.Select(_ => (double?)null)], [.. chain.Out.Select(_ => (double?)null)], null, null);

    public static ChainVolts Of(Chain chain, BoatModel boat, Condition condition, Memo memo)
    {
        ElectricsView view = new(boat, Practice.Of(boat, memo), memo, CancellationToken.None);
        SolvedNetwork running = view.Solve(condition, ChargeCase.Lowest);
        if (RestsOnMissing(chain, view, running, condition) || running.LoadV(chain.Taker.Id) is null)
        {
            return None(chain);
        }

        SolvedNetwork? starting = chain.Taker is ElectricLoad { StartRatio.Value: > 1 } ? view.Solve(new NetworkCase(condition.Id, ChargeCase.Lowest, chain.Taker.Id)) : null;
        return new ChainVolts(
            AtSource(chain, running),
            starting is null ? null : AtSource(chain, starting),
            Along(chain, running),
            starting is null ? [.. chain.Out.Select(_ => (double?)null)] : Along(chain, starting),
            running.LoadV(chain.Taker.Id),
            starting?.LoadV(chain.Taker.Id));
    }

    // Anything missing on the chain itself, or in the draw of anything that shares it.
    private static bool RestsOnMissing(Chain chain, ElectricsView view, SolvedNetwork solved, Condition condition)
    {
        HashSet<string> things = [chain.Taker.Id, .. chain.Out.Concat(chain.Back).Select(item => item.Thing.Id)];
        if (chain.Source is { } source)
        {
            things.Add(source.Id);
        }

        return MissingInputs.OfVoltage(view, solved, condition, chain.Taker.Id).Length > 0
            || solved.Built.Gaps.Keys.Any(id => things.Contains(ElementIds.ThingOf(id))
                || view.PathsIn(condition).ElementsTo(id).Any(element => things.Contains(ElementIds.ThingOf(element))));
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
