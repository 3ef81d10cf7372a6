using Orlop.Boat;
using Orlop.Boat.Things;

namespace Orlop.Presentation.Views.Floating;

/// <summary>How a boat is seen with a space flooded: by its permeability, which nothing else asks for.</summary>
public static class FloodHint
{
    /// <summary>The field that brings it.</summary>
    public const string Field = "permeabilityFraction";

    /// <summary>"Say how much of Cuddy water can fill, to see her flooded", and the space; null without a hull, or where every space has said.</summary>
    public static (string Text, string ThingId)? Of(BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        Space[] silent = [.. boat.All<Space>().Where(space => space.PermeabilityFraction is null).OrderByDescending(BoxM3)];
        return silent.Length == 0 || !boat.All<HullLines>().Any(lines => lines.Stations.Count > 0) ? null
            : ($"Say how much of {silent[0].Title}{(silent.Length == 1 ? "" : $", or of {silent.Length - 1} other {(silent.Length == 2 ? "space" : "spaces")},")} water can fill, to see her flooded", silent[0].Id);
    }

    // The largest first: it matters most.
    private static double BoxM3(Space space) => Math.Abs((space.To.XM - space.From.XM) * (space.To.YM - space.From.YM) * (space.To.ZM - space.From.ZM));
}
