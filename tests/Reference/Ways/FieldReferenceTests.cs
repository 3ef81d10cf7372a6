using Orlop.Electrics.Fields;
using Xunit;

namespace Orlop.Reference.Tests.Ways;

public sealed class FieldReferenceTests
{
    // Long against every distance in the table: what is missing beyond its ends is less than 1 part in 100 000.
    private const double HalfM = 1000;

    /// <summary>Source: Biot and Savart for straight wires without end: two at a distance, seen in their plane and from the side, and one alone; arctan over 18 µT.</summary>
    [Fact]
    public void TwoWires_AreAsTheTable()
    {
        foreach (ReferenceRow row in ReferenceCsv.Load("electrical-two-wire-field.csv", 80))
        {
            (double current, double spacing, double far) = (row.Number("current_a"), row.Number("wire_spacing_mm") / 1000, row.Number("distance_m"));
            double inPlane = current * (Wire(spacing / 2, 0, far) - Wire(-spacing / 2, 0, far)).SizeUT, beside = current * (Wire(0, spacing / 2, far) - Wire(0, -spacing / 2, far)).SizeUT;
            row.Agrees(row.Number("b_in_plane_ut"), inPlane, 6e-5 + (1e-5 * inPlane));
            row.Agrees(row.Number("b_bisector_ut"), beside, 6e-5 + (1e-5 * beside));
            row.Agrees(row.Number("b_single_wire_ut"), current * Wire(0, 0, far).SizeUT, 6e-4 + (1e-5 * current));
            row.Agrees(row.Number("max_deviation_deg_h18ut"), CompassDeviation.Deg(0, inPlane, 18), 6e-4);
        }
    }

    /// <summary>Source: a textbook's two wires 10 cm apart, 4 A each, seen from 20.6 cm: each gives 3.88 µT.</summary>
    [Fact]
    public void OneWire_TextbookCase_Agrees() => Assert.Equal(3.88, 4 * Wire(0, 0, 0.206).SizeUT, 0.005);

    /// <summary>Source: a pair twisted with a pitch of 0.1 m, 10 mm apart, 100 A, summed numerically by another program: 33.0 µT at 0.05 m and 0.87 µT at 0.10 m, ± 3 %.</summary>
    [Theory]
    [InlineData(0.05, 33.0)]
    [InlineData(0.10, 0.87)]
    public void TwistedPair_IsAsSummedElsewhere(double farM, double publishedUT)
    {
        FieldPoint compass = new(0, 0, 0);
        FieldPoint[] middle = [new(-10, farM, 0), new(10, farM, 0)];
        double mostUT = Enumerable.Range(0, 24).Max(k =>
        {
            double turned = k * Math.PI / 12;
            return 100 * (LineField.OfLineUT(CoreLines.Twisted(middle, 0.005, 0.1, turned, compass), compass) - LineField.OfLineUT(CoreLines.Twisted(middle, 0.005, 0.1, turned + Math.PI, compass), compass)).SizeUT;
        });
        Assert.Equal(publishedUT, mostUT, 0.03 * publishedUT);
    }

    // Field of one ampere at the origin in a wire along x, so far off in y, moved by what is given towards it and aside.
    private static FieldVector Wire(double towards, double aside, double far) =>
        LineField.OfPieceUT(new FieldPoint(-HalfM, far - towards, aside), new FieldPoint(HalfM, far - towards, aside), new FieldPoint(0, 0, 0));
}
