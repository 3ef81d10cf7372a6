using Orlop.Boat.Things;

namespace Orlop.Review.Energy;

/// <summary>In which hours of the day a load is on.</summary>
internal static class UseHours
{
    private const int Hours = 24;

    /// <summary>A use with a first hour and no last, or the other way round, says nothing.</summary>
    public static bool IsHalfGiven(LoadUse use) => use.FromHour is null != use.ToHour is null;

    /// <summary>A use holds in an hour, 0 to 23; at any hour where it gives none.</summary>
    public static bool Holds(LoadUse use, int hour) => use is not { FromHour: { } from, ToHour: { } to } || IsWithin(from, to, hour);

    /// <summary>Share of an hour that a load is on in a condition, 0 to 1.</summary>
    public static double Share(ElectricLoad load, Condition? condition, int hour) => condition is null ? 0
        : Math.Min(1, load.Uses.Where(use => use.Condition == condition.Id && Holds(use, hour)).Sum(use => use.DutyFraction));

    /// <summary>An hour lies between two, over midnight where the second is at or before the first; all day where they are the same.</summary>
    public static bool IsWithin(int from, int to, int hour)
    {
        int count = (to - from + Hours) % Hours;
        return count == 0 || (hour - from + Hours) % Hours < count;
    }
}
