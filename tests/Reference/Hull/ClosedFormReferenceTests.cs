using System.Collections.Immutable;
using System.Globalization;
using Orlop.Hull.Hydrostatics;
using Orlop.Hull.Surfaces;
using Orlop.Hull.Tests.Shapes;
using Xunit;

namespace Orlop.Reference.Tests.Hull;

/// <summary>Hulls whose volume, centres and moments are known in closed form (hull-closed-form.csv). Printed to 11 or 12 digits.</summary>
public sealed class ClosedFormReferenceTests
{
    private static readonly string[] Columns = ["volume_m3", "waterplane_area_m2", "kb_m", "bm_m", "km_m", "bml_m"];

    private static IReadOnlyList<ReferenceRow> Rows => ReferenceCsv.Load("hull-closed-form.csv", expectedRows: 14);

    public static TheoryData<string> ExactShapes => [.. Rows.Where(IsExact).Select(row => row.ToString())];

    public static TheoryData<string> CurvedShapes => [.. Rows.Where(row => !IsExact(row)).Select(row => row.ToString())];

    [Theory, MemberData(nameof(ExactShapes))]
    public void ExactSurface_ClosedForm_AgreesToTenDigits(string name)
    {
        var row = Row(name);
        var found = Found(row, 0);
        for (var i = 0; i < Columns.Length; i++)
        {
            row.Agrees(row.Number(Columns[i]), found[i], 1e-10 * row.Number(Columns[i]));
        }
    }

    [Theory, MemberData(nameof(CurvedShapes))]
    public void CurvedSurface_FinerMesh_ConvergesWithSecondOrder(string name)
    {
        var row = Row(name);
        var (coarse, middle, fine) = (Found(row, 20), Found(row, 40), Found(row, 80));
        for (var i = 0; i < Columns.Length; i++)
        {
            var published = row.Number(Columns[i]);
            double Error(double[] found) => Math.Abs(found[i] - published) / published;
            Assert.True(Error(fine) < 3e-3, $"{Columns[i]}: error {Error(fine)} on the finest mesh");
            AssertQuarters(Error(coarse), Error(middle), Columns[i]);
            AssertQuarters(Error(middle), Error(fine), Columns[i]);
        }
    }

    [Theory, MemberData(nameof(CurvedShapes))]
    public void CurvedSurface_Extrapolated_AgreesToSixDigits(string name)
    {
        var row = Row(name);
        var (middle, fine) = (Found(row, 40), Found(row, 80));
        for (var i = 0; i < Columns.Length; i++)
        {
            row.Agrees(row.Number(Columns[i]), fine[i] + ((fine[i] - middle[i]) / 3), 2e-6 * row.Number(Columns[i]));
        }
    }

    // stability.md 1.4: numeric, printed to eight digits.
    [Theory]
    [InlineData(10, 1, 0.625, 14.8790631)]
    [InlineData(12, 3.6, 0.9, 39.1810804)]
    public void WettedSurface_Wigley_Converges(double lengthM, double beamM, double draughtM, double publishedM2)
    {
        double Wetted(int steps) =>
            Submersion.Calculate(FunctionHull.Wigley(lengthM, beamM, draughtM, 2 * draughtM, steps, steps / 2), Attitude.Upright(draughtM)).WettedAreaM2;
        var (middle, fine) = (Wetted(60), Wetted(120));
        Assert.Equal(publishedM2, fine + ((fine - middle) / 3), 2e-6 * publishedM2);
    }

    private static void AssertQuarters(double coarse, double fine, string column)
    {
        if (coarse > 1e-9)
        {
            Assert.InRange(Math.Log2(coarse / fine), 1.7, 2.6);
        }
        else
        {
            Assert.True(fine < 1e-9, $"{column}: {fine}");
        }
    }

    private static double[] Found(ReferenceRow row, int fineness)
    {
        var (mesh, draught, keel) = Shape(row, fineness);
        var part = Submersion.Calculate(mesh, Attitude.Upright(draught));
        var heightOfBuoyancy = part.CentreOfBuoyancy!.Value.ZM - keel;
        var radius = part.TransverseSecondMomentM4 / part.VolumeM3;
        return [part.VolumeM3, part.WaterplaneAreaM2, heightOfBuoyancy, radius, heightOfBuoyancy + radius, part.LongitudinalSecondMomentM4 / part.VolumeM3];
    }

    private static (TriangleMesh Mesh, double DraughtM, double KeelM) Shape(ReferenceRow row, int fineness)
    {
        var size = row.Text("dimensions_m").Replace("c=T", "T", StringComparison.Ordinal).Replace("R=T", "T", StringComparison.Ordinal).Split(';').Select(part => part.Split('='))
            .ToDictionary(part => part[0], part => double.Parse(part[1], CultureInfo.InvariantCulture));
        var draught = size["T"];
        return row.Text("shape") switch
        {
            "box" => (Solids.Box(new Point3(0, -size["B"] / 2, 0), new Point3(size["L"], size["B"] / 2, 2)), draught, 0),
            "triangular_prism_apex_down" => (Solids.Prism(0, size["L"], [(0, 0), (size["b_wl"], 2 * draught), (-size["b_wl"], 2 * draught)]), draught, 0),
            "horizontal_cylinder" => (Solids.Prism(0, size["L"], CircleCutAtWater(size["R"], draught, 2 * fineness)), draught, 0),
            "half_ellipsoid" => (Solids.Ellipsoid(new Point3(0, 0, draught), new Point3(size["a"], size["b"], draught), 2 * fineness), draught, 0),
            "hemisphere" => (Solids.Ellipsoid(new Point3(0, 0, draught), new Point3(draught, draught, draught), 2 * fineness), draught, 0),
            _ => (FunctionHull.Wigley(size["L"], size["B"], draught, 2 * draught, 2 * fineness, fineness, size.GetValueOrDefault("a2"), size.GetValueOrDefault("alpha")), draught, 0),
        };
    }

    // Corners on the circle, two of them on the waterline, so that finer meshes follow one law of error.
    private static ImmutableArray<(double YM, double ZM)> CircleCutAtWater(double radius, double draught, int steps)
    {
        var half = Math.Acos((radius - draught) / radius);
        return [.. Enumerable.Range(0, steps).Select(i => -half + (2 * half * i / steps))
            .Concat(Enumerable.Range(0, steps).Select(i => half + ((Math.Tau - (2 * half)) * i / steps)))
            .Select(angle => (radius * Math.Sin(angle), radius - (radius * Math.Cos(angle))))];
    }

    private static bool IsExact(ReferenceRow row) => row.Text("shape") is "box" or "triangular_prism_apex_down";

    private static ReferenceRow Row(string name) => Rows.Single(row => row.ToString() == name);
}
