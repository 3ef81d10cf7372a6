using System.ComponentModel;
using Orlop.Boat.Values;

namespace Orlop.Boat.Things;

/// <summary>Sun and air of a place, month by month.</summary>
[Kind("climate")]
public sealed record Climate : Thing
{
    [Description("Latitude, north positive. Beyond 66° a day may have no end, and nothing is reckoned."), Allowed(-66, 66)]
    public Quantity? LatitudeDeg { get; init; }

    [Description("Longitude, east positive. With it and her clock the hours of day plans are the clock's; left out with the clock, they are the sun's."), Allowed(-180, 180)]
    public Quantity? LongitudeDeg { get; init; }

    [Description("How far the clock that her hours are told by is ahead of universal time, the same all year: 2 for summer time where winter has 1."), Allowed(-12, 14)]
    public Quantity? ClockFromUtcHour { get; init; }

    [Description("Place of the built-in table that months without a sun of their own are taken from; its latitude must be near.")]
    public string? Table { get; init; }

    [Description("Sun and air of each month.")]
    public ValueList<ClimateMonth> Months { get; init; } = [];
}

/// <summary>A month of a climate.</summary>
/// <param name="CalendarMonth">1 to 12.</param>
/// <param name="AirC">Mean temperature of the air.</param>
/// <param name="SunWhPerM2">Mean light on the horizontal in a day; left out, the table's.</param>
public sealed record ClimateMonth(
    [property: Allowed(1, 12)] int CalendarMonth,
    [property: Description("Mean temperature of the air."), Allowed(-60, 60)] double AirC,
    [property: Description("Mean light on the horizontal in a day; left out, the table's."), Allowed(0, 12_000)] double? SunWhPerM2 = null);

/// <summary>How a battery's day goes: which condition in which hours, for how many days, how often.</summary>
[Kind("day-plan")]
public sealed record DayPlan : Thing
{
    [Description("The battery that it draws on."), RefersTo(typeof(BatteryBank))]
    public string? Battery { get; init; }

    [Description("Sun and air where she is."), RefersTo(typeof(Climate))]
    public string? Climate { get; init; }

    [Description("Which condition she is in, in which hours of the day; an hour that none names, she lies. By the clock of its climate; where that tells none, by the sun's: noon is when it stands highest.")]
    public ValueList<PlanHours> Hours { get; init; } = [];

    [Description("Days in a row."), Allowed(1, 365)]
    public int? UseDayCount { get; init; }

    [Description("From the first of them to the first of the next visit, in days; left out, they follow each other without a break."), Allowed(1, 365)]
    public int? EveryDayCount { get; init; }

    [Description("Power that stays on while she lies, between visits and in hours without a condition: pumps' floats, alarms. The engine and the shore give nothing then."), Allowed(0, 10_000)]
    public Quantity? LyingW { get; init; }

    [Description("First month of the season, 1 to 12; left out, the whole year."), Allowed(1, 12)]
    public int? FirstMonth { get; init; }

    [Description("Last month of the season, 1 to 12."), Allowed(1, 12)]
    public int? LastMonth { get; init; }

    [Description("Her heading, clockwise from north; left out, she swings. It matters to tilted panels alone."), Allowed(-360, 360)]
    public Quantity? HeadingDeg { get; init; }

    [Description("Charge she begins with."), Allowed(0, 1)]
    public Quantity? StartFraction { get; init; }

    [Description("Charge that is to stay, of what can be drawn."), Allowed(0, 0.99)]
    public Quantity? ReserveFraction { get; init; }

    [Description("Chance, in any month, of running below the reserve that the owner bears."), Allowed(0, 1)]
    public Quantity? MostChanceFraction { get; init; }
}

/// <summary>Hours of a day in a condition.</summary>
/// <param name="Condition">Id of the condition.</param>
/// <param name="FromHour">When it begins, a whole hour.</param>
/// <param name="ToHour">When it ends, a whole hour; at or before the beginning, it goes over midnight.</param>
public sealed record PlanHours(
    [property: RefersTo(typeof(Condition))] string Condition,
    [property: Description("When it begins, a whole hour."), Allowed(0, 24)] int FromHour,
    [property: Description("When it ends, a whole hour; at or before the beginning it goes over midnight."), Allowed(0, 24)] int ToHour);
