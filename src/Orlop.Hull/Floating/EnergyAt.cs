using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Floating;

/// <summary>
/// Potential energy of boat, tank liquids and displaced water over g, in kg·m, with its exact first and second derivatives in draught (m), trim and heel (rad), all at one attitude.
/// </summary>
internal struct EnergyAt
{
    public double Energy;
    public double OfDraught;
    public double OfTrim;
    public double OfHeel;
    public double DraughtDraught;
    public double DraughtTrim;
    public double DraughtHeel;
    public double TrimTrim;
    public double TrimHeel;
    public double HeelHeel;
    public double DisplacedVolume;
    public Point3 VolumeMoment;
    public Point3 MassMoment;
    public PlaneMoments Cut;

    /// <summary>Density times the centroidal moments of all free surfaces in tanks.</summary>
    public PlaneMoments FreeSurfaces;

    /// <summary>Change of OfHeel with heel when the draught follows to keep the volume: mass times GM.</summary>
    public readonly double HeelStiffness => HeelHeel - (DraughtDraught > 0 ? DraughtHeel * DraughtHeel / DraughtDraught : 0);

    /// <summary>Change of OfTrim with trim at constant volume: mass times longitudinal GM.</summary>
    public readonly double TrimStiffness => TrimTrim - (DraughtDraught > 0 ? DraughtTrim * DraughtTrim / DraughtDraught : 0);
}
