using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Electrics.Energy;
using Orlop.Presentation.Quantities;

namespace Orlop.Presentation.Views;

/// <summary>A month of a climate as a page shows it.</summary>
/// <param name="CalendarMonth">1 to 12.</param>
/// <param name="Typed">What is typed; null for nothing.</param>
/// <param name="TableWhPerM2">Light of the built-in table that stands where none is typed, Wh/m²; null for none.</param>
/// <param name="OutsideWhPerM2">Light outside the air, Wh/m², that none on the ground is above; null without a latitude.</param>
public sealed record ClimateMonthRow(int CalendarMonth, ClimateMonth? Typed, double? TableWhPerM2, double? OutsideWhPerM2);

/// <summary>The twelve months of a climate, and what typing one of their numbers makes of it.</summary>
public static class ClimateMonths
{
    private static readonly RecordSchema Schema = RecordSchema.Of(typeof(ClimateMonth));

    /// <summary>The field of a month's air.</summary>
    public static FieldSchema Air { get; } = Schema.Field("airC")!;

    /// <summary>The field of a month's light.</summary>
    public static FieldSchema Sun { get; } = Schema.Field("sunWhPerM2")!;

    /// <summary>All twelve, in order.</summary>
    public static ImmutableArray<ClimateMonthRow> Of(Climate climate)
    {
        ArgumentNullException.ThrowIfNull(climate);
        ClimatePlace? table = climate.Table is null ? null : ClimateTable.Places.GetValueOrDefault(climate.Table);
        return [.. Enumerable.Range(1, 12).Select(month => new ClimateMonthRow(month, Typed(climate, month), table?.SunWhPerM2[month - 1], Outside(climate, month)))];
    }

    /// <summary>The climate with a number of a month typed, or why it is not kept.</summary>
    /// <param name="climate">As it is.</param>
    /// <param name="month">1 to 12.</param>
    /// <param name="field">Air or sun.</param>
    /// <param name="value">The number in the field's unit; null for a light that is the table's.</param>
    /// <param name="units">Units of the refusal.</param>
    /// <param name="culture">Its numbers.</param>
    public static (Climate? Becomes, string? Refusal) With(Climate climate, int month, FieldSchema field, double? value, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(climate);
        ArgumentNullException.ThrowIfNull(field);
        ClimateMonth? was = Typed(climate, month);
        if (field == Air)
        {
            return value is not { } air ? (null, "The month needs its air; a month that is not to count is taken out on the climate's sheet.") : (Put(climate, month, (was ?? new ClimateMonth(month, air)) with { AirC = air }), null);
        }

        return was is null ? (null, "Type the month's air first.")
            : value is not null && Outside(climate, month) is null ? (null, "Give the climate its latitude first: without it nobody can tell how much light there can be.")
            : value > Outside(climate, month) ? (null, $"Found {Shown(value.Value)}; allowed at most {Shown(Outside(climate, month)!.Value)}, the light outside the air at that latitude: no place on the ground gets so much.")
            : (Put(climate, month, was with { SunWhPerM2 = value }), null);

        string Shown(double light) => QuantityText.Shown(light, "WhPerM2", units, culture);
    }

    private static ClimateMonth? Typed(Climate climate, int month) => climate.Months.FirstOrDefault(row => row.CalendarMonth == month);

    private static double? Outside(Climate climate, int month) => climate.LatitudeDeg is { } latitude ? LightOutsideAir.MonthWhPerM2(latitude.Value, month) : null;

    private static Climate Put(Climate climate, int month, ClimateMonth becomes) =>
        climate with { Months = climate.Months.Where(row => row.CalendarMonth != month).Append(becomes).OrderBy(row => row.CalendarMonth).ToValueList() };
}
