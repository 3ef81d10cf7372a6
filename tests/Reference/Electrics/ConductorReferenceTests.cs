using System.Collections.Immutable;
using Orlop.Electrics.Conductors;
using Xunit;

namespace Orlop.Reference.Tests.Electrics;

public sealed class ConductorReferenceTests
{
    private const double FootM = 0.3048;

    /// <summary>Source: open solid copper wire table (ASTM B258 gauge).</summary>
    [Fact]
    public void WireGauge_PublishedSolidWireTable_AgreesInDiameterAndArea()
    {
        foreach (var row in ReferenceCsv.Load("electrical-awg-wire.csv", 28))
        {
            Assert.True(AmericanWireGauge.TryParse(row.Text("awg"), out var gauge), row.ToString());
            var diameterIn = AmericanWireGauge.DiameterM(gauge) / 0.0254;
            var areaCircularMil = AmericanWireGauge.AreaMm2(gauge) / AmericanWireGauge.CircularMilMm2;

            // The published table rounds to four figures (diameter 2.3e-4, area 5e-4 at worst).
            row.Agrees(row.Number("published_diameter_in"), diameterIn, 3e-4 * diameterIn);
            row.Agrees(row.Number("published_area_cmil"), areaCircularMil, 6e-4 * areaCircularMil);
            row.Agrees(row.Number("area_mm2"), AmericanWireGauge.AreaMm2(gauge), 6e-5);
            row.Agrees(row.Number("resistance_ohm_per_km_20c"), 1000 * AnnealedCopper.ResistivityAt20OhmMm2PerM / AmericanWireGauge.AreaMm2(gauge), 6e-5 * row.Number("resistance_ohm_per_km_20c"));
            Assert.Equal(row.Text("awg"), AmericanWireGauge.Format(gauge));
        }
    }

    /// <summary>Source: NFPA 70 310.15(B)(2)(a), (b) and a 45 °C ship-cable table, public reproductions.</summary>
    [Fact]
    public void AmbientCorrection_PublishedTables_AgreesWithinSixThousandths()
    {
        foreach (var row in ReferenceCsv.Load("electrical-ambient-correction.csv", 144))
        {
            var result = AmbientCorrection.Calculate(row.Number("insulation_temp_c"), row.Number("ambient_c"), row.Number("base_ambient_c"));
            row.Agrees(row.Number("published_factor"), result.Factor, 0.006);
            Assert.False(result.IsTooHot);
        }
    }

    /// <summary>Source: IEC 60228 correction table (public copy), which uses α = 0.004; IACS copper differs from it by 0.0034 at most.</summary>
    [Fact]
    public void ResistanceFactor_PublishedTable_AgreesWithIacsColumnAndNearlyWithTable()
    {
        foreach (var row in ReferenceCsv.Load("electrical-temperature-resistance-factor.csv", 20))
        {
            var factor = AnnealedCopper.ResistanceFactor(row.Number("conductor_temp_c"));
            row.Agrees(row.Number("r_ratio_iacs"), factor, 5.1e-5);
            row.Agrees(row.Number("kt_iacs"), 1 / factor, 5.1e-5);
            row.Agrees(row.Number("published_kt"), 1 / factor, 0.0035);
        }
    }

    /// <summary>Source: IEC 60228 tables 2 and 3 (four public copies agree).</summary>
    [Theory]
    [InlineData("class2_plain_ohm_per_km_20c", StrandClass.Class2, false)]
    [InlineData("class5_plain_ohm_per_km_20c", StrandClass.Class5, false)]
    [InlineData("class2_tinned_ohm_per_km_20c", StrandClass.Class2, true)]
    [InlineData("class5_tinned_ohm_per_km_20c", StrandClass.Class5, true)]
    public void ConductorResistance_StandardSize_IsTheTablesValue(string column, StrandClass strand, bool isTinned)
    {
        foreach (var row in ReferenceCsv.Load("electrical-iec60228-resistance.csv", 19))
        {
            var result = ConductorResistance.Calculate(new ConductorResistanceInput
            {
                Subject = row.ToString(),
                AreaMm2 = row.Number("area_mm2"),
                LengthM = 1000,
                Strand = strand,
                IsTinned = isTinned,
                ConductorC = 20,
            });
            row.Agrees(row.Number(column), result.ResistanceOhm, 1e-9);
            row.Agrees(row.Number("ideal_ohm_per_km_20c"), result.LeastOhm, 5.1e-5);
            Assert.Equal(ResistanceBasis.Table, result.Basis);
        }
    }

    /// <summary>Source: public 105 °C boat-cable sheet; from 33 CFR 183.425 table 5, note 2 and the engine-space factor 0.85.</summary>
    [Fact]
    public void Ampacity_BoatCableSheet_AllValuesToPrintedRounding()
    {
        var table = FederalTable();
        var bundles = FederalBundles();
        foreach (var row in ReferenceCsv.Load("electrical-boat-cable-105c-derated.csv", 56))
        {
            Assert.True(AmericanWireGauge.TryParse(row.Text("awg"), out var gauge));
            var bundle = row.Text("bundled_conductors");
            var count = bundle == "none" ? 1 : int.Parse(bundle.Split('-')[0], System.Globalization.CultureInfo.InvariantCulture);
            var outside = Run(30, null);
            var inside = Run(50, new StatedFactor(0.85, "33 CFR 183.425 table 5 note 1"));

            // Half a unit of the one printed decimal, with the table's round-half-up.
            row.Agrees(row.Number("published_outside_engine_space_a"), outside, 0.0501);
            row.Agrees(row.Number("published_engine_space_a"), inside, 0.0501);

            double Run(double ambientC, StatedFactor? factor) => Ampacity.Calculate(new AmpacityInput
            {
                Subject = row.ToString(),
                Table = table,
                AreaMm2 = AmericanWireGauge.AreaMm2(gauge),
                InsulationC = 105,
                AmbientC = ambientC,
                LoadedCount = count,
                BundleFactors = bundles,
                AmbientFactor = factor,
            }).CurrentA!.Value;
        }
    }

    /// <summary>Source: 33 CFR 183.425 table 5 note 2.</summary>
    [Fact]
    public void BundleFactor_FederalNote_EveryEdgeOfEveryRow()
    {
        var bundles = FederalBundles();
        foreach (var row in ReferenceCsv.Load("electrical-cfr-bundling-factor.csv", 4))
        {
            var least = (int)row.Number("conductors_min");
            Assert.Equal(row.Number("factor"), bundles.Lookup(least).Factor);
            Assert.Equal(row.Number("factor"), bundles.Lookup(row.Has("conductors_max") ? (int)row.Number("conductors_max") : 200).Factor);
            Assert.NotEqual(row.Number("factor"), bundles.Lookup(least - 1).Factor);
        }
    }

    /// <summary>Source: AC 43.13-1B tables 11-7 and 11-8, public vehicle-cable guide. Rows that the source itself misprints are held against its own factors.</summary>
    [Fact]
    public void VoltageDrop_PublishedExamples_AgreeToPrintedDigits()
    {
        foreach (var row in ReferenceCsv.Load("electrical-voltage-drop-examples.csv", 14))
        {
            var lengthUnitM = row.Text("length_unit") == "ohm/ft" ? FootM : 1;
            var result = VoltageDrop.Calculate(new VoltageDropInput
            {
                Subject = row.Text("id"),
                LoopLengthM = row.Number("length") * lengthUnitM,
                ResistanceOhmPerM = row.Number("resistance_per_length") / lengthUnitM,
                CurrentA = row.Number("current_a"),
                NominalV = 24,
            });
            row.Agrees(row.Number("computed_drop_v"), result.DropV, 5.1e-5);
            if (row.Text("reproduced") == "yes")
            {
                var printed = row.Text("published_drop_v");
                var decimals = printed.Length - printed.IndexOf('.', StringComparison.Ordinal) - 1;
                row.Agrees(row.Number("published_drop_v"), result.DropV, 0.51 * Math.Pow(10, -decimals));
            }
        }
    }

    /// <summary>Source: BS 7671 / IEC 60364 k values for copper (public copy), whole numbers; the formula comes within 0.7.</summary>
    [Fact]
    public void AdiabaticK_PublishedValues_WithinSevenTenths()
    {
        foreach (var row in ReferenceCsv.Load("electrical-adiabatic-k.csv", 8))
        {
            var k = AdiabaticWithstand.KFactor(row.Number("initial_temp_c"), row.Number("final_temp_c"));
            row.Agrees(row.Number("published_k"), k, 0.7);
            row.Agrees(row.Number("k_formula"), k, 0.0051);
        }
    }

    /// <summary>Source: S = √(I²t)/k of BS 7671 regulation 543.1.3 as a public design sheet prints it: 3000 A for 0.4 s, copper in 70 °C thermoplastic, k 115: 16.50 mm². By the formula's own k, 114.84, 0.2 % more.</summary>
    [Fact]
    public void AdiabaticSection_PrintedExample_IsThePrintedSection()
    {
        Assert.Equal(16.50, AdiabaticWithstand.SmallestAreaMm2(115, 3000, 0.4), 0.005);
        Assert.Equal(16.50, AdiabaticWithstand.SmallestAreaMm2(AdiabaticWithstand.KFactor(70, 160), 3000, 0.4), 0.03);
    }

    /// <summary>Source: E-11 voltage-drop tables at 12 V as reproduced in a public sheet; K = 10.75 ohm cmil/ft. The table keeps to its own formula in 131 of 143 entries, is one size thicker in five and one size thinner in seven, never two.</summary>
    [Fact]
    public void SmallestArea_CircularMilTable_SameSizeOrWithinOne()
    {
        ImmutableArray<int> offered = [18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3];
        var conductorC = ConductorTemperatureOfTradeConstant();
        var table = FederalTable();
        var (same, thicker, thinner) = (0, 0, 0);
        foreach (var row in ReferenceCsv.Load("electrical-circular-mil-table-12v.csv", 143))
        {
            var area = VoltageDrop.SmallestAreaMm2(row.Number("round_trip_length_ft") * FootM, row.Number("current_a"), row.Number("drop_percent") / 100 * row.Number("system_v"), conductorC);
            row.Agrees(row.Number("required_cmil"), area / AmericanWireGauge.CircularMilMm2, 0.51 + (1e-6 * row.Number("required_cmil")));

            var size = Enumerable.Range(0, offered.Length).First(i => AmericanWireGauge.AreaMm2(offered[i]) >= area
                && table.Lookup(AmericanWireGauge.AreaMm2(offered[i]), 105).Row!.CurrentA >= row.Number("current_a"));
            Assert.True(AmericanWireGauge.TryParse(row.Text("published_awg"), out var published));
            var step = offered.IndexOf(published) - size;
            same += step == 0 ? 1 : 0;
            thicker += step == 1 ? 1 : 0;
            thinner += step == -1 ? 1 : 0;
            if (row.Text("agrees_with_ampacity") == "yes")
            {
                Assert.True(step == 0, row.ToString());
            }
        }

        Assert.Equal((131, 5, 7), (same, thicker, thinner));
    }

    private static double ConductorTemperatureOfTradeConstant()
    {
        const double TradeOhmCircularMilPerFt = 10.75;
        var resistivity = TradeOhmCircularMilPerFt * AmericanWireGauge.CircularMilMm2 / FootM;
        var conductorC = (resistivity / AnnealedCopper.ResistivityAt20OhmMm2PerM * 254.5) - 234.5;
        Assert.Equal(29.3, conductorC, 0.05);
        return conductorC;
    }

    private static AmpacityTable FederalTable() => new("33 CFR 183.425 table 5", 30,
        [.. ReferenceCsv.Load("electrical-cfr-ampacity.csv", 105).Select(row => new AmpacityRow(Area(row), row.Number("insulation_temp_c"), row.Number("ampacity_a")))]);

    private static double Area(ReferenceRow row) =>
        AmericanWireGauge.TryParse(row.Text("awg"), out var gauge) ? AmericanWireGauge.AreaMm2(gauge) : throw new InvalidDataException(row.ToString());

    private static BundleFactorTable FederalBundles() => new(
        [.. ReferenceCsv.Load("electrical-cfr-bundling-factor.csv", 4).Select(row => new BundleFactorRow(
            (int)row.Number("conductors_min"), row.Has("conductors_max") ? (int)row.Number("conductors_max") : null, row.Number("factor")))],
        "33 CFR 183.425 table 5 note 2");
}
