namespace Orlop.Electrics.Fields;

/// <summary>Magnetic field of a steady current in a line of straight pieces, in air and without iron.</summary>
/// <remarks>
/// Biot and Savart's law over a finite straight piece, in the form of Hanson and Hirshman, "Compact expressions for the Biot–Savart fields of a filamentary
/// segment", Physics of Plasmas 9 (2002): with r₁ and r₂ from its ends to the point, B = µ₀I/4π · (r₁ × r₂)(|r₁| + |r₂|) / (|r₁||r₂|(|r₁||r₂| + r₁·r₂)).
/// </remarks>
public static class LineField
{
    // µ₀/4π in µT·m/A; exact to nine digits in the SI of 2019.
    private const double PerAmpereUT = 0.1;

    /// <summary>Field of one ampere from the first end to the other of a straight piece; not a number on the piece itself.</summary>
    public static FieldVector OfPieceUT(FieldPoint from, FieldPoint to, FieldPoint at)
    {
        double[] first = from.To(at), second = to.To(at);
        double firstM = Vectors.Length(first), secondM = Vectors.Length(second);
        if (from == to)
        {
            return default;
        }

        double factor = PerAmpereUT * (firstM + secondM) / (firstM * secondM * ((firstM * secondM) + Vectors.Dot(first, second)));
        double[] cross = Vectors.Cross(first, second);
        return new FieldVector(cross[0] * factor, cross[1] * factor, cross[2] * factor);
    }

    /// <summary>Field of one ampere along a line, from its first point to its last.</summary>
    public static FieldVector OfLineUT(IReadOnlyList<FieldPoint> line, FieldPoint at)
    {
        ArgumentNullException.ThrowIfNull(line);
        FieldVector field = default;
        for (int k = 1; k < line.Count; k++)
        {
            field += OfPieceUT(line[k - 1], line[k], at);
        }

        return field;
    }
}
