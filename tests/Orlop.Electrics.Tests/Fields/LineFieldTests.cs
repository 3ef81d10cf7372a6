using Orlop.Electrics.Fields;
using Xunit;

namespace Orlop.Electrics.Tests.Fields;

public sealed class LineFieldTests
{
    private static readonly FieldPoint Compass = new(0, 0, 0);

    /// <summary>Closed form of a straight piece: B = µ₀I/4πr · (sin β − sin α), α and β the angles from the foot of the perpendicular to its ends.</summary>
    [Theory]
    [InlineData(-1, 1, 0.5)]
    [InlineData(0, 2, 1)]
    [InlineData(0.3, 4, 0.2)]
    [InlineData(-7, -2, 1.5)]
    public void OfPiece_IsTheClosedForm(double fromM, double toM, double farM)
    {
        FieldVector field = LineField.OfPieceUT(new FieldPoint(fromM, 0, 0), new FieldPoint(toM, 0, 0), new FieldPoint(0, farM, 0));
        double sine(double along) => along / Math.Sqrt((along * along) + (farM * farM));
        Assert.Equal(0.1 / farM * (sine(toM) - sine(fromM)), field.ZUT, 1e-12);
        Assert.Equal((0, 0), (field.XUT, field.YUT));
    }

    /// <summary>Middle of a square loop of side a: B = 2√2 µ₀I / πa.</summary>
    [Fact]
    public void OfLine_SquareLoop_IsTheClosedForm()
    {
        FieldPoint[] loop = [new(1, 1, 0), new(-1, 1, 0), new(-1, -1, 0), new(1, -1, 0), new(1, 1, 0)];
        Assert.Equal(2 * Math.Sqrt(2) * 0.4 / 2, LineField.OfLineUT(loop, Compass).ZUT, 1e-12);
    }

    /// <summary>On the axis of a round loop of radius R, z from its middle: B = µ₀IR² / 2(R² + z²)^1.5; here a polygon of 720 sides.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(0.7)]
    public void OfLine_RoundLoop_IsTheClosedForm(double farM)
    {
        FieldPoint[] loop = [.. Enumerable.Range(0, 721).Select(k => new FieldPoint(0.5 * Math.Cos(k * Math.PI / 360), 0.5 * Math.Sin(k * Math.PI / 360), 0))];
        double published = 0.4 * Math.PI * 0.25 / (2 * Math.Pow(0.25 + (farM * farM), 1.5));
        Assert.Equal(published, LineField.OfLineUT(loop, new FieldPoint(0, 0, farM)).ZUT, 2e-5 * published);
    }

    [Fact]
    public void OfPiece_CutInTwo_IsTheSumOfBoth_AndTurnedRoundIsItsOpposite()
    {
        Random random = new(7);
        for (int k = 0; k < 200; k++)
        {
            FieldPoint from = Any(random), to = Any(random), at = Any(random), middle = new((from.XM + to.XM) / 2, (from.YM + to.YM) / 2, (from.ZM + to.ZM) / 2);
            FieldVector whole = LineField.OfPieceUT(from, to, at);
            Assert.Equal(0, (whole - LineField.OfLineUT([from, middle, to], at)).SizeUT, 1e-9 * (1 + whole.SizeUT));
            Assert.Equal(0, (whole + LineField.OfPieceUT(to, from, at)).SizeUT, 1e-9 * (1 + whole.SizeUT));
        }
    }

    [Fact]
    public void OfPiece_FallsWithDistance()
    {
        Random random = new(11);
        for (int k = 0; k < 200; k++)
        {
            double nearM = 0.05 + random.NextDouble(), farM = nearM + 0.01 + random.NextDouble();
            FieldPoint from = new(-random.NextDouble() * 3, 0, 0), to = new(0.01 + (random.NextDouble() * 3), 0, 0);
            Assert.True(LineField.OfPieceUT(from, to, new FieldPoint(0, nearM, 0)).SizeUT > LineField.OfPieceUT(from, to, new FieldPoint(0, farM, 0)).SizeUT);
        }
    }

    [Fact]
    public void OfPiece_OnItself_IsNoNumber() => Assert.True(double.IsNaN(LineField.OfPieceUT(new FieldPoint(-1, 0, 0), new FieldPoint(1, 0, 0), Compass).SizeUT));

    /// <summary>A pair twisted is weaker than the same pair straight, the more the further off, at every turn of it.</summary>
    [Fact]
    public void TwistedPair_IsWeakerThanTheSamePairStraight()
    {
        foreach (double farM in new[] { 0.15, 0.25, 0.4 })
        {
            foreach (double turned in new[] { 0, 0.8, 1.6, 2.4 })
            {
                FieldPoint[] middle = [new(-6, farM, 0), new(6, farM, 0)];
                double straight = Pair(turn => CoreLines.Beside(middle, 0.005, turn, Compass), turned), twisted = Pair(turn => CoreLines.Twisted(middle, 0.005, 0.1, turn, Compass), turned);
                Assert.True(twisted < straight / 10, $"{farM} m, {turned}: {twisted} against {straight}");
            }
        }
    }

    [Fact]
    public void CoreLines_BeginAndEndInTheMiddle_AndLieOffItBetween()
    {
        FieldPoint[] middle = [new(0, 0, 0), new(1, 0, 0), new(1, 2, 0.5)];
        foreach (IReadOnlyList<FieldPoint> line in new[] { CoreLines.Beside(middle, 0.01, 1, new(0, 3, 0)), CoreLines.Twisted(middle, 0.01, 0.2, 1, new(0, 3, 0)) })
        {
            Assert.Equal((middle[0], middle[^1]), (line[0], line[^1]));
            Assert.Equal(0.01, line[1].DistanceM(middle[0]), 1e-12);
            Assert.Equal(0.01, line[^2].DistanceM(middle[^1]), 1e-12);
        }
    }

    /// <summary>The greatest deviation over all headings of a field that turns with the boat: every degree tried.</summary>
    [Theory]
    [InlineData(1, 15)]
    [InlineData(5, 18)]
    [InlineData(17, 18)]
    public void GreatestDeg_IsTheGreatestOfAllHeadings(double ownUT, double earthUT)
    {
        double tried = Enumerable.Range(0, 36_000).Max(k => CompassDeviation.Deg(ownUT * Math.Cos(k * Math.PI / 18_000), ownUT * Math.Sin(k * Math.PI / 18_000), earthUT));
        Assert.Equal(tried, CompassDeviation.GreatestDeg(ownUT, earthUT), 1e-4);
    }

    [Fact]
    public void GreatestDeg_AsStrongAsTheEarth_PointsAnywhere_AndNonsenseIsRefused()
    {
        Assert.Equal(180, CompassDeviation.GreatestDeg(18, 18));
        Assert.Throws<ArgumentOutOfRangeException>(() => CompassDeviation.GreatestDeg(double.NaN, 18));
        Assert.Throws<ArgumentOutOfRangeException>(() => CompassDeviation.GreatestDeg(1, 0));
    }

    private static double Pair(Func<double, IReadOnlyList<FieldPoint>> line, double turned) =>
        (LineField.OfLineUT(line(turned), Compass) - LineField.OfLineUT(line(turned + Math.PI), Compass)).SizeUT;

    private static FieldPoint Any(Random random) => new(random.NextDouble() * 4, random.NextDouble() * 4, random.NextDouble() * 4);
}
