using System.Collections.Concurrent;
using System.Globalization;
using Orlop.Boat;
using Orlop.Review;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Xunit;

namespace Orlop.App.Tests.Workings;

/// <summary>
/// The whole electrical review on boats wired at random: it answers, prints no number that is none, and each of its numbers is had again from its printed working alone. Over a hundred each time;
/// ORLOP_RANDOM_NETWORKS=200000 runs that many, from ORLOP_RANDOM_FIRST on (0 when left out).
/// </summary>
public sealed class RandomBoatTests
{
    private const int UsualCount = 120;

    // Boats that once found something: a device that no way leads to from any source, whose fault was 0 V over no conductance and held; results just below a power of ten.
    private static readonly int[] OnceWrong = [29915, 60786, 85211];

    // More than this many would say the same.
    private const int MostTold = 20;

    private static int Number(string variable, int usual) => int.TryParse(Environment.GetEnvironmentVariable(variable), NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : usual;

    [Fact]
    public void EveryFinding_IsHadAgainFromItsPrintedWorking()
    {
        int first = Number("ORLOP_RANDOM_FIRST", 0), count = Number("ORLOP_RANDOM_NETWORKS", UsualCount);
        ConcurrentQueue<string> wrong = [];
        ConcurrentDictionary<string, int> used = new(StringComparer.Ordinal);
        // What one boat's networks leave in the engine's memory helps no other: each is reviewed from nothing.
        Parallel.ForEach(Enumerable.Range(first, count).Union(OnceWrong), new ParallelOptions { CancellationToken = TestContext.Current.CancellationToken }, seed =>
        {
            foreach (Finding finding in Review(RandomBoat.Of(seed), seed, wrong))
            {
                string at = $"boat {seed}: {finding.CheckId} {finding.SubjectId} {finding.ConditionId} {finding.Verdict}";
                foreach (string fault in PrintedFinding.Faults(finding))
                {
                    wrong.Enqueue($"{at}: {fault}");
                }

                used.AddOrUpdate($"{finding.CheckId} {finding.Verdict}", 1, (_, before) => before + 1);
            }
        });

        Assert.True(wrong.IsEmpty, $"{wrong.Count} wrong:\n{string.Join('\n', wrong.Order(StringComparer.Ordinal).DistinctBy(Sort).Take(MostTold))}");
        foreach (string check in new ElectricsDiscipline().Checks.Select(check => check.Id))
        {
            TestContext.Current.SendDiagnosticMessage($"{check}: {string.Join(", ", Enum.GetValues<Verdict>().Select(verdict => $"{verdict} {used.GetValueOrDefault($"{check} {verdict}")}"))}");
        }

        // The boats reach what is to be proved: most checks hold somewhere and fail somewhere.
        Assert.InRange(used.Keys.Count(key => key.EndsWith(" Fails", StringComparison.Ordinal)), 15, int.MaxValue);
        Assert.InRange(used.Keys.Count(key => key.EndsWith(" Holds", StringComparison.Ordinal)), 15, int.MaxValue);
    }

    // One of each check and each kind of fault tells enough.
    private static string Sort(string line) => string.Join(' ', line.Split(' ')[2], line.Split(": ")[^2].Split(' ')[^1]);

    private static Finding[] Review(BoatModel boat, int seed, ConcurrentQueue<string> wrong)
    {
        try
        {
            ReviewEngine engine = new([new ElectricsDiscipline()]);
            return [.. engine.Review(boat, TestContext.Current.CancellationToken).Findings.SelectMany(pair => pair.After!.All)];
        }
        catch (Exception fault) when (fault is not OperationCanceledException)
        {
            wrong.Enqueue($"boat {seed}: {fault.GetType().Name} in the review: {fault}");
            return [];
        }
    }
}
