using System.Collections.Immutable;
using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Measuring;

/// <summary>
/// What a freeboard survey says of the weight of the boat with another list aboard. One reading moves displacement, LCG and TCG together: their covariance is carried to the boat as she is loaded now
/// (linear propagation), with that of what came and went since.
/// </summary>
public static class FreeboardEvidence
{
    /// <param name="id">What the survey is called.</param>
    /// <param name="read">The survey as read.</param>
    /// <param name="kgM">KG that she is taken with, which moves G along the plumb line through B.</param>
    /// <param name="came">What came since, less what went, with its errors.</param>
    public static ImmutableArray<WeightEvidence> Of(string id, FreeboardResult read, double kgM, WeightTotal came)
    {
        ArgumentNullException.ThrowIfNull(read);
        ArgumentNullException.ThrowIfNull(came);
        Point3 then = read.CentreOfGravityAt(kgM);
        double total = read.DisplacementKg + came.MassKg, share = read.DisplacementKg / total;
        Point3 now = (1 / total) * ((read.DisplacementKg * then) + came.Moment);
        double[,] covariance = FourUnknowns.Carried(new double[,] { { 1, 0, 0, 0 }, { (then.XM - now.XM) / total, share, 0, 0 }, { (then.YM - now.YM) / total, 0, share, 0 }, { 0, 0, 0, 0 } }, Square(read.CovarianceAt(kgM)));
        double[,] added = came.CarriedBy(new double[,] { { 1, 0, 0, 0 }, { -now.XM / total, 1 / total, 0, 0 }, { -now.YM / total, 0, 1 / total, 0 }, { 0, 0, 0, 0 } });
        return WeightEvidence.OfAfloat(id, total, now.XM, now.YM, [.. Enumerable.Range(0, 9).Select(i => covariance[i / 3, i % 3] + added[i / 3, i % 3])]);
    }

    private static double[,] Square(ImmutableArray<double> covariance)
    {
        double[,] square = new double[4, 4];
        for (int i = 0; i < 9; i++)
        {
            square[i / 3, i % 3] = covariance[i];
        }

        return square;
    }
}
