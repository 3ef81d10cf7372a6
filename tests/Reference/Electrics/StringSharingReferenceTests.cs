using System.Collections.Immutable;
using Orlop.Electrics.Networks;
using Orlop.Electrics.Strings;
using Xunit;

namespace Orlop.Reference.Tests.Electrics;

/// <summary>
/// Alike strings side by side, joined post to post by alike leads in plus and minus: a ladder. Its currents have a closed form in hyperbolic functions, the finite-difference
/// solution of the artificial line (Kennelly, "Artificial Electric Lines", 1917; derived anew in docs/engines/strings.md). Independently, elimination of the dense node equations.
/// </summary>
public sealed class StringSharingReferenceTests
{
    private const double LoadA = 100, InsideOhm = 0.02, LeadOhm = 0.0015, OpenV = 12.7;

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(8)]
    public void TakenOffAtOneEnd_AgreesWithTheClosedForm(int count)
    {
        double theta = Math.Acosh(1 + (LeadOhm / InsideOhm));
        double Beyond(int k) => Math.Sinh((count - k) * theta) / Math.Sinh(count * theta);
        ImmutableArray<StringShare> shares = Shares(Ladder(count, plusAt: 0, minusAt: 0));
        Assert.All(Enumerable.Range(0, count), k => Assert.Equal(Beyond(k) - Beyond(k + 1), shares[k].ShareFraction!.Value, 9));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(8)]
    public void TakenOffAtOppositeEnds_AgreesWithTheClosedForm(int count)
    {
        double theta = Math.Acosh(1 + (LeadOhm / InsideOhm));
        double Passed(int k) => 0.5 * Math.Sinh((k - (count / 2.0)) * theta) / Math.Sinh(count / 2.0 * theta);
        ImmutableArray<StringShare> shares = Shares(Ladder(count, plusAt: 0, minusAt: count - 1));
        Assert.All(Enumerable.Range(0, count), k => Assert.Equal(Passed(k + 1) - Passed(k), shares[k].ShareFraction!.Value, 9));
    }

    // By hand, two strings: at one end I1/I2 = (r + 2ρ)/r = 0.023/0.02, so 53.49 and 46.51 A; at opposite ends both ways have r + ρ: 50 A each.
    [Fact]
    public void TwoStrings_AsWorkedByHand()
    {
        Assert.Equal(100 * 23.0 / 43, Shares(Ladder(2, 0, 0))[0].CurrentA, 9);
        Assert.Equal(50, Shares(Ladder(2, 0, 1))[0].CurrentA, 9);
    }

    [Fact]
    public void UnlikeStringsAndLeads_AgreeWithDenseElimination()
    {
        double[] open = [12.7, 12.5, 12.9], inside = [0.004, 0.006, 0.011], plus = [0.0009, 0.0021], minus = [0.0004, 0.0013];
        Network network = new()
        {
            Batteries = [.. open.Select((volts, k) => new Battery($"b{k}", $"p{k}", $"m{k}", volts, inside[k]))],
            Contacts = [.. plus.Select((ohm, k) => new Contact($"plus{k}", $"p{k}", $"p{k + 1}", ohm)), .. minus.Select((ohm, k) => new Contact($"minus{k}", $"m{k}", $"m{k + 1}", ohm))],
            Loads = [new Load("load", "p2", "m0", LoadKind.Current, 80)],
        };
        double[] running = Dense(open, inside, plus, minus, 80, plusAt: 2, minusAt: 0), idle = Dense(open, inside, plus, minus, 0, 2, 0);
        ImmutableArray<StringShare> shares = Shares(network);
        for (int k = 0; k < 3; k++)
        {
            Assert.Equal(running[k], shares[k].CurrentA, 8);
            Assert.Equal(idle[k], shares[k].CirculatingA, 8);
            Assert.Equal((running[k] - idle[k]) / 80, shares[k].ShareFraction!.Value, 10);
        }

        Assert.Equal(0, shares.Sum(share => share.CirculatingA), 8);
    }

    // electrical-dc-network-cases.csv, N4: 25.6 V behind 10 mΩ beside 25.2 V behind 20 mΩ.
    [Fact]
    public void N4_CirculatingCurrent_Agrees()
    {
        ImmutableArray<StringShare> shares = Shares(new Network
        {
            Batteries = [new Battery("b0", "bus", "zero", 25.6, 0.010), new Battery("b1", "bus", "zero", 25.2, 0.020)],
            Loads = [new Load("load", "bus", "zero", LoadKind.Resistance, 0.5)],
        });
        ReferenceRow published = ReferenceCsv.Load("electrical-dc-network-cases.csv", expectedRows: 25).Single(row => row.Text("id") == "N4" && row.Text("quantity") == "I_circulating_no_load");
        published.Agrees(published.Number("value"), shares[0].CirculatingA, published.Number("tolerance"));
        Assert.Equal(2.0 / 3, shares[0].ShareFraction!.Value, 9);
    }

    private static Network Ladder(int count, int plusAt, int minusAt) => new()
    {
        Batteries = [.. Enumerable.Range(0, count).Select(k => new Battery($"b{k}", $"p{k}", $"m{k}", OpenV, InsideOhm))],
        Contacts = [.. Enumerable.Range(0, count - 1).SelectMany(k => new[] { new Contact($"plus{k}", $"p{k}", $"p{k + 1}", LeadOhm), new Contact($"minus{k}", $"m{k}", $"m{k + 1}", LeadOhm) })],
        Loads = [new Load("load", $"p{plusAt}", $"m{minusAt}", LoadKind.Current, LoadA)],
    };

    private static ImmutableArray<StringShare> Shares(Network network)
    {
        StringGroup group = Assert.Single(BatteryStrings.Find(new StringInput
        {
            Batteries = [.. network.Batteries.Select(battery => new StringBattery(battery.Id, battery.Plus, battery.Minus, 12))],
            Joins = [.. network.Contacts.Select(contact => new StringJoin(contact.A, contact.B, false))],
            Outside = [.. network.Loads.Select(load => new StringOutside(load.Plus, load.Minus, 12))],
        }));
        NetworkResult result = NetworkSolver.Solve(network, TestContext.Current.CancellationToken);
        return StringSharing.Of(group, network, result.Point!, TestContext.Current.CancellationToken)!.Value;
    }

    // Node equations of a ladder by Gaussian elimination with row exchange; unknowns p0..pn, m0..mn with m0 = 0.
    private static double[] Dense(double[] open, double[] inside, double[] plus, double[] minus, double loadA, int plusAt, int minusAt)
    {
        int count = open.Length, size = 2 * count;
        double[,] a = new double[size, size + 1];
        void Join(int one, int other, double ohm, double emfV)
        {
            foreach ((int at, int far, double sign) in new[] { (one, other, 1.0), (other, one, -1.0) })
            {
                a[at, at] += 1 / ohm;
                a[at, far] -= 1 / ohm;
                a[at, size] += sign * emfV / ohm;
            }
        }

        for (int k = 0; k < count; k++)
        {
            Join(k, count + k, inside[k], open[k]);
            if (k + 1 < count)
            {
                Join(k, k + 1, plus[k], 0);
                Join(count + k, count + k + 1, minus[k], 0);
            }
        }

        a[plusAt, size] -= loadA;
        a[count + minusAt, size] += loadA;
        for (int k = 0; k <= size; k++)
        {
            a[count, k] = k == count ? 1 : 0;
        }

        for (int column = 0; column < size; column++)
        {
            int pivot = Enumerable.Range(column, size - column).MaxBy(row => Math.Abs(a[row, column]));
            for (int k = 0; k <= size; k++)
            {
                (a[column, k], a[pivot, k]) = (a[pivot, k], a[column, k]);
            }

            for (int row = 0; row < size; row++)
            {
                double times = row == column ? 0 : a[row, column] / a[column, column];
                for (int k = column; k <= size && times != 0; k++)
                {
                    a[row, k] -= times * a[column, k];
                }
            }
        }

        double V(int node) => a[node, size] / a[node, node];
        return [.. Enumerable.Range(0, count).Select(k => (open[k] - (V(k) - V(count + k))) / inside[k])];
    }
}
