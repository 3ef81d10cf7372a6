using System.Collections.Immutable;

namespace Orlop.Hull.Criteria;

/// <summary>A published table of one factor over one argument: straight lines between the rows, end rows beyond them, as the source says.</summary>
internal sealed class FactorTable(ImmutableArray<(double Argument, double Factor)> rows)
{
    public double At(double argument)
    {
        if (argument <= rows[0].Argument)
        {
            return rows[0].Factor;
        }

        for (var i = 1; i < rows.Length; i++)
        {
            if (argument <= rows[i].Argument)
            {
                var share = (argument - rows[i - 1].Argument) / (rows[i].Argument - rows[i - 1].Argument);
                return rows[i - 1].Factor + (share * (rows[i].Factor - rows[i - 1].Factor));
            }
        }

        return rows[^1].Factor;
    }
}
