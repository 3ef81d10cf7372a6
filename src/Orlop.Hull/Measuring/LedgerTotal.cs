using System.Collections.Immutable;
using Orlop.Hull.Floating;
using Orlop.Hull.Working;

namespace Orlop.Hull.Measuring;

/// <summary>
/// Total of a ledger and how its errors come together: with M the total and X its centre, dM = Σdm, dX = Σ((x - X)·dm + m·dx)/M. Items are taken as independent.
/// </summary>
internal static class LedgerTotal
{
    public static (double[] Values, double[,] Covariance) Calculate(string subject, ImmutableArray<LedgerItem> items)
    {
        var sum = WeightSum.Calculate(items.Select(item => new WeightItem(item.Id, item.MassKg, item.Place)));
        if (sum.Centre is not { } centre)
        {
            throw new ArgumentException($"{subject}: the ledger has no mass.", nameof(items));
        }

        var covariance = new double[4, 4];
        foreach (var item in items)
        {
            Guard.InRange(item.MassDeviationKg, 0, 1e7, "kg", item.Id);
            var arm = item.Place - centre;
            double[] perMass = [1, arm.XM / sum.MassKg, arm.YM / sum.MassKg, arm.ZM / sum.MassKg];
            double[] place = [0, Deviation(item, item.PlaceDeviation.XM), Deviation(item, item.PlaceDeviation.YM), Deviation(item, item.PlaceDeviation.ZM)];
            for (var i = 0; i < 4; i++)
            {
                for (var j = 0; j < 4; j++)
                {
                    covariance[i, j] += perMass[i] * perMass[j] * item.MassDeviationKg * item.MassDeviationKg;
                }

                covariance[i, i] += place[i] * place[i] * item.MassKg * item.MassKg / (sum.MassKg * sum.MassKg);
            }
        }

        return ([sum.MassKg, centre.XM, centre.YM, centre.ZM], covariance);
    }

    private static double Deviation(LedgerItem item, double deviationM) => Guard.InRange(deviationM, 0, 1000, "m", item.Id, "PlaceDeviation");
}
