namespace Orlop.Hull.Hydrostatics;

/// <summary>Area, first and second moments of a cut surface about axes in its plane through the foot of the boat's origin.</summary>
internal readonly record struct PlaneMoments(double Area, double Along, double Across, double SecondAlong, double SecondAcross, double Product)
{
    public static PlaneMoments operator +(PlaneMoments a, PlaneMoments b) =>
        new(a.Area + b.Area, a.Along + b.Along, a.Across + b.Across, a.SecondAlong + b.SecondAlong, a.SecondAcross + b.SecondAcross, a.Product + b.Product);

    public static PlaneMoments operator *(double factor, PlaneMoments a) =>
        new(factor * a.Area, factor * a.Along, factor * a.Across, factor * a.SecondAlong, factor * a.SecondAcross, factor * a.Product);

    /// <summary>The same with second moments about the centroid; zero for no area.</summary>
    public PlaneMoments Centroidal() =>
        Area > 0
            ? new(Area, 0, 0, SecondAlong - (Along * Along / Area), SecondAcross - (Across * Across / Area), Product - (Along * Across / Area))
            : default;
}
