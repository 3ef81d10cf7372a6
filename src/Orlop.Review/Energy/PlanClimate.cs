using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Electrics.Energy;

namespace Orlop.Review.Energy;

/// <summary>The climate of a plan: typed months first, the built-in table where they have no sun of their own.</summary>
internal static class PlanClimate
{
    private const double NearDeg = 3;

    /// <summary>The climate, or null with what is missing told.</summary>
    public static MonthlyClimate? Of(BoatModel boat, DayPlan plan, PlanGaps gaps)
    {
        if (plan.Climate is null || boat.Find<Climate>(plan.Climate) is not { } climate)
        {
            gaps.Need(null, plan.Id, "climate");
            return null;
        }

        gaps.Need(climate.LatitudeDeg, climate.Id, "latitudeDeg");
        if (climate.LongitudeDeg is not null || climate.ClockFromUtcHour is not null)
        {
            gaps.Need(climate.LongitudeDeg, climate.Id, "longitudeDeg");
            gaps.Need(climate.ClockFromUtcHour, climate.Id, "clockFromUtcHour");
        }
        else
        {
            gaps.Assume($"{climate.Title}: hours are by the sun's clock, which is highest at noon; its longitude and its clock would set them right");
        }

        ClimateMonth?[] months = [.. Enumerable.Range(1, 12).Select(month => climate.Months.Where(row => row.CalendarMonth == month).Take(2).ToArray() is [var only] ? only : null)];
        ClimatePlace? table = climate.Table is null ? null : ClimateTable.Places.GetValueOrDefault(climate.Table);
        if (months.Any(month => month is null))
        {
            gaps.Need(null, climate.Id, "months");
        }
        else if (months.Any(month => month!.SunWhPerM2 is null) && (table is null || climate.LatitudeDeg is null || Math.Abs(table.LatitudeDeg - climate.LatitudeDeg.Value) > NearDeg))
        {
            gaps.Need(null, climate.Id, "table");
        }
        else if (climate.LatitudeDeg is not null)
        {
            return new MonthlyClimate
            {
                Subject = climate.Title,
                LatitudeDeg = climate.LatitudeDeg.Value,
                Clock = climate is { LongitudeDeg: { } longitude, ClockFromUtcHour: { } ahead } ? new PlaceClock(longitude.Value, ahead.Value) : null,
                SunWhPerM2 = [.. months.Select((month, at) => month!.SunWhPerM2 ?? table!.SunWhPerM2[at])],
                AirC = [.. months.Select(month => month!.AirC)],
            };
        }

        return null;
    }
}
