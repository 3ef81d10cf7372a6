namespace Orlop.Electrics.Heat;

/// <summary>A way that heat takes between two nodes. Its law grows with the temperature of the first and falls with that of the other.</summary>
/// <param name="From">Place of its first node.</param>
/// <param name="To">Place of the other.</param>
public abstract record ThermalBranch(int From, int To)
{
    private const double SlopeStepK = 1e-4;

    /// <summary>Heat from the first node to the other.</summary>
    public abstract double HeatW(double fromC, double toC);

    /// <summary>Something can flow over it.</summary>
    public virtual bool IsOpen => true;

    /// <summary>How the heat grows for each kelvin of the first node.</summary>
    internal virtual double FromSlope(double fromC, double toC) => (HeatW(fromC + SlopeStepK, toC) - HeatW(fromC - SlopeStepK, toC)) / (2 * SlopeStepK);

    /// <summary>How the heat falls for each kelvin of the other.</summary>
    internal virtual double ToSlope(double fromC, double toC) => (HeatW(fromC, toC - SlopeStepK) - HeatW(fromC, toC + SlopeStepK)) / (2 * SlopeStepK);
}

/// <summary>Heat straight in the difference: conduction, a wall with its films.</summary>
/// <param name="ConductanceWPerK">Heat for each kelvin, 0 or more.</param>
public sealed record ConductionBranch(int From, int To, double ConductanceWPerK) : ThermalBranch(From, To)
{
    public override bool IsOpen => ConductanceWPerK > 0;

    public override double HeatW(double fromC, double toC) => ConductanceWPerK * (fromC - toC);

    internal override double FromSlope(double fromC, double toC) => ConductanceWPerK;

    internal override double ToSlope(double fromC, double toC) => ConductanceWPerK;
}

/// <summary>The outside of a level cylinder in still air: natural convection and radiation.</summary>
/// <param name="DiameterM">Of the cylinder that the air sees.</param>
/// <param name="AreaM2">What of its surface gives heat.</param>
public sealed record CylinderSurfaceBranch(int From, int To, double DiameterM, double AreaM2) : ThermalBranch(From, To)
{
    public override double HeatW(double fromC, double toC) =>
        AreaM2 * (StillAir.CylinderFilmWPerM2K(DiameterM, fromC, toC) + StillAir.RadiationWPerM2K(StillAir.EmissivityFactor, fromC, toC)) * (fromC - toC);

    internal override double FromSlope(double fromC, double toC) => OneSided(fromC, toC);

    // Exact enough to lead the search; what it ends at is held to the balance itself.
    private double OneSided(double fromC, double toC)
    {
        const double step = 1e-3;
        return (HeatW(fromC + step, toC) - HeatW(fromC, toC)) / step;
    }
}

/// <summary>Still air between a round bundle and the pipe around it: conduction across it as if it lay in the middle, and radiation.</summary>
/// <param name="InnerM">Diameter of the bundle.</param>
/// <param name="OuterM">Inner diameter of the pipe, above <paramref name="InnerM"/>.</param>
/// <param name="LengthM">Length, of which this branch has <paramref name="ShareFraction"/>.</param>
/// <param name="ShareFraction">Share of the bundle's outside that this node has.</param>
public sealed record AirGapBranch(int From, int To, double InnerM, double OuterM, double LengthM, double ShareFraction) : ThermalBranch(From, To)
{
    public override double HeatW(double fromC, double toC)
    {
        double conduction = 2 * Math.PI * LengthM * StillAir.ConductivityWPerMK((fromC + toC) / 2) / Math.Log(OuterM / InnerM);
        double seen = 1 / ((1 / StillAir.EmissivityFactor) + (InnerM / OuterM * ((1 / StillAir.EmissivityFactor) - 1)));
        double radiation = Math.PI * InnerM * LengthM * StillAir.RadiationWPerM2K(seen, fromC, toC);
        return ShareFraction * (conduction + radiation) * (fromC - toC);
    }
}

/// <summary>Air that passes between a space and what is around it, by its own draught through low and high openings or by a fan, whichever moves more.</summary>
/// <param name="DraughtCoefficient">Opening that counts for the draught, m² √m: see <see cref="NaturalDraught.Coefficient"/>; 0 for none.</param>
/// <param name="FanM3PerH">What the fan moves; 0 for none.</param>
public sealed record AirExchangeBranch(int From, int To, double DraughtCoefficient, double FanM3PerH) : ThermalBranch(From, To)
{
    public override bool IsOpen => DraughtCoefficient > 0 || FanM3PerH > 0;

    /// <summary>Air that passes, at the density of the air around.</summary>
    public double FlowM3PerH(double fromC, double toC) => Math.Max(FanM3PerH, 3600 * NaturalDraught.FlowM3PerS(DraughtCoefficient, fromC, toC));

    public override double HeatW(double fromC, double toC) => StillAir.DensityKgPerM3(toC) * StillAir.HeatJPerKgK * FlowM3PerH(fromC, toC) / 3600 * (fromC - toC);
}
