using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Electrics;
using Orlop.Review.Energy;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using Orlop.Review.Readings;
using Orlop.Review.Stability;
using Orlop.Review.Ways;
using Xunit;

namespace Orlop.Review.Tests;

/// <summary>What docs/demo-boat.md promises of the demo boat.</summary>
public sealed class DemoBoatTests
{
    private static readonly BoatModel Boat = ExampleBoats.Read("sandgrouse");

    private static readonly ReviewEngine Engine = new([new ElectricsDiscipline(), new ReadingsDiscipline(), new StabilityDiscipline(), new EnergyDiscipline(), new WaysDiscipline()]);

    [Theory]
    [InlineData("breaking-capacity", "solar-fuse", Verdict.Fails)]
    [InlineData("voltage-drop", "stern-light", Verdict.Fails)]
    [InlineData("voltage-drop", "anchor-light", Verdict.Unknown)]
    [InlineData("converter-carries-load", "inverter", Verdict.Tight)]
    [InlineData("battery-lasts-plan", "sampling-days", Verdict.Holds)]
    [InlineData("battery-lasts-plan", "refit-days", Verdict.Fails)]
    [InlineData("voltage-drop", "chart-computer", Verdict.Tight)]
    [InlineData("reading-agrees", "drying-reading-minus", Verdict.Fails)]
    [InlineData("reading-agrees", "drying-reading-plus", Verdict.Holds)]
    [InlineData("space-temperature", "inverter-locker", Verdict.Tight)]
    [InlineData("space-temperature", "after-locker", Verdict.Holds)]
    [InlineData("battery-gas", "starter-battery", Verdict.Holds)]
    [InlineData("charge-temperature", "bank", Verdict.Holds)]
    [InlineData("bundle-temperature", "house-starboard", Verdict.Holds)]
    [InlineData("compass-field", "steering-compass", Verdict.Holds)]
    [InlineData("apart-from-ac", "house-port", Verdict.Holds)]
    public void AsBuilt_Finding_IsAsMeant(string checkId, string subjectId, Verdict verdict) =>
        Assert.Equal(verdict, Find(AsBuilt(), checkId, subjectId).After!.Worst.Verdict);

    [Fact]
    public void AsBuilt_MostFindings_Hold()
    {
        ReviewResult review = AsBuilt();
        int trouble = review.Count(Verdict.Fails) + review.Count(Verdict.Unknown) + review.Count(Verdict.Tight);
        Assert.InRange(trouble, 5, review.Findings.Length / 20);
    }

    // Behind the lining, where nobody has measured it: up to the roof and through the gland there.
    [Fact]
    public void AnchorLightCable_WhoseLengthNobodyKnows_FindsItsWay()
    {
        Memo memo = new();
        CableRoute route = RouteFinder.Find(new WaysView(Boat, Practice.Of(Boat, memo), memo, TestContext.Current.CancellationToken), Boat.Find<Cable>("anchor-light-cable")!).Routes[0];

        Assert.Equal(["wheelhouse", "mast-way", "roof-gland", "house-roof"], route.Stretches.Select(stretch => stretch.Way?.Id ?? stretch.Space!.Id));
        Assert.InRange(route.LengthM, 4, 4.6);
    }

    [Fact]
    public void AsBuilt_Stability_Holds()
    {
        HashSet<string> checks = [.. new StabilityDiscipline().Checks.Select(check => check.Id)];
        PairedFinding[] findings = [.. AsBuilt().Findings.Where(finding => checks.Contains(finding.CheckId))];
        Assert.True(findings.Length > 10);
        Assert.All(findings, finding => Assert.Equal(Verdict.Holds, finding.Shown.Verdict));
    }

    // A charger of 28.4 V on 24 V loads is at 1.18 of nominal.
    [Fact]
    public void AsBuilt_NoLoadSeesTooMuchVoltage() => Assert.All(
        AsBuilt().Findings.Where(finding => finding.CheckId == "voltage-not-too-high"), finding => Assert.Equal(Verdict.Holds, finding.After!.Worst.Verdict));

    [Theory]
    [InlineData("start-opens-device", "winch-fuse")]
    [InlineData("voltage-while-starting", "winch")]
    [InlineData("conductor-ampacity", "winch-feed")]
    [InlineData("conductor-protection", "winch-tail.plus")]
    [InlineData("conductor-protection", "winch-lead.plus")]
    [InlineData("breaking-capacity", "winch-fuse")]
    [InlineData("plugs-that-mate", "pump-lead-plug")]
    [InlineData("list", "particulars")]
    [InlineData("through-hull-shuts", "engine-exhaust")]
    [InlineData("drift-since-test", "october-freeboards")]
    public void FirstWinchDraft_Finding_FailsAndIsNew(string checkId, string subjectId)
    {
        PairedFinding finding = Find(Altered("sampling-winch"), checkId, subjectId);
        Assert.Equal((Change.NewTrouble, Verdict.Fails), (finding.Change, finding.After!.Worst.Verdict));
    }

    [Fact]
    public void FirstWinchDraft_FuseTooFarFromTheBank_TellsTheLength() =>
        Assert.Contains("2.2 M from House bank", Find(Altered("sampling-winch"), "conductor-protection", "winch-tail.plus").After!.Worst.Headline.ToString(), StringComparison.Ordinal);

    [Fact]
    public void FirstWinchDraft_FeedThroughTheHotEngineSpace_IsToldInTheConditionThatAllowsNothing()
    {
        Finding worst = Find(Altered("sampling-winch"), "conductor-ampacity", "winch-feed").After!.Worst;

        Assert.Equal(("lifting", null), (worst.ConditionId, worst.UseFraction));
        Assert.Contains("as hot as its insulation may get", worst.Headline.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void SecondWinchDraft_AddsNoTrouble()
    {
        ReviewResult review = Altered("sampling-winch-second");
        Assert.Empty(review.Clashes);
        Assert.DoesNotContain(review.Findings, finding => finding.Change is Change.NewTrouble or Change.Worse);
        Assert.All(
            review.Findings.Where(finding => finding.Change == Change.Unknown),
            finding => Assert.Equal(Verdict.Unknown, finding.Before?.Worst.Verdict));
    }

    [Theory]
    [InlineData("start-opens-device", "winch-fuse")]
    [InlineData("voltage-while-starting", "winch")]
    [InlineData("conductor-ampacity", "winch-feed")]
    [InlineData("conductor-protection", "winch-feed.plus")]
    [InlineData("breaking-capacity", "winch-fuse")]
    [InlineData("list", "particulars")]
    [InlineData("through-hull-shuts", "engine-exhaust")]
    [InlineData("drift-since-test", "october-freeboards")]
    public void SecondWinchDraft_WhatFailedInTheFirst_Holds(string checkId, string subjectId) =>
        Assert.Equal(Verdict.Holds, Find(Altered("sampling-winch-second"), checkId, subjectId).After!.Worst.Verdict);

    private static ReviewResult AsBuilt() => Engine.Review(Boat, TestContext.Current.CancellationToken);

    private static ReviewResult Altered(string id) => Engine.Review(Boat, Boat.Find<Alteration>(id)!, TestContext.Current.CancellationToken);

    private static PairedFinding Find(ReviewResult review, string checkId, string subjectId) =>
        Assert.Single(review.Findings, finding => finding.CheckId == checkId && finding.SubjectId == subjectId);
}
