using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Electrics.Conductors;
using Orlop.Work.Ends;

namespace Orlop.Work.Tables;

/// <summary>Strip lengths, pull-out forces and torques for making off an end.</summary>
public static class EndTables
{
    /// <summary>1 lbf in newtons, exact (NIST SP 811).</summary>
    private const double PoundForceN = 4.4482216152605;

    // A thread of the table stands for a metric one this near to it (5/16 in for M8, 3/8 in for M10).
    private const double NearThreadMm = 0.5;
    private const double InchMm = 25.4;

    private static readonly WorkTable Strips = WorkTable.Read("strip-lengths.csv");
    private static readonly WorkTable Pulls = WorkTable.Read("crimp-pull.csv");
    private static readonly WorkTable Torques = WorkTable.Read("terminal-torque.csv");

    /// <summary>Where the strip lengths come from.</summary>
    public static string StripSource => Strips.Source;

    /// <summary>Insulation to strip in mm for a conductor, 0.2 to 120 mm²; null outside, or for an end whose terminal alone decides.</summary>
    public static double? StripMm(double areaMm2, TerminationMeans? means)
    {
        int? column = means switch
        {
            TerminationMeans.Ring or TerminationMeans.Fork => 1,
            TerminationMeans.Ferrule => 2,
            TerminationMeans.Screw => 3,
            _ => null,
        };
        ImmutableArray<string> row = Strips.Rows.FirstOrDefault(row => areaMm2 <= WorkTable.Number(row[0]));
        return column is { } at && !row.IsDefault ? WorkTable.Number(row[at]) : null;
    }

    /// <summary>Least pull-out force for a crimped conductor: that of the largest gauge not larger than it, within 1 %. Null below the table, or from half as large again as its largest gauge.</summary>
    public static PullForce? Pull(double areaMm2, TerminationMeans? means)
    {
        if (means is not (TerminationMeans.Ring or TerminationMeans.Fork or TerminationMeans.Butt or TerminationMeans.Blade or TerminationMeans.Contact))
        {
            return null;
        }

        ImmutableArray<string> row = Pulls.Rows.Where(row => GaugeMm2(row[0]) <= areaMm2 * 1.01).OrderByDescending(row => GaugeMm2(row[0])).FirstOrDefault();
        return row.IsDefault || areaMm2 > 1.5 * Pulls.Rows.Max(each => GaugeMm2(each[0]))
            ? null
            : new PullForce(WorkTable.Number(row[1]) * PoundForceN, $"{row[0]} AWG", Pulls.Source);
    }

    /// <summary>
    /// How tight a ring on a terminal is made: its maker's figure where the stud tells it, else the table's for a battery's stud or insert or a busbar; null where the table has no such connection.
    /// </summary>
    /// <param name="part">The part.</param>
    /// <param name="terminal">Name of its terminal.</param>
    /// <param name="studMm">Thread that the ring is made for; the stud's own goes first.</param>
    public static TerminalTorque? Torque(Part? part, string terminal, double? studMm) => (part, part?.StudOf(terminal)) switch
    {
        (_, { TorqueNm: { } makers, SizeMm: var sizeMm }) => new TerminalTorque(makers.Value, makers.Value, FormattableString.Invariant($"M{sizeMm:0.#}, its maker's figure"), makers.Method ?? "as typed", IsMakers: true),
        (BatteryBank, { Means: StudMeans.Insert } stud) => Row("battery insert", stud.SizeMm),
        (BatteryBank, var stud) when (stud?.SizeMm ?? studMm) is { } threadMm => Row("battery stud", threadMm),
        (Busbar, var stud) when (stud?.SizeMm ?? studMm) is { } threadMm => Row("copper bus joint", threadMm),
        _ => null,
    };

    private static TerminalTorque? Row(string connection, double studMm)
    {
        ImmutableArray<string> row = Torques.Rows.Where(row => row[0] == connection && Math.Abs(ThreadMm(row[1]) - studMm) <= NearThreadMm)
            .OrderBy(row => Math.Abs(ThreadMm(row[1]) - studMm)).FirstOrDefault();
        return row.IsDefault
            ? null
            : new TerminalTorque(WorkTable.Number(row[2]), WorkTable.Number(row[3]), $"{connection}, {row[1]}", Torques.Source);
    }

    private static double ThreadMm(string thread)
    {
        if (thread[0] == 'M')
        {
            return WorkTable.Number(thread[1..]);
        }

        string[] parts = thread.Split(' ')[0].Split('/');
        return InchMm * int.Parse(parts[0], CultureInfo.InvariantCulture) / int.Parse(parts[1], CultureInfo.InvariantCulture);
    }

    private static double GaugeMm2(string gauge) =>
        AmericanWireGauge.TryParse(gauge, out int number) ? AmericanWireGauge.AreaMm2(number) : double.PositiveInfinity;
}
