namespace Orlop.Presentation.Quantities;

/// <summary>The one unit in which an axis, a grid or a scale bar counts.</summary>
public sealed class AxisUnit
{
    private readonly Unit _unit;

    private AxisUnit(Unit unit) => _unit = unit;

    /// <summary>How the unit is written.</summary>
    public string Symbol => _unit.Symbol;

    /// <summary>The unit for a suffix in the reader's units.</summary>
    public static AxisUnit For(string suffix, DisplayUnits units) => new(Units.ForSuffix(suffix).For(units).Bare);

    /// <summary>From the model's unit to this one.</summary>
    public double FromModel(double value) => _unit.FromModel(value);

    /// <summary>From this unit to the model's.</summary>
    public double ToModel(double number) => (number + (double)_unit.Shift) * (double)_unit.Times / (double)_unit.Over;
}
