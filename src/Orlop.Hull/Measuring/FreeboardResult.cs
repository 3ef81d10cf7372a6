using System.Collections.Immutable;
using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Working;

namespace Orlop.Hull.Measuring;

/// <summary>One reading against the fitted waterline.</summary>
/// <param name="Id">Which.</param>
/// <param name="ResidualM">Read less fitted.</param>
public sealed record FreeboardResidual(string Id, double ResidualM);

/// <summary>Where the boat floats by her freeboards, and so what she weighs and where her centre lies fore and aft and across.</summary>
public sealed record FreeboardResult
{
    private const double RadPerDeg = Math.PI / 180;
    private const double SmallStep = 1e-5;

    public required Attitude Attitude { get; init; }

    public required double DraughtDeviationM { get; init; }

    public required double TrimDeviationDeg { get; init; }

    public required double HeelDeviationDeg { get; init; }

    /// <summary>How far amidships stands over the ends, positive for hog.</summary>
    public required double HogM { get; init; }

    public required double HogDeviationM { get; init; }

    public required double DisplacementKg { get; init; }

    /// <summary>From the readings alone, widened by their misfit as every deviation here; an error in the form or the density of the water comes on top.</summary>
    public required double DisplacementDeviationKg { get; init; }

    public required Point3 CentreOfBuoyancy { get; init; }

    /// <summary>Deviation of the centre of buoyancy fore and aft, from the readings alone.</summary>
    public required double LcbDeviationM { get; init; }

    /// <summary>Deviation of the centre of buoyancy across, from the readings alone.</summary>
    public required double TcbDeviationM { get; init; }

    /// <summary>Covariance of draught, trim, heel (m, rad) and hog, widened by the misfit as every deviation here.</summary>
    internal double[,] AttitudeCovariance { get; init; } = new double[4, 4];

    /// <summary>How displacement, LCB, TCB and KB (rows) change with draught, trim, heel and hog.</summary>
    internal double[,] AfloatSlopes { get; init; } = new double[4, 4];

    public required ImmutableArray<FreeboardResidual> Residuals { get; init; }

    /// <summary>
    /// Root mean square of residuals over what their deviations allow, four numbers being fitted and the expectation of hog counting as one reading; near 1 when all is well.
    /// Above 1 every deviation is multiplied by it (Birge ratio). With four readings it tells one thing only, whether the marks twist.
    /// </summary>
    public required double MisfitRatio { get; init; }

    /// <summary>The reading that is most deviations off, where that is beyond all reason (over five of its own deviations; common practice, no source): the numbers then mean nothing.</summary>
    public required FreeboardResidual? BeyondReason { get; init; }

    /// <summary>The readings tell hog better than it was expected; otherwise it is the expectation come back, as with four readings at the ends.</summary>
    public required bool IsHogMeasured { get; init; }

    public required ImmutableArray<WorkingStep> Working { get; init; }

    /// <summary>The centre of gravity of a boat at rest is plumb over the centre of buoyancy: its place for a height over the base line.</summary>
    public Point3 CentreOfGravityAt(double kgM)
    {
        Guard.InRange(kgM, -100, 100, "m", "centre of gravity");
        var up = WaterPlane.Of(Attitude).Up;
        return CentreOfBuoyancy + ((kgM - CentreOfBuoyancy.ZM) / up.ZM * up);
    }

    /// <summary>
    /// Covariance of displacement, LCG and TCG (kg, m; three rows of three) of the boat whose centre of gravity lies so high over the base line: one reading moves all three, and turns the plumb line
    /// from B to G with them.
    /// </summary>
    public ImmutableArray<double> CovarianceAt(double kgM)
    {
        var (trim, heel) = (Attitude.TrimDeg * RadPerDeg, Attitude.HeelDeg * RadPerDeg);
        (double X, double Y) Lean(double moreTrim, double moreHeel)
        {
            var up = WaterPlane.OfRadians(Attitude.DraughtM, trim + moreTrim, heel + moreHeel).Up;
            return (up.XM / up.ZM, up.YM / up.ZM);
        }

        var (here, lever) = (Lean(0, 0), kgM - CentreOfBuoyancy.ZM);
        var slopes = new double[4, 4];
        for (var i = 0; i < 4; i++)
        {
            var (ahead, back) = (Lean(i == 1 ? SmallStep : 0, i == 2 ? SmallStep : 0), Lean(i == 1 ? -SmallStep : 0, i == 2 ? -SmallStep : 0));
            slopes[0, i] = AfloatSlopes[0, i];
            slopes[1, i] = AfloatSlopes[1, i] - (here.X * AfloatSlopes[3, i]) + (lever * (ahead.X - back.X) / (2 * SmallStep));
            slopes[2, i] = AfloatSlopes[2, i] - (here.Y * AfloatSlopes[3, i]) + (lever * (ahead.Y - back.Y) / (2 * SmallStep));
        }

        var covariance = FourUnknowns.Carried(slopes, AttitudeCovariance);
        return [.. Enumerable.Range(0, 9).Select(i => covariance[i / 3, i % 3])];
    }
}
