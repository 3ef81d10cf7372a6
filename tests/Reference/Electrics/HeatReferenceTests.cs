using Orlop.Electrics.Heat;
using Xunit;

namespace Orlop.Reference.Tests.Electrics;

public sealed class HeatReferenceTests
{
    private const double FootM = 0.3048;
    private const double CubicFootM3 = FootM * FootM * FootM;

    /// <summary>Source: derived cases, solved by bisection elsewhere from the same law; the rise is printed to 0.001 K, and the closed form with the air outside in place of the air inside.</summary>
    [Fact]
    public void Enclosures_RiseAndFlow_AgreeWithTheCases()
    {
        foreach (ReferenceRow row in ReferenceCsv.Load("electrical-enclosure-temperature-cases.csv", 8))
        {
            AirOpening[] openings = row.Number("inlet_area_cm2") > 0
                ? [new AirOpening(row.Number("inlet_area_cm2") / 1e4, 0), new AirOpening(row.Number("outlet_area_cm2") / 1e4, row.Number("height_difference_m"))]
                : [];
            HeatedSpace space = new()
            {
                Id = row.Text("id"),
                HeatW = row.Number("heat_w"),
                AirC = row.Number("ambient_c"),
                Openings = [.. openings],
                Sides = row.Number("ua_w_per_k") > 0 ? [new SpaceSide("sides", row.Number("ua_w_per_k"), row.Number("ambient_c"))] : [],
            };
            SpaceRest rest = SpaceHeat.Steady(new SpaceHeatInput(space.Id, [space])).Spaces.Single();
            double rise = rest.InsideC - row.Number("ambient_c");
            row.Agrees(row.Number("temperature_rise_k"), rise, 0.005);
            row.Agrees(row.Number("airflow_m3_per_h_at_ambient_density"), rest.FlowM3PerH, 0.005);
            if (row.Has("closed_form_rise_k"))
            {
                double cold = row.Number("ambient_c") + StillAir.ZeroK;
                row.Agrees(row.Number("closed_form_rise_k"), rise * Math.Pow(cold / (cold + rise), 1.0 / 3), 0.005);
            }
        }
    }

    /// <summary>Source: Building Trades Pocketbook (public domain, c. 1900), air in flues, half taken off for losses, densities at 32 °F; every legible entry.</summary>
    [Fact]
    public void Flues_EveryEntry_WithinOnePercent()
    {
        foreach (ReferenceRow row in ReferenceCsv.Load("electrical-natural-draft-flow.csv", 117))
        {
            // A flue is one opening all the way: two equal ones have 1/√2 of it. The table divides by 492 °R, ours by the air inside.
            double riseK = row.Number("temperature_difference_f") / 1.8, insideC = 0;
            double flow = NaturalDraught.FlowM3PerS(FootM * FootM * Math.Sqrt(row.Number("flue_height_ft") * FootM), insideC, insideC - riseK);
            double published = row.Number("published_flow_cfm_per_ft2");
            row.Agrees(published, 0.5 / NaturalDraught.DischargeFactor * flow * 60 / CubicFootM3, 0.011 * published);
        }
    }

    /// <summary>Source: EN 50272-2 / IEC 62485-2, table 1, from a public reproduction.</summary>
    [Fact]
    public void GasCurrents_AreThoseOfTheStandard()
    {
        IReadOnlyList<ReferenceRow> rows = ReferenceCsv.Load("electrical-battery-gas-current.csv", 10);
        ReferenceRow vented = rows.Single(row => row.Text("battery").StartsWith("vented lead-acid", StringComparison.Ordinal) && row.Text("regime") == "boost");
        ReferenceRow valve = rows.Single(row => row.Text("battery").StartsWith("VRLA", StringComparison.Ordinal) && row.Text("regime") == "boost");
        vented.Agrees(vented.Number("i_gas_ma_per_ah"), BatteryGas.VentedBoostMaPerAh, 0);
        valve.Agrees(valve.Number("i_gas_ma_per_ah"), BatteryGas.ValveBoostMaPerAh, 0);
    }

    /// <summary>
    /// Source: worked cases of the same formula, 24 V of 200 Ah: vented at boost 2.40 m³/h and 67.2 cm², valve-regulated 0.96 m³/h and 26.9 cm²; the inland rule with a charger of 60 A and 12 cells
    /// 19.8 m³/h and 110 cm².
    /// </summary>
    [Fact]
    public void BatteryGas_WorkedCases_Agree()
    {
        Assert.Equal(2.40, BatteryGas.FlowM3PerH(12, BatteryGas.VentedBoostMaPerAh, 200), 1e-9);
        Assert.Equal(67.2, BatteryGas.OpeningCm2(BatteryGas.FlowM3PerH(12, BatteryGas.VentedBoostMaPerAh, 200)), 1e-9);
        Assert.Equal(0.96, BatteryGas.FlowM3PerH(12, BatteryGas.ValveBoostMaPerAh, 200), 1e-9);
        Assert.Equal(26.9, BatteryGas.OpeningCm2(BatteryGas.FlowM3PerH(12, BatteryGas.ValveBoostMaPerAh, 200)), 0.05);
        Assert.Equal(19.8, BatteryGas.InlandFlowM3PerH(12, 60), 1e-9);
        Assert.Equal(110, BatteryGas.InlandDuctCm2(BatteryGas.InlandFlowM3PerH(12, 60)), 1e-9);
    }

    /// <summary>
    /// Source: a public table of dry air at 1 atm, 0 to 100 °C (conductivity W/(m K), dynamic viscosity Pa s, density kg/m³); tables of air differ by some percent from each other, and conductivity the most.
    /// </summary>
    [Theory]
    [InlineData(0, 0.02364, 1.729e-5, 1.292)]
    [InlineData(20, 0.02514, 1.825e-5, 1.204)]
    [InlineData(50, 0.02735, 1.963e-5, 1.092)]
    [InlineData(100, 0.03095, 2.181e-5, 0.9458)]
    public void Air_AgreesWithATable(double airC, double conductivity, double viscosity, double density)
    {
        Assert.Equal(1, StillAir.ConductivityWPerMK(airC) / conductivity, 0.025);
        Assert.Equal(1, StillAir.ViscosityPaS(airC) / viscosity, 0.01);
        Assert.Equal(1, StillAir.DensityKgPerM3(airC) / density, 0.002);
    }
}
