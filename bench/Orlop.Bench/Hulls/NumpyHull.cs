using System.Globalization;
using System.Runtime.InteropServices;
using System.Text.Json;
using Orlop.Hull.Floating;

namespace Orlop.Bench.Hulls;

/// <summary>What the same method in NumPy found, and how long it took.</summary>
internal sealed record NumpyResult(double EquilibriumMs, double CurveMs, double DraughtM, double TrimDeg, double[] LeversM, string Numpy);

/// <summary>Runs hull.py.</summary>
internal static class NumpyHull
{
    private static readonly JsonSerializerOptions Names = new(JsonSerializerDefaults.Web);

    public static NumpyResult Run(FloatingInput boat, int repeatCount)
    {
        var folder = Directory.CreateTempSubdirectory("hull-numpy");
        try
        {
            var (corners, triangles) = (Path.Combine(folder.FullName, "corners"), Path.Combine(folder.FullName, "triangles"));
            File.WriteAllBytes(corners, MemoryMarshal.AsBytes(boat.Buoyancy[0].Corners.AsSpan()));
            File.WriteAllBytes(triangles, MemoryMarshal.AsBytes(boat.Buoyancy[0].Triangles.AsSpan()));
            var output = Python.Run("hull.py", corners, triangles, Text(boat.MassKg), Text(boat.CentreOfGravity.XM), Text(boat.CentreOfGravity.ZM),
                Text(boat.WaterKgPerM3), repeatCount.ToString(CultureInfo.InvariantCulture));
            return JsonSerializer.Deserialize<NumpyResult>(output, Names)!;
        }
        finally
        {
            folder.Delete(recursive: true);
        }

        static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);
    }
}
