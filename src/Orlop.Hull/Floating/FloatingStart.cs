using Orlop.Hull.Hydrostatics;

namespace Orlop.Hull.Floating;

/// <summary>A first draught from which a search may start: the one at which displaced mass equals mass at given trim and heel.</summary>
internal static class FloatingStart
{
    private const int MostSteps = 100;

    /// <summary>Bisection between dry and wholly under; near enough to start from, exact to a millionth of the reach.</summary>
    public static WaterPlane Afloat(FloatingEnergy energy, FloatingInput input, double trim, double heel)
    {
        var directions = WaterPlane.OfRadians(0, trim, heel);
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        foreach (var shape in input.Buoyancy)
        {
            var reach = directions.Reach(shape.Corners.AsSpan());
            low = Math.Min(low, reach.Lowest);
            high = Math.Max(high, reach.Highest);
        }

        var tolerance = 1e-6 * (high - low);
        for (var step = 0; step < MostSteps && high - low > tolerance; step++)
        {
            var middle = 0.5 * (low + high);
            var isAfloat = energy.DisplacedKg(directions.At(middle)) > energy.MassKg;
            (low, high) = isAfloat ? (low, middle) : (middle, high);
        }

        return directions.At(0.5 * (low + high));
    }
}
