using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Hull.Criteria;
using Orlop.Hull.Floating;

namespace Orlop.Review.Stability;

/// <summary>The heeling levers of the rules that a boat is held against, to be drawn among her righting levers.</summary>
public static class HeelingLevers
{
    private const double SameDeg = 1e-6;

    /// <summary>Those of a condition to one side; none where she does not float, or where what a rule takes is not given.</summary>
    /// <param name="view">The boat.</param>
    /// <param name="condition">One of her conditions.</param>
    /// <param name="side">1 for starboard, -1 for port.</param>
    public static IEnumerable<HeelingLever> Of(StabilityView view, Condition condition, int side)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(condition);
        LoadedBoat loaded = view.LoadedIn(condition);
        return view.FloatingIn(condition) is null ? [] : [.. Wind(view, loaded, side), .. People(view, loaded, side), .. Hung(view, loaded, side)];
    }

    private static IEnumerable<HeelingLever> Wind(StabilityView view, LoadedBoat loaded, int side)
    {
        if (view.Basis is not { WindAreaM2: not null, WindCentreM: not null } basis || !basis.Rules.Contains(StabilityRule.Weather)
            || WeatherLevers.Of(view, basis, loaded, loaded.Input!, side) is not { } found)
        {
            yield break;
        }

        yield return Level(HeelingCause.SteadyWind, found.SteadyLeverM, found.Areas?.SteadyHeelDeg);
        yield return Level(HeelingCause.Gust, GustAreas.GustFactor * found.SteadyLeverM, found.Areas?.GustHeelDeg);
    }

    private static HeelingLever Level(HeelingCause cause, double leverM, double? meetsDeg) =>
        new(cause, "", [new HeelingPoint(0, leverM), new HeelingPoint(Levers.LastDeg, leverM)], meetsDeg, "Res. A.749(18) 3.2, constant with heel");

    private static IEnumerable<HeelingLever> People(StabilityView view, LoadedBoat loaded, int side)
    {
        if (view.Basis is not { PeopleCount: > 0 and var count } basis || !(basis.Rules.Contains(StabilityRule.SmallCraft) || basis.Rules.Contains(StabilityRule.OpenBoat))
            || PeopleAboard.Of(view, loaded).Length == 0)
        {
            return [];
        }

        // What they take from the righting levers: their weight in place of those listed, at the side.
        (LoadedBoat moved, _) = PeopleAboard.ToOneSide(view, loaded, count, side);
        RightingCurve listed = Levers.To(side, loaded.Input!, []), aside = Levers.To(side, moved.Input!, []);
        return
        [
            new HeelingLever(HeelingCause.People, count.ToString(CultureInfo.InvariantCulture),
                [.. listed.Points.Zip(aside.Points, (was, now) => new HeelingPoint(Math.Abs(was.HeelDeg), side * (was.GzM - now.GzM)))],
                RestDeg(moved.Input!, side), "difference of levers solved with the people listed and with all at the side"),
        ];
    }

    private static IEnumerable<HeelingLever> Hung(StabilityView view, LoadedBoat loaded, int side) =>
        from hung in HungWeight.In(view)
        where hung.With.Condition.Id == loaded.Condition.Id && hung.Without is not null
        select new HeelingLever(HeelingCause.HungWeight, hung.Deadweight.Title,
            [.. Levers.To(side, hung.Without!.Input!, []).Points.Select(point => new HeelingPoint(Math.Abs(point.HeelDeg), side * point.GzM))],
            RestDeg(loaded.Input!, side), "levers solved without the weight");

    private static double? RestDeg(FloatingInput boat, int side) =>
        Equilibrium.Solve(boat) is { Status: FloatingStatus.Floats, Position: { } at } && side * at.Attitude.HeelDeg is var heel and > SameDeg and < Levers.LastDeg ? heel : null;
}
