using Orlop.Hull.Hydrostatics;

namespace Orlop.Hull.Floating;

/// <summary>A first draught from which a search may start: the one at which displaced mass equals mass at given trim and heel.</summary>
internal static class FloatingStart
{
    private const int MostSteps = 100;
    private const double NearEnough = 1e-6;

    /// <summary>Newton on the displaced mass, kept between dry and wholly under; near enough to start from, exact to a millionth of the reach.</summary>
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

        var tolerance = NearEnough * (high - low);
        var level = 0.5 * (low + high);
        for (var step = 0; step < MostSteps && high - low > tolerance; step++)
        {
            var (displaced, perM) = energy.Displaced(directions.At(level));
            (low, high) = displaced > energy.MassKg ? (low, level) : (level, high);
            var newton = level - ((displaced - energy.MassKg) / perM);
            if (Math.Abs(newton - level) <= tolerance)
            {
                break;
            }

            level = newton > low && newton < high ? newton : 0.5 * (low + high);
        }

        return directions.At(level);
    }
}
