using Orlop.Hull.Hydrostatics;

namespace Orlop.Hull.Floating;

/// <summary>
/// Where a loaded boat comes to rest in draught, trim and heel: mass equals displaced mass, and G lies plumb over or under B. Any angle; tank liquids level, flooded spaces
/// as lost buoyancy, sideways pulls as couples. Method: docs/engines/hull.md.
/// </summary>
public static class Equilibrium
{
    private const double DegPerRad = 180 / Math.PI;

    /// <summary>Starts upright and level, unless another start is given, and goes where she would go. Near the end the start saves steps and changes nothing else.</summary>
    public static FloatingResult Solve(FloatingInput input, Attitude? start = null)
    {
        ArgumentNullException.ThrowIfNull(input);
        var energy = new FloatingEnergy(input);
        if (Overweight(energy, input.Subject) is { } under)
        {
            return under;
        }

        var search = new EquilibriumSearch(energy);
        var first = start?.Checked(input.Subject);
        var (trim, heel) = ((first?.TrimDeg ?? 0) / DegPerRad, (first?.HeelDeg ?? 0) / DegPerRad);
        var draught = first is { } given && IsCut(energy, given) ? given.DraughtM : FloatingStart.Afloat(energy, input, trim, heel).Draught;
        var end = search.From(draught, trim, heel, Freedom.All);
        if (!end.IsFound)
        {
            return new FloatingResult(FloatingStatus.NotConverged,
                FormattableString.Invariant($"{input.Subject}: no position of rest found in {end.StepCount} steps; trim had reached {end.Trim * DegPerRad:0.#}°, heel {end.Heel * DegPerRad:0.#}°"),
                energy.MassKg, null, end.StepCount, end.Residual);
        }

        var position = Position(input, energy, search, end);
        var heelDeg = position.Attitude.HeelDeg;
        int? over = Math.Abs(heelDeg) > 90 ? UprightBalance(energy, search, FloatingStart.Afloat(energy, input, 0, 0).Draught, 0) is null ? Math.Sign(heelDeg) : 0 : null;
        var lies = over is { } side ? $"capsizes {(side == 0 ? "to one side or the other" : $"to {SideName(side)}")} and lies" : "lies";
        return new FloatingResult(over is null ? FloatingStatus.Floats : FloatingStatus.Capsizes,
            FormattableString.Invariant($"{input.Subject}: {lies} at heel {Math.Abs(heelDeg):0.##}°{(over == 0 ? "" : $" to {SideName(Math.Sign(heelDeg))}")}, trim {position.Attitude.TrimDeg:0.##}°"),
            energy.MassKg, position, end.StepCount, end.Residual)
        { CapsizedSide = over };
    }

    internal static FloatingResult? Overweight(FloatingEnergy energy, string subject)
    {
        if (energy.MassKg < energy.LimitKg)
        {
            return null;
        }

        var isSunkByFlooding = energy.MassKg < energy.IntactLimitKg;
        return new FloatingResult(isSunkByFlooding ? FloatingStatus.Sinks : FloatingStatus.DoesNotFloat,
            FormattableString.Invariant($"{subject}: {energy.MassKg:0.#} kg, but wholly under water she pushes aside only {energy.LimitKg:0.#} kg"),
            energy.MassKg, null, 0, (energy.MassKg - energy.LimitKg) / energy.MassKg);
    }

    private static FloatingPosition Position(FloatingInput input, FloatingEnergy energy, EquilibriumSearch search, SearchEnd end)
    {
        var state = end.State;
        var cosTrim = Math.Cos(end.Trim);
        var heel = Math.IEEERemainder(end.Heel * DegPerRad, 360);
        var (gravity, buoyancy) = ((1 / energy.MassKg) * state.MassMoment, (1 / state.DisplacedVolume) * state.VolumeMoment);
        return new FloatingPosition
        {
            Attitude = new Attitude(end.Draught, end.Trim * DegPerRad, heel),
            IsStable = end.IsStable,
            IsLoll = Math.Abs(heel) is > 1e-6 and <= 90 && IsUprightBalanceUnstable(energy, search, end),
            DisplacedM3 = state.DisplacedVolume,
            CentreOfBuoyancy = buoyancy,
            CentreOfGravity = gravity,
            MetacentricHeightM = state.HeelStiffness / (cosTrim * cosTrim * energy.MassKg),
            MetacentricRadiusM = state.Cut.Centroidal().SecondAcross / state.DisplacedVolume,
            GravityOverBuoyancyM = WaterPlane.OfRadians(end.Draught, end.Trim, end.Heel).Up.Dot(gravity - buoyancy),
            FreeSurfaceLossM = state.FreeSurfaces.SecondAcross / energy.MassKg,
            LongitudinalMetacentricHeightM = state.TrimStiffness / energy.MassKg,
            WaterplaneAreaM2 = state.Cut.Area,
        };
    }

    private static bool IsCut(FloatingEnergy energy, Attitude attitude) => energy.Displaced(WaterPlane.Of(attitude)).PerM > 0;

    // Loll is balance upright (no heeling lever) that does not hold.
    private static bool IsUprightBalanceUnstable(FloatingEnergy energy, EquilibriumSearch search, SearchEnd end) =>
        UprightBalance(energy, search, end.Draught, end.Trim) is { State.HeelStiffness: < 0 };

    // Null where a lever heels her upright, so that she goes to its side.
    private static SearchEnd? UprightBalance(FloatingEnergy energy, EquilibriumSearch search, double draught, double trim)
    {
        var upright = search.From(draught, trim, 0, Freedom.DraughtAndTrim);
        return upright.IsFound && Math.Abs(upright.State.OfHeel) <= 1e-9 * energy.MassKg * energy.Size.YM ? upright : null;
    }

    private static string SideName(int side) => side < 0 ? "port" : "starboard";
}
