namespace Orlop.Electrics.Heat;

/// <summary>Dry air at sea level, what a level cylinder loses in it, and radiation.</summary>
public static class StillAir
{
    /// <summary>Standard acceleration of gravity.</summary>
    public const double GravityMPerS2 = 9.80665;

    /// <summary>Specific heat of air near room temperature, J/(kg K).</summary>
    public const double HeatJPerKgK = 1006;

    /// <summary>0 °C on the absolute scale.</summary>
    public const double ZeroK = 273.15;

    /// <summary>Share of black radiation that insulation, paint and pipe give: common practice, no source.</summary>
    public const double EmissivityFactor = 0.9;

    /// <summary>Where the film of a cylinder comes from.</summary>
    public const string CylinderSource = "Churchill and Chu 1975, level cylinder in still air, as public engineering documentation gives it; radiation with 0.9 of black";

    // CODATA 2018.
    private const double StefanBoltzmann = 5.670374419e-8;

    private const double ConvectionFloor = 0.60;
    private const double ConvectionSlope = 0.387;
    private const double PrandtlScale = 0.559;

    /// <summary>Density at 1 atm, an ideal gas.</summary>
    public static double DensityKgPerM3(double airC) => 353.05 / (airC + ZeroK);

    /// <summary>Conductivity by Sutherland's form, as Poling, Prausnitz and O'Connell 2001 are cited for 200 to 400 K.</summary>
    public static double ConductivityWPerMK(double airC)
    {
        double kelvin = airC + ZeroK;
        return 2.3340e-3 * kelvin * Math.Sqrt(kelvin) / (164.54 + kelvin);
    }

    /// <summary>Dynamic viscosity likewise, in Pa s.</summary>
    public static double ViscosityPaS(double airC)
    {
        double kelvin = airC + ZeroK;
        return 1.4592e-6 * kelvin * Math.Sqrt(kelvin) / (109.10 + kelvin);
    }

    /// <summary>Natural convection from a level cylinder: Nu = (0.60 + 0.387 Ra^(1/6) / (1 + (0.559/Pr)^(9/16))^(8/27))², properties at the mean temperature.</summary>
    /// <param name="diameterM">Above 0.</param>
    public static double CylinderFilmWPerM2K(double diameterM, double surfaceC, double airC)
    {
        double filmC = (surfaceC + airC) / 2, kelvin = filmC + ZeroK;
        double conductivity = ConductivityWPerMK(filmC), viscosity = ViscosityPaS(filmC), density = DensityKgPerM3(filmC);
        double prandtl = viscosity * HeatJPerKgK / conductivity;
        double rayleigh = GravityMPerS2 / kelvin * Math.Abs(surfaceC - airC) * diameterM * diameterM * diameterM * density * density * HeatJPerKgK / (viscosity * conductivity);
        return Nusselt(rayleigh, prandtl) * conductivity / diameterM;
    }

    /// <summary>The number of Nusselt of a level cylinder (Churchill and Chu 1975).</summary>
    public static double Nusselt(double rayleighRatio, double prandtlRatio)
    {
        double root = ConvectionFloor + (ConvectionSlope * Math.Pow(rayleighRatio, 1.0 / 6) / Math.Pow(1 + Math.Pow(PrandtlScale / prandtlRatio, 9.0 / 16), 8.0 / 27));
        return root * root;
    }

    /// <summary>What grey radiation adds for each kelvin: ε σ (T₁² + T₂²)(T₁ + T₂).</summary>
    public static double RadiationWPerM2K(double emissivityFactor, double oneC, double otherC)
    {
        double one = oneC + ZeroK, other = otherC + ZeroK;
        return emissivityFactor * StefanBoltzmann * ((one * one) + (other * other)) * (one + other);
    }
}
