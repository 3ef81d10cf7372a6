using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;
using System.Text.Json;
using Orlop.Electrics.Energy;

namespace Orlop.Bench.Energy;

/// <summary>What the same method in NumPy found, and how long it took.</summary>
internal sealed record NumpyEnergy(double YearMs, double SampleMs, double SunWh, double UnmetWh, double[] Chances, string Numpy);

/// <summary>A year at one-minute steps and a thousand years of drawn weather at hourly steps, beside the same in NumPy. Ends with 1 where it is slower than promised, or differs.</summary>
internal static class EnergyBench
{
    private const int YearCount = 1000;
    private const double MostYearMs = 100;
    private const double MostSampleMs = 1000;
    private const double MostDifferenceRatio = 1e-6;

    // The engine reads the panels' power between 33 shares of a clear sky; a year at the reserve may fall on either side.
    private const double MostChanceDifference = 0.005;

    private static readonly JsonSerializerOptions Names = new(JsonSerializerDefaults.Web);

    public static int Run(TextWriter output)
    {
        EnergyInput input = Input();
        (double yearMs, EnergyResult year) = Median(9, () => EnergySimulation.Of(input).Year(60));
        EnergySimulation simulation = EnergySimulation.Of(input);
        (double sampleMs, EnergySample sample) = Median(5, () => EnergySampling.Calculate(simulation, YearCount));
        bool isGood = yearMs <= MostYearMs && sampleMs <= MostSampleMs;
        output.WriteLine(Line($"One year at one-minute steps: {yearMs:F0} ms on {Environment.ProcessorCount} cores (limit {MostYearMs:F0})."));
        output.WriteLine(Line($"{YearCount} drawn years at hourly steps: {sampleMs:F0} ms (limit {MostSampleMs:F0}); books off by {sample.WorstResidualRatio:E1} at most."));
        if (Python.Program is null)
        {
            output.WriteLine("No python3 with NumPy on the path: not compared.");
            return isGood ? 0 : 1;
        }

        NumpyEnergy numpy = Numpy(input, simulation);
        double difference = Math.Max(Math.Abs(numpy.SunWh - year.Totals.SunWh), Math.Abs(numpy.UnmetWh - year.Totals.UnmetWh)) / year.Totals.ScaleWh;
        double chance = sample.Months.Zip(numpy.Chances, (ours, theirs) => Math.Abs(ours.ChanceFraction - theirs)).Max();
        output.WriteLine(Line($"NumPy {numpy.Numpy}: {numpy.YearMs:F0} ms and {numpy.SampleMs:F0} ms, {numpy.YearMs / yearMs:F0} and {numpy.SampleMs / sampleMs:F0} times as long; energy differs by {difference:E1} of the turnover, a month's chance by {chance:F4}."));
        return isGood && difference <= MostDifferenceRatio && chance <= MostChanceDifference ? 0 : 1;
    }

    private static EnergyInput Input()
    {
        ClimatePlace place = ClimateTable.Places["uk-south"];
        return new EnergyInput
        {
            Subject = "bench",
            Climate = new MonthlyClimate { Subject = place.Name, LatitudeDeg = place.LatitudeDeg, SunWhPerM2 = place.SunWhPerM2, AirC = [4, 4, 6, 9, 12, 15, 17, 17, 15, 11, 8, 5] },
            Battery = new BatteryStore { Id = "bank", Kind = BatteryKind.LithiumIronPhosphate, NewWh = 5000 },
            Solar = [new SolarArray("sun", [new PanelPlane { Id = "panel", PeakW = 400 }], 0.95, double.PositiveInfinity)],
            Loads = [new HourlyPower("load", [.. Enumerable.Repeat(45.0, 24)], [.. Enumerable.Repeat(45.0, 24)])],
            Cycle = new UseCycle(365, 365),
            StartFraction = 0.9,
            ReserveFraction = 0.3,
        };
    }

    private static NumpyEnergy Numpy(EnergyInput input, EnergySimulation simulation)
    {
        WeatherYears weather = new(simulation.Climate.ShareFraction);
        double[] numbers = [input.Climate.LatitudeDeg, .. input.Climate.SunWhPerM2, .. input.Climate.AirC, .. Enumerable.Range(0, YearCount).SelectMany(year => weather.Year(1, year))];
        DirectoryInfo folder = Directory.CreateTempSubdirectory("energy-numpy");
        try
        {
            string file = Path.Combine(folder.FullName, "numbers");
            File.WriteAllBytes(file, MemoryMarshal.AsBytes(numbers.AsSpan()));
            return JsonSerializer.Deserialize<NumpyEnergy>(Python.Run("energy.py", file), Names)!;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static (double MedianMs, T Result) Median<T>(int repeatCount, Func<T> solve)
    {
        T result = solve();
        double[] times = new double[repeatCount];
        for (int i = 0; i < repeatCount; i++)
        {
            long start = Stopwatch.GetTimestamp();
            result = solve();
            times[i] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }

        Array.Sort(times);
        return (times[repeatCount / 2], result);
    }

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
