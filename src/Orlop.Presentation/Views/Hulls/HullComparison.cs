using System.Globalization;
using Orlop.Hull.Hydrostatics;
using Orlop.Presentation.Quantities;

namespace Orlop.Presentation.Views.Hulls;

/// <summary>One number of a hull, as edited beside as kept.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Now">As edited; a dash where it is not known.</param>
/// <param name="Before">As it was before.</param>
/// <param name="IsOther">The two read differently.</param>
public sealed record HullComparison(string Name, string Now, string Before, bool IsOther)
{
    private const string Unknown = "—";

    private static readonly (string Name, string Suffix, int DecimalCount, Func<HydrostaticRow, double> Value)[] Rows =
    [
        ("Displacement", "Kg", 0, row => row.DisplacementKg), ("Volume", "M3", 3, row => row.VolumeM3), ("Wetted surface", "M2", 2, row => row.WettedAreaM2),
        ("Waterplane", "M2", 2, row => row.WaterplaneAreaM2), ("Waterline length", "M", 3, row => row.WaterlineLengthM), ("Waterline breadth", "M", 3, row => row.WaterlineBreadthM),
        ("Buoyancy, forward", "M", 3, row => row.LcbM), ("Buoyancy, up", "M", 3, row => row.KbM), ("Metacentre, up", "M", 3, row => row.KmM),
        ("Block coefficient", "Coefficient", 3, row => row.BlockCoefficient),
    ];

    /// <summary>The hull's numbers at the designed waterline.</summary>
    public static IReadOnlyList<HullComparison> Of(HullFacts now, HullFacts? before, DisplayUnits units, CultureInfo culture)
    {
        return [.. Rows.Select(row => Line(row.Name, Text(now.AtDraught, row), Text(before?.AtDraught, row)))];

        string Text(HydrostaticRow? found, (string Name, string Suffix, int DecimalCount, Func<HydrostaticRow, double> Value) row)
        {
            if (found is null)
            {
                return Unknown;
            }

            AxisUnit unit = AxisUnit.For(row.Suffix, units);
            string number = unit.FromModel(row.Value(found)).ToString("N" + row.DecimalCount.ToString(CultureInfo.InvariantCulture), culture);
            return unit.Symbol.Length == 0 ? number : $"{number}\u00A0{unit.Symbol}";
        }

        static HullComparison Line(string name, string now, string before) => new(name, now, before, now != before);
    }
}
