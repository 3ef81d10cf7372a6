using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review;
using Orlop.Review.Networks;
using Orlop.Review.Readings;
using Orlop.Work.Readings;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>
/// Of the loads that are on in a condition, those that its readings need: what is read itself, and what moves a predicted value by more than a tenth of its accepted range, found by solving
/// the network without it. What is left off moves no value by more than that either, all of it together.
/// </summary>
internal static class LoadsThatCount
{
    // A reading this much off for a load that stays off is still held against the right range (common practice, no source).
    private const double TellingFraction = 0.1;

    /// <summary>In the order of the boat; all of them where a value cannot be predicted with one of them off.</summary>
    public static ImmutableArray<ElectricLoad> Of(PackScope scope, Condition condition, ImmutableArray<ElectricLoad> on, ImmutableArray<PredictedReading> readings)
    {
        PredictedReading[] told = [.. readings.Where(reading => reading.Expected is { } band && band.Most.Value > band.Least.Value && !CommissioningReadings.IsBeforeJoining(reading))];
        HashSet<string> read = [.. readings.SelectMany(reading => reading.About)];
        ElectricLoad[] rest = [.. on.Where(load => !read.Contains(load.Id))];
        if (told.Length == 0 || rest.Length == 0)
        {
            return on;
        }

        Memo memo = new();
        SolvedNetwork whole = Solved(on => on);
        List<ElectricLoad> byEffect = [.. rest.OrderByDescending(load => Moved([load]))];
        int kept = byEffect.TakeWhile(load => Moved([load]) > TellingFraction).Count();
        while (kept < byEffect.Count && Moved(byEffect[kept..]) > TellingFraction)
        {
            kept++;
        }

        HashSet<string> off = [.. byEffect[kept..].Select(load => load.Id)];
        return [.. on.Where(load => !off.Contains(load.Id))];

        SolvedNetwork Solved(Func<ElectricLoad, ElectricLoad> each)
        {
            BoatModel boat = scope.AsAltered.WithThings(scope.AsAltered.Things.Select(thing => thing is ElectricLoad load ? each(load) : thing));
            return ConditionPrediction.NominalOf(boat, scope.AlteredWiring, scope.Practice, condition, memo, CancellationToken.None);
        }

        // The greatest share of its accepted range that any reading moves by with these off; infinite where one can no longer be told.
        double Moved(IReadOnlyCollection<ElectricLoad> loads)
        {
            HashSet<string> ids = [.. loads.Select(load => load.Id)];
            SolvedNetwork without = Solved(load => ids.Contains(load.Id) ? load with { Uses = load.Uses.Where(use => use.Condition != condition.Id).ToValueList() } : load);
            return told.Max(reading => Value(without, reading) is { } value && Value(whole, reading) is { } nominal
                ? Math.Abs(value - nominal) / (reading.Expected!.Most.Value - reading.Expected.Least.Value)
                : double.PositiveInfinity);
        }
    }

    private static double? Value(SolvedNetwork network, PredictedReading reading) => reading switch
    {
        { Plus: { } plus, Minus: { } minus } => network.BetweenV(plus.ToString(), minus.ToString()),
        { Through: { } through } => network.BranchA(through) ?? network.LoadA(through) ?? network.SourceA(through),
        _ => null,
    };
}
