using Orlop.Boat.Things;
using Orlop.Electrics.Heat;
using Orlop.Review.Networks;

namespace Orlop.Review.Mending;

/// <summary>
/// Whether more air can warm a space. Heat is only set free in spaces, so none gets colder than the coldest of what is held around them: where the air that comes in is that, more of it never warms
/// one, whatever else is chosen. Where it is not, or comes from a space that is reckoned too and gets the heat, too much may be as bad as too little.
/// </summary>
internal static class AirDirection
{
    /// <summary>In every condition the air that a space takes in is no warmer than all that is around it, and around the spaces that are reckoned with it.</summary>
    /// <param name="from">The space that its air comes from; null for the air outside.</param>
    public static bool IsNeverWarmer(MendBench bench, Space space, string? from)
    {
        Space? source = from is null ? null : bench.Draft.Find<Space>(from);
        return source?.IsReckoned != true && bench.View.Conditions.All(condition =>
        {
            double? airC = source is null ? condition.OutsideC?.Value : CoreSurroundings.Typed(bench.View.Practice, source, condition).AmbientC;
            return airC is { } air && bench.View.WarmthsIn(condition).Each
                .Where(warmth => warmth.Space.Id == space.Id || (space.IsReckoned == true && warmth.Space.IsReckoned == true))
                .All(warmth => warmth.Input is { } input && IsNoWarmer(air, input));
        });
    }

    private static bool IsNoWarmer(double airC, HeatedSpace input) =>
        input.Sides.All(side => airC <= side.OutsideC) && ((input.Openings.IsEmpty && input.FanM3PerH <= 0) || airC <= input.AirC);
}
