namespace Orlop.Electrics.Energy;

/// <summary>The year that is reckoned: 365 days, by the clock of the place or by local mean time.</summary>
internal static class EnergyCalendar
{
    public const int DayCount = 365;

    // 1 January 2025, 0 h: a year without a leap day. The sun's place on a date moves by no more than a quarter of a day between years.
    public const double FirstJulianDay = 2_460_676.5;

    private static readonly int[] FirstDays = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, DayCount];

    private static readonly int[] Months = [.. Enumerable.Range(0, DayCount).Select(day => Array.FindLastIndex(FirstDays, first => first <= day))];

    /// <summary>Month of a day, both from 0; days beyond the year begin it again.</summary>
    public static int MonthOf(int day) => Months[day % DayCount];

    /// <summary>First day of a month, both from 0.</summary>
    public static int FirstDayOf(int month) => FirstDays[month];

    public static int DayCountOf(int month) => FirstDays[month + 1] - FirstDays[month];
}
