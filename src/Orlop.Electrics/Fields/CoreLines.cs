using Orlop.Electrics.Working;

namespace Orlop.Electrics.Fields;

/// <summary>The line of a core that lies off the middle of its cable: beside it all the way, or twisted round it. It begins and ends where the middle does, so that currents close.</summary>
public static class CoreLines
{
    private const int StepsPerTurn = 24;

    /// <summary>A core that keeps to one side.</summary>
    /// <param name="middle">The middle of the cable.</param>
    /// <param name="offM">Distance of the core from it, in metres, from 0 to 1.</param>
    /// <param name="turnedRad">Where round the middle it lies: 0 is towards <paramref name="towards"/>.</param>
    /// <param name="towards">A point that the angle is counted from.</param>
    public static IReadOnlyList<FieldPoint> Beside(IReadOnlyList<FieldPoint> middle, double offM, double turnedRad, FieldPoint towards) =>
        Of(middle, offM, double.PositiveInfinity, turnedRad, towards);

    /// <summary>A core that winds round the middle with a pitch in metres, from 0.005 to 2, in a right-handed screw.</summary>
    public static IReadOnlyList<FieldPoint> Twisted(IReadOnlyList<FieldPoint> middle, double offM, double pitchM, double turnedRad, FieldPoint towards) =>
        Of(middle, offM, Guard.InRange(pitchM, 0.005, 2, "m", "Twisted core"), turnedRad, towards);

    private static List<FieldPoint> Of(IReadOnlyList<FieldPoint> middle, double offM, double pitchM, double turnedRad, FieldPoint towards)
    {
        ArgumentNullException.ThrowIfNull(middle);
        Guard.InRange(offM, 0, 1, "m", "Core beside the middle of its cable");
        List<FieldPoint> line = [middle[0]];
        double beforeM = 0;
        for (int k = 1; k < middle.Count; k++)
        {
            double lengthM = middle[k - 1].DistanceM(middle[k]);
            if (lengthM > 0)
            {
                Piece(line, middle[k - 1], middle[k], lengthM, offM, pitchM, turnedRad + (2 * Math.PI * beforeM / pitchM), towards);
                beforeM += lengthM;
            }
        }

        line.Add(middle[^1]);
        return line;
    }

    private static void Piece(List<FieldPoint> line, FieldPoint from, FieldPoint to, double lengthM, double offM, double pitchM, double startRad, FieldPoint towards)
    {
        double[] whole = from.To(to), axis = [whole[0] / lengthM, whole[1] / lengthM, whole[2] / lengthM];
        double[] near = Vectors.Across(axis, from.To(towards)), beside = Vectors.Cross(axis, near);
        int steps = Math.Max(1, (int)Math.Ceiling(StepsPerTurn * lengthM / pitchM));
        for (int step = 0; step <= steps; step++)
        {
            double alongM = lengthM * step / steps, angle = startRad + (2 * Math.PI * alongM / pitchM);
            line.Add(from.Moved(axis, alongM).Moved(near, offM * Math.Cos(angle)).Moved(beside, offM * Math.Sin(angle)));
        }
    }
}
