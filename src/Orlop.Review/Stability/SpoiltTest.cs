using Orlop.Boat.Things;
using Orlop.Hull.Measuring;

namespace Orlop.Review.Stability;

/// <summary>Why a berth test that can be read counts for nothing all the same: its own readings do not go together. Null where they do.</summary>
public static class SpoiltTest
{
    /// <summary>A survey whose marks misfit by more than this times what they were read to agrees with nothing until they are read again (common practice, no source).</summary>
    public const double MostMisfitRatio = 2;

    /// <summary>Shifts that scatter by more than this share of the largest heel make no straight line (common practice, no source).</summary>
    public const double MostScatterFraction = 0.1;

    // Four freeboards and a waterline of three unknowns: what is off is shared evenly among them.
    private const int FewMarks = 4;

    // Rolls are counted whole: a run that is further off than half a roll has one too many or too few (common practice, no source).
    private const double MostOffRolls = 0.5;

    private const double BandFactor = 2;

    /// <summary>Marks of a survey that cannot all be right: which is most off and by how much.</summary>
    public static string? Marks(FreeboardResult read)
    {
        ArgumentNullException.ThrowIfNull(read);
        return read.BeyondReason is not { } off ? null
            : read.Residuals.Length == FewMarks ? FormattableString.Invariant($"the marks cannot all be right: they twist against each other, {1000 * Math.Abs(off.ResidualM):0} mm off a plane waterline at least at one of them; four marks cannot say which: read all again, or add two")
            : FormattableString.Invariant($"the marks cannot all be right: “{off.Id}” is most off, {1000 * Math.Abs(off.ResidualM):0} mm {(off.ResidualM > 0 ? "higher" : "lower")} than the waterline that fits best, more than five deviations of its reading; read it again, and the others with it");
    }

    /// <summary>Shifts of an inclining test of which one is too far off the line for chance, or that make no line that rights her.</summary>
    public static string? Shifts(InclinationResult read)
    {
        ArgumentNullException.ThrowIfNull(read);
        return read switch
        {
            { Outliers: { IsEmpty: false } off } => $"{string.Join(", ", off)} {(off.Length == 1 ? "is" : "are")} too far off the line for chance; read again, find what moved, or leave out what you know to be wrong",
            { WithIntercept.SlopeKgM: <= 0 } => "weights moved to one side heel her to the other: a sign is turned round, of the shifts or of the heels",
            { WithIntercept: { } line } when BandFactor * line.SlopeDeviationKgM >= line.SlopeKgM => "the shifts scatter so far that GM may be nothing, or twice what the line says; read them again",
            { ScatterFraction: > MostScatterFraction and var scatter } => FormattableString.Invariant($"the shifts make no straight line: they scatter by {100 * scatter:0} % of the largest heel, at most {100 * MostScatterFraction:0} % (common practice, no source); those that do not lie on it are to be repeated or explained (2008 IS Code part B 8.4.1.2)"),
            _ => null,
        };
    }

    /// <summary>Runs of a rolling test that differ by more than half a roll: one was miscounted.</summary>
    public static string? Runs(RollingTest test)
    {
        ArgumentNullException.ThrowIfNull(test);
        double[] periods = [.. test.Runs.Select(run => run.TimeS / run.RollCount).Order()];
        if (periods.Length < 2)
        {
            return null;
        }

        if (periods.Length == 2)
        {
            return (periods[1] - periods[0]) * test.Runs.Max(run => run.RollCount) > MostOffRolls * periods[1]
                ? "its two runs differ by more than half a roll: one of them was miscounted; time a third, and take out the one that is off" : null;
        }

        double middle = 0.5 * (periods[(periods.Length - 1) / 2] + periods[periods.Length / 2]);
        string[] off =
        [
            .. test.Runs.Select((run, index) => (Run: run, Number: index + 1))
                .Where(numbered => Math.Abs(numbered.Run.TimeS - (numbered.Run.RollCount * middle)) > MostOffRolls * middle)
                .Select(numbered => FormattableString.Invariant($"run {numbered.Number} ({numbered.Run.RollCount} rolls in {numbered.Run.TimeS:0.##} s)")),
        ];
        return off.Length == 0 ? null
            : $"{string.Join(", ", off)} {(off.Length == 1 ? "is" : "are")} more than half a roll off the others: rolls were miscounted; time again, or take out what is off";
    }
}
