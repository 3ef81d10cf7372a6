using System.Globalization;
using Orlop.Electrics.Conductors;
using Orlop.Electrics.Protection;
using Xunit;

namespace Orlop.Reference.Tests.Electrics;

public sealed class ProtectionReferenceTests
{
    /// <summary>Source: IEC 60255 / IEEE C37.112 constants as listed in two public relay manuals.</summary>
    [Fact]
    public void InverseCurves_ListedPoints_AgreeToPrintedDigits()
    {
        foreach (var row in ReferenceCsv.Load("electrical-idmt-curves.csv", 42))
        {
            var id = row.Text("curve").Replace('_', '-');
            var curve = InverseTimeCurve.Standard.Single(candidate => candidate.Id.Equals(id, StringComparison.OrdinalIgnoreCase));
            Assert.Equal((row.Number("k_s"), row.Number("alpha"), row.Number("c_s")), (curve.KS, curve.AlphaCoefficient, curve.AddedS));
            row.Agrees(row.Number("time_s"), curve.LatestOpening(row.Number("multiple_of_setting")).TimeS!.Value, 5.1e-5);
        }
    }

    /// <summary>Source: IEC 60898-1 limits from a public breaker leaflet (type B band and the end of D from memory).</summary>
    [Fact]
    public void BreakerGates_EveryBandOfTheStandard_IsInTheTable()
    {
        foreach (var row in ReferenceCsv.Load("electrical-mcb-bands.csv", 15))
        {
            var gates = OperatingGateTable.Find($"breaker-{row.Text("type").ToUpperInvariant() switch { "B" => "b", "C" => "c", _ => "d" }}", 16)!;
            var multiple = row.Number("multiple_of_in");
            switch (row.Text("required"))
            {
                case "no_trip":
                    Assert.Equal(row.Number("max_time_s"), gates.EarliestOpening(multiple).TimeS);
                    Assert.Null(gates.LatestOpening(multiple).TimeS);
                    break;
                case "no_instant_trip":
                    Assert.Equal(row.Number("min_time_s"), gates.EarliestOpening(multiple).TimeS);
                    break;
                default:
                    Assert.Equal(row.Number("max_time_s"), gates.LatestOpening(multiple).TimeS);
                    break;
            }
        }
    }

    [Theory]
    [InlineData(32, 60, 3600)]
    [InlineData(33, 120, 3600)]
    [InlineData(63, 120, 3600)]
    [InlineData(64, 120, 7200)]
    public void BreakerGates_LargerRatings_HaveTheStandardsLongerTimes(double ratingA, double latestAt255S, double latestAt145S)
    {
        var gates = OperatingGateTable.Find("breaker-c", ratingA)!;
        Assert.Equal(latestAt255S, gates.LatestOpening(2.55).TimeS);
        Assert.Equal(latestAt145S, gates.LatestOpening(1.45).TimeS);
    }

    /// <summary>Source: ISO 8820-3 and -5 from memory, unverified; every gate says so.</summary>
    [Fact]
    public void FuseGates_EveryRow_IsInTheTableAndMarkedFromMemory()
    {
        foreach (var row in ReferenceCsv.Load("electrical-fuse-gates-unverified.csv", 16))
        {
            var (id, ratingA) = row.Text("fuse_type") switch
            {
                "blade_type_C_1_40A" => ("blade-type-c", 40.0),
                "strip_SF30_30_200A" => ("strip-sf30", 200.0),
                _ => ("strip-sf51", 500.0),
            };
            var gates = OperatingGateTable.Find(id, ratingA)!;
            var ratio = double.Parse(row.Text("percent_of_rating"), CultureInfo.InvariantCulture) / 100;
            Assert.Equal(row.Number("min_time_s"), gates.EarliestOpening(ratio).TimeS);
            Assert.Equal(row.Has("max_time_s") ? row.Number("max_time_s") : null, gates.LatestOpening(ratio).TimeS);
            Assert.True(gates.IsFromMemory);
            Assert.All(gates.Gates, gate => Assert.True(gate.IsFromMemory));
        }
    }

    /// <summary>AD1: an open tutorial, 12 kA for 0.02 s with k 143 needs 11.9 mm². AD2 derived: 3 kA, 1 s, k 115.</summary>
    [Theory]
    [InlineData(143, 12_000, 0.02, 11.87, 0.005)]
    [InlineData(115, 3_000, 1, 26.09, 0.005)]
    public void SmallestArea_WorkedExamples_Agree(double kFactor, double currentA, double timeS, double expectedMm2, double tolerance) =>
        Assert.Equal(expectedMm2, AdiabaticWithstand.SmallestAreaMm2(kFactor, currentA, timeS), tolerance);

    /// <summary>AD3 and AD4, derived by hand: 6 mm² at 624.41 A, 50 mm² at 3366.91 A, k 115.</summary>
    [Theory]
    [InlineData(6, 624.41, 1.221)]
    [InlineData(50, 3366.91, 2.917)]
    public void LongestTime_WorkedExamples_Agree(double areaMm2, double currentA, double expectedS)
    {
        var result = AdiabaticWithstand.LongestTime(areaMm2, 115, currentA);
        Assert.Equal(expectedS, result.LongestS, 0.0005);
        Assert.False(result.IsBeyondFormula);
    }

    /// <summary>
    /// Derived by hand on the unverified gates: a 3 kW inverter at twice its rating for 5 s draws 315 A. A 250 A strip fuse (SF51) holds by its gates, 200 A by interpolation (earliest
    /// 18.4 s), 150 A may open.
    /// </summary>
    [Theory]
    [InlineData(250, StartHoldingStatus.Holds)]
    [InlineData(200, StartHoldingStatus.HoldsByInterpolation)]
    [InlineData(150, StartHoldingStatus.MayOpen)]
    public void StartHolding_InverterSurge_WorkedExample(double ratingA, StartHoldingStatus expected)
    {
        var gates = OperatingGateTable.Find("strip-sf51", ratingA)!;
        var result = StartHolding.Calculate(gates, [new ProfileStep(315 / ratingA, 5)]);
        Assert.Equal(expected, result.Status);
        if (ratingA == 200)
        {
            Assert.Equal(18.4, gates.EarliestOpening(1.575).TimeS!.Value, 0.05);
        }
    }
}
