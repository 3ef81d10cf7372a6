using Orlop.Boat;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.Review.Tests;

/// <summary>Whatever is done to a boat, the review answers, and no answer rests on a number that is none.</summary>
public sealed class RandomEditTests
{
    [Theory]
    [InlineData(1, 14, 8)]
    public void DemoBoat_RandomEdits_EveryFindingIsWhole(int seed, int boatCount, int editCount) =>
        EveryFindingIsWhole(ExampleBoats.Read("sandgrouse"), seed, boatCount, editCount);

    [Theory]
    [InlineData(2, 300, 1)]
    [InlineData(3, 200, 4)]
    public void SmallBoat_RandomEdits_EveryFindingIsWhole(int seed, int boatCount, int editCount) =>
        EveryFindingIsWhole(SmallBoat.OneLamp(), seed, boatCount, editCount);

    private static void EveryFindingIsWhole(BoatModel asBuilt, int seed, int boatCount, int editCount)
    {
        ReviewEngine engine = new([new ElectricsDiscipline()]);
        Random random = new(seed);
        for (int k = 0; k < boatCount; k++)
        {
            BoatModel boat = Enumerable.Range(0, editCount).Aggregate(asBuilt, (edited, _) => RandomEdit.Of(edited, random));
            ReviewResult review = engine.Review(boat, TestContext.Current.CancellationToken);
            Assert.True(review.Findings.Length > 0 || boat.Things.Count < asBuilt.Things.Count);
            foreach (Finding finding in review.Findings.SelectMany(pair => pair.After!.All))
            {
                IsWhole(finding, k);
            }
        }
    }

    private static void IsWhole(Finding finding, int boat)
    {
        string at = $"boat {boat}: {finding.CheckId} {finding.SubjectId} {finding.ConditionId} {finding.Verdict} {finding.UseFraction}";
        Assert.True(finding.UseFraction is not { } use || (double.IsFinite(use) && use >= 0), at);
        Assert.False(string.IsNullOrWhiteSpace(finding.Headline.ToString()), at);
        Assert.True(finding.Working.Length > 0, at + " has no working");
        Assert.All(finding.Working, line => Assert.False(line.Value is { } amount && !double.IsFinite(amount.Value), $"{at}: {line}"));
        Assert.All(finding.Headline.Parts, part => Assert.False(part.Amount is { } amount && !double.IsFinite(amount.Value), $"{at}: {finding.Headline}"));
    }
}
