using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;

namespace Orlop.Work.Loading;

/// <summary>A boat loaded as in a condition but with no tank slack, as she is inclined: liquid that runs falsifies the heel (2008 IS Code part B 8, from memory).</summary>
/// <param name="Boat">The boat with its tanks so in that condition.</param>
/// <param name="Tanks">Each tank that is slack in the condition, or of which no fill is told, and whether it is pressed full; else it is emptied.</param>
public sealed record PressedTanks(BoatModel Boat, ImmutableArray<(Tank Tank, bool IsFull)> Tanks)
{
    // The nearer: least liquid to fetch or to pump. One of which no fill is told is emptied.
    private const double FullFromFraction = 0.5;

    /// <summary>Of a condition; with no tanks where none is slack in it.</summary>
    public static PressedTanks Of(BoatModel boat, Condition condition)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(condition);
        ImmutableArray<(Tank Tank, bool IsFull)> slack =
        [
            .. from tank in boat.All<Tank>()
               let fill = tank.Fills.FirstOrDefault(fill => fill.Condition == condition.Id)?.FillFraction ?? tank.FillFraction?.Value
               where fill is null or (> 0 and < 1)
               select (tank, fill >= FullFromFraction),
        ];
        Dictionary<string, Tank> pressed = slack.ToDictionary(
            one => one.Tank.Id, one => one.Tank with { Fills = [.. one.Tank.Fills.Where(fill => fill.Condition != condition.Id), new TankFill(condition.Id, one.IsFull ? 1 : 0)] }, StringComparer.Ordinal);
        return new PressedTanks(boat.WithThings(boat.Things.Select(thing => pressed.GetValueOrDefault(thing.Id) ?? thing)), slack);
    }

    /// <summary>"Fuel tank pressed full; Water tank empty"; "tanks as written there" where none is slack.</summary>
    public string Words => Tanks.IsEmpty ? "tanks as written there" : string.Join("; ", Tanks.Select(one => $"{one.Tank.Title} {(one.IsFull ? "pressed full" : "empty")}"));
}
