using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using Xunit;

namespace Orlop.Review.Tests;

/// <summary>A review told in stages: new findings at once, the others as found before and marked, and at the end the same as in one go.</summary>
public sealed class ReviewStagesTests
{
    private static readonly BoatModel Boat = new() { Things = [new Gear { Id = "chest", MassKg = 40 }, new Gear { Id = "anchor", MassKg = 15 }] };
    private static readonly BoatModel Edited = Boat.Change<Gear>("chest", chest => chest with { MassKg = 41 });

    private readonly List<ReviewResult> _stages = [];
    private readonly ReviewEngine _engine = new([new Weigher("first"), new Weigher("second"), new Weigher("third")]);

    [Fact]
    public void FirstReview_TellsWhatIsFoundSoFarAndWhatWaits()
    {
        ReviewResult whole = Review(Boat, null);

        Assert.Equal([2, 4], _stages.Select(stage => stage.Findings.Length));
        Assert.Equal(["second-mass", "third-mass"], _stages[0].Waiting.Order());
        Assert.Equal(["third-mass"], _stages[1].Waiting);
        Assert.Equal(6, whole.Findings.Length);
        Assert.Empty(whole.Waiting);
    }

    [Fact]
    public void AfterAnEdit_WhatWaitsStandsAsFoundBefore()
    {
        ReviewResult earlier = Review(Boat, null);
        _stages.Clear();
        Review(Edited, earlier);

        Assert.Equal(41, MassIn(_stages[0], "first-mass"));
        Assert.Equal(40, MassIn(_stages[0], "second-mass"));
        Assert.Equal(41, MassIn(_stages[1], "second-mass"));
        Assert.Equal(40, MassIn(_stages[1], "third-mass"));
    }

    [Fact]
    public void WhatIsRemembered_IsNotWaitedFor()
    {
        ReviewResult earlier = Review(Boat, Review(Edited, null));
        _stages.Clear();
        Review(Edited, earlier);

        Assert.Empty(_stages);
    }

    [Fact]
    public void ThingThatIsGone_IsNotSpokenOfWhileTheRestWaits()
    {
        ReviewResult earlier = Review(Boat, null);
        _stages.Clear();
        Review(Boat.WithThings(Boat.Things.Where(thing => thing.Id != "chest")), earlier);

        Assert.DoesNotContain(_stages[0].Findings, pair => pair.SubjectId == "chest");
        Assert.Contains(_stages[0].Findings, pair => pair is { SubjectId: "anchor", CheckId: "third-mass" });
    }

    [Fact]
    public void FoundOfAnotherAlteration_IsNotSaidOfThisOne()
    {
        ReviewResult asBuilt = Review(Boat, null);
        _stages.Clear();
        Gear chest = Boat.Find<Gear>("chest")!;
        Alteration draft = new() { Id = "lighter", Edits = [new Edit { Id = "chest", Was = chest, Becomes = chest with { MassKg = 30 } }] };
        BoatModel drafted = Boat.WithThings([.. Boat.Things, draft]);
        _engine.Review(drafted, draft, new ReviewStages(asBuilt, _stages.Add), TestContext.Current.CancellationToken);

        Assert.All(_stages[0].Findings, pair => Assert.Equal("first-mass", pair.CheckId));
    }

    [Fact]
    public void EndOfTheStages_IsTheReviewInOneGo()
    {
        ReviewResult staged = Review(Edited, Review(Boat, null)), atOnce = new ReviewEngine([new Weigher("first"), new Weigher("second"), new Weigher("third")]).Review(Edited, TestContext.Current.CancellationToken);

        Assert.Equal(atOnce.Findings.Select(pair => (pair.CheckId, pair.SubjectId, pair.Shown.UseFraction)), staged.Findings.Select(pair => (pair.CheckId, pair.SubjectId, pair.Shown.UseFraction)));
    }

    private ReviewResult Review(BoatModel boat, ReviewResult? earlier) =>
        _engine.Review(boat, null, new ReviewStages(earlier, _stages.Add), TestContext.Current.CancellationToken);

    private static double? MassIn(ReviewResult stage, string check) =>
        Assert.Single(stage.Findings, pair => pair.CheckId == check && pair.SubjectId == "chest").Shown.UseFraction * 100;

    // Finds the mass of every piece of gear, as a share of 100 kg.
    private sealed class Weigher(string id) : IDiscipline
    {
        public string Id => id;

        public ImmutableArray<CheckDescription> Checks => [new CheckDescription($"{id}-mass", "Mass", "A mass beside 100 kg.", [])];

        public bool Reads(Thing thing) => thing is Gear;

        public IEnumerable<Finding> Review(BoatModel boat, Practice? practice, Memo memo, CancellationToken token) =>
            boat.All<Gear>().Select(gear => new Finding
            {
                CheckId = Checks[0].Id,
                SubjectId = gear.Id,
                Verdict = Verdict.Holds,
                UseFraction = gear.MassKg!.Value / 100,
                Headline = Sentence.Of($"Weighed."),
            });
    }
}
