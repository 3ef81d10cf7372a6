namespace Orlop.Presentation.Quantities;

/// <summary>How numbers of one suffix are typed and shown.</summary>
public sealed class Dimension
{
    internal Dimension(string suffix, string name, string examples, IReadOnlyList<Unit> units, UnitDisplay metric, UnitDisplay us)
    {
        Suffix = suffix;
        Name = name;
        Examples = examples;
        Units = units;
        Metric = metric;
        Us = us;
    }

    /// <summary>The ending of a property's name in the model: <c>M</c>, <c>Mm2</c>, <c>Ohm</c>.</summary>
    public string Suffix { get; }

    /// <summary>What is measured, in plain words with its article: "a length".</summary>
    public string Name { get; }

    /// <summary>What may be typed, as examples for a message.</summary>
    public string Examples { get; }

    /// <summary>Every unit that may be typed.</summary>
    public IReadOnlyList<Unit> Units { get; }

    /// <summary>The symbol of the unit that a number without one is taken to be in.</summary>
    public string BareSymbol(DisplayUnits units) => TakesWireGauge && units == DisplayUnits.Us ? WireGauge.Symbol : For(units).Bare.Symbol;

    internal UnitDisplay Metric { get; }

    internal UnitDisplay Us { get; }

    internal bool TakesWireGauge => Suffix == "Mm2";

    internal bool IsShare => Suffix == "Fraction";

    internal bool ShowsFeetAndInches(DisplayUnits units) => Suffix == "M" && units == DisplayUnits.Us;

    internal UnitDisplay For(DisplayUnits units) => units == DisplayUnits.Us ? Us : Metric;
}

/// <summary>Units to show a number in: the last whose least model value it reaches; and how many digits count.</summary>
/// <param name="SignificantCount">Significant digits; digits before the decimal separator are never dropped.</param>
/// <param name="Bare">The unit of a number without one.</param>
/// <param name="Larger">Units to use from a model value on, in rising order.</param>
internal sealed record UnitDisplay(int SignificantCount, Unit Bare, params IReadOnlyList<UnitStep> Larger)
{
    /// <summary>The unit for a value; the smallest, where there is one below the bare unit, for a value too small for it.</summary>
    internal Unit UnitFor(double value)
    {
        Unit unit = Bare;
        foreach (UnitStep step in Larger)
        {
            if (Math.Abs(value) < (double)step.Below)
            {
                return step.Unit;
            }

            if (Math.Abs(value) >= (double)step.From)
            {
                unit = step.Unit;
            }
        }

        return unit;
    }
}

/// <summary>Use this unit from a model value on, or below one.</summary>
internal sealed record UnitStep(Unit Unit, decimal From, decimal Below)
{
    internal static UnitStep FromValue(Unit unit, decimal from) => new(unit, from, 0);

    internal static UnitStep BelowValue(Unit unit, decimal below) => new(unit, decimal.MaxValue, below);
}
