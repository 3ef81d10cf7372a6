using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Hull.Criteria;
using Orlop.Hull.Measuring;
using Orlop.Review.Findings;
using Orlop.Review.Stability;
using Xunit;

namespace Orlop.Review.Tests.Stability.Checks;

public sealed class GeneralIntactCheckTests
{
    private static readonly StabilityBasis Chosen = JudgedBox.Rules(StabilityRule.GeneralIntact);

    // Exact levers of the box: areas 0.1294194 and 0.2196515 m rad, greatest lever 0.5252651 m at 36.5277°, GM 0.8666667 m; limits of 2008 IS Code part A 2.2.
    [Theory]
    [InlineData("area-to-30", 0.055 / 0.1294194)]
    [InlineData("area-to-40", 0.090 / 0.2196515)]
    [InlineData("area-30-to-40", 0.030 / 0.0902321)]
    [InlineData("lever-at-30", 0.20 / 0.5252651)]
    [InlineData("heel-of-greatest-lever", 25 / 36.5277)]
    [InlineData("initial-gm", 0.15 / 0.8666667)]
    public void Box_EachCriterion_HoldsWithItsUse(string id, double use)
    {
        Finding finding = JudgedBox.Of(Chosen).Only("general-intact", $"particulars.{id}");
        Assert.Equal(Verdict.Holds, finding.Verdict);
        Assert.Equal(use, finding.UseFraction!.Value, 1e-4);
    }

    [Fact]
    public void RuleNotChosen_NoFinding() => Assert.Empty(JudgedBox.Of(JudgedBox.Rules()).Found("general-intact"));

    // GM 0.8667 m ± 2 · 0.5 m reaches below 0.15 m; half of the 0.7167 m between is 0.358 m, so ± two standard deviations is 0.716 m.
    [Fact]
    public void BandAcrossTheLimit_IsUnknownAndNamesTheTest()
    {
        Finding finding = JudgedBox.Of(Chosen, JudgedBox.Bare(kgPlusMinus: 0.5)).Only("general-intact", "particulars.initial-gm");
        Assert.Equal(Verdict.Unknown, finding.Verdict);
        Assert.Null(finding.UseFraction);
        Assert.Contains("an inclining test that knows KG to ± 0.716 m (two standard deviations) would settle it", finding.Headline.ToString(), StringComparison.Ordinal);
        Assert.Equal(1.0, finding.Number("Band"), 1e-4);
    }

    [Fact]
    public void NeededTest_Done_SettlesIt() => Assert.NotEqual(
        Verdict.Unknown, JudgedBox.Of(Chosen, JudgedBox.Bare(kgPlusMinus: 0.358)).Only("general-intact", "particulars.initial-gm").Verdict);

    // dA/dKG = -(1 - cos 30°): 0.01 m of KG is 0.00134 m rad of area to 30°.
    [Fact]
    public void AreaTo30_BandOfKg_IsTheClosedForm() => Assert.Contains(
        "= 0.0027 m rad",
        Assert.Single(JudgedBox.Of(Chosen, JudgedBox.Bare(kgPlusMinus: 0.01)).Only("general-intact", "particulars.area-to-30").Working, line => line.What == "Band").Expression,
        StringComparison.Ordinal);

    // The slopes are those of boats that weigh a little more, or whose G is a little elsewhere.
    [Theory]
    [InlineData(0.0)]
    [InlineData(0.15)]
    public void SlopesWithCentre_AgreeWithDifferences(double tcgM)
    {
        BoatModel boat = JudgedBox.Of(Chosen, JudgedBox.Bare(tcgM: tcgM, lcgM: 5.2, kgPlusMinus: 0.002, tcgPlusMinus: 0.002));
        StabilityView view = new(boat, null, new Memo());
        LoadedBoat loaded = view.LoadedIn(view.Conditions[0]);
        foreach (int side in new[] { 1, -1 })
        {
            IntactSide intact = new(loaded, Levers.To(side, loaded.Input!, []));
            for (int i = 0; i < intact.Criteria.Length; i++)
            {
                int index = i;
                WeightSlopes byDifferences = ResultDeviation.SlopesOf(loaded, input => GeneralCriteria.Check(Levers.To(side, input, []))[index].Value)!.Value;
                WeightSlopes found = intact.SlopesOf(i);
                double scale = Math.Max(1, Math.Abs(byDifferences.PerKgM)), perMass = Math.Max(1e-5, Math.Abs(byDifferences.PerMassKg));
                Assert.Equal(byDifferences.PerKgM / scale, found.PerKgM / scale, 0.02);
                Assert.Equal(byDifferences.PerTcgM / scale, found.PerTcgM / scale, 0.02);
                Assert.Equal(byDifferences.PerLcgM / scale, found.PerLcgM / scale, 0.02);
                Assert.Equal(byDifferences.PerMassKg / perMass, found.PerMassKg / perMass, 0.02);
            }
        }
    }

    // The side she lists to has the smaller levers.
    [Fact]
    public void ListToPort_IsJudgedToPort()
    {
        Finding finding = JudgedBox.Of(Chosen, JudgedBox.Bare(tcgM: 0.1)).Only("general-intact", "particulars.area-to-30");
        Assert.Contains(finding.Working, line => line.Expression.Contains("to port", StringComparison.Ordinal));
        Assert.True(finding.UseFraction > 0.055 / 0.1294194);
    }

    [Fact]
    public void VentThatGoesUnderAt20_FailsTheAreas()
    {
        BoatModel boat = JudgedBox.Of(Chosen, new HullOpening { Id = "vent", Use = OpeningUse.Vent, Place = new Boat.Values.Place(5, -2, 1.5) });
        Assert.Equal(Verdict.Fails, boat.Only("general-intact", "particulars.lever-at-30").Verdict);
    }

    [Fact]
    public void NoOpeningGiven_AreasAreUnknown_GmIsNot()
    {
        BoatModel boat = JudgedBox.Of(Chosen).Without("vent");
        boat.Only("general-intact", "particulars.area-to-40").IsUnknownFor("opening", "place");
        Assert.Equal(Verdict.Holds, boat.Only("general-intact", "particulars.initial-gm").Verdict);
    }

    [Fact]
    public void GearWithoutMass_NothingHolds() => Assert.All(
        JudgedBox.Of(Chosen, new Gear { Id = "anchor" }).Found("general-intact"),
        finding => finding.IsUnknownFor("anchor", "massKg"));

    [Fact]
    public void NoWeight_IsUnknownUnderTheSameSubjects() => Assert.Equal(
        JudgedBox.Of(Chosen).Found("general-intact").Select(finding => finding.SubjectId).Order(StringComparer.Ordinal),
        JudgedBox.Of(Chosen).Without("bare-boat").Found("general-intact").Select(finding =>
        {
            finding.IsUnknownFor("bare-boat", "massKg");
            return finding.SubjectId;
        }).Order(StringComparer.Ordinal));

    [Fact]
    public void NoLines_IsUnknown() => JudgedBox.Of(Chosen).Without("hull-lines").Only("general-intact", "particulars.initial-gm").IsUnknownFor("hull-lines", "stations");

    [Theory]
    [InlineData(2.5, 0.1)]
    [InlineData(4, 0.5)]
    [InlineData(6, 1)]
    public void WeightAloft_NeverMakesACriterionEasier(double heightM, double tonnes)
    {
        Dictionary<string, double?> before = Uses(JudgedBox.Of(Chosen)), after = Uses(JudgedBox.Of(Chosen, JudgedBox.Gear("mast-gear", 1000 * tonnes, 5, 0, heightM)));
        Assert.All(before, use => Assert.True(after[use.Key] is not { } now || now >= use.Value, use.Key));
    }

    [Fact]
    public void Alteration_TellsBeforeAndAfterOfOneSubject()
    {
        BoatModel boat = JudgedBox.Of(Chosen);
        Alteration winch = new() { Id = "derrick", Edits = [new Edit { Id = "derrick-gear", Becomes = JudgedBox.Gear("derrick-gear", 3200, 5, 0, 8) }] };
        PairedFinding pair = Assert.Single(boat.Review(winch).Findings, pair => pair.SubjectId == "particulars.initial-gm");
        Assert.Equal((Verdict.Holds, Verdict.Tight, Change.NewTrouble), (pair.Before!.Worst.Verdict, pair.After!.Worst.Verdict, pair.Change));
    }

    private static Dictionary<string, double?> Uses(BoatModel boat) => boat.Found("general-intact").ToDictionary(finding => finding.SubjectId, finding => finding.UseFraction);
}
