using Xunit;

namespace Orlop.Review.Tests;

/// <summary>A result is computed once, however many ask for it, and what failed is not remembered.</summary>
public sealed class MemoTests
{
    private sealed record Answer(int Number);

    [Fact]
    public async Task AskedByManyAtOnce_IsComputedOnce()
    {
        Memo memo = new();
        using ManualResetEventSlim isAsked = new();
        Task<Answer>[] asking = [.. Enumerable.Range(0, 8).Select(_ => Task.Run(
            () => memo.Get("key", () =>
            {
                isAsked.Wait(TestContext.Current.CancellationToken);
                return new Answer(1);
            }),
            TestContext.Current.CancellationToken))];
        isAsked.Set();
        Answer[] answers = await Task.WhenAll(asking);
        Assert.All(answers, answer => Assert.Same(answers[0], answer));
        Assert.Equal(1, memo.ComputedCountOf<Answer>());
    }

    [Fact]
    public void ComputationThatThrows_IsAskedAgain()
    {
        Memo memo = new();
        Assert.Throws<OperationCanceledException>(() => memo.Get<Answer>("key", () => throw new OperationCanceledException()));
        Assert.Equal(2, memo.Get("key", () => new Answer(2)).Number);
    }

    [Fact]
    public async Task WaitingForAComputationThatIsCancelled_ComputesForItself()
    {
        Memo memo = new();
        using ManualResetEventSlim isStarted = new(), isCancelled = new();
        Task<Answer> first = Task.Run(
            () => memo.Get<Answer>("key", () =>
            {
                isStarted.Set();
                isCancelled.Wait(TestContext.Current.CancellationToken);
                throw new OperationCanceledException();
            }),
            TestContext.Current.CancellationToken);
        isStarted.Wait(TestContext.Current.CancellationToken);
        Task<Answer> second = Task.Run(() => memo.Get("key", () => new Answer(2)), TestContext.Current.CancellationToken);
        await Task.Delay(50, TestContext.Current.CancellationToken);
        isCancelled.Set();
        Assert.Equal(2, (await second).Number);
        await Assert.ThrowsAsync<OperationCanceledException>(() => first);
    }

    [Fact]
    public void Full_ForgetsOnlyWhatWasNotAskedSince()
    {
        Memo memo = new(capacity: 4);
        string[] kept = ["one", "two", "three"];
        for (int round = 0; round < 10; round++)
        {
            Assert.All(kept, key => memo.Get(key, () => new Answer(0)));
            memo.Get(round, () => new Answer(round));
        }

        Assert.Equal(kept.Length + 10, memo.ComputedCountOf<Answer>());
        memo.Get(0, () => new Answer(0));
        Assert.Equal(kept.Length + 11, memo.ComputedCountOf<Answer>());
    }

    // Whoever finds it full at the same moment as another must not forget what the other has just kept.
    [Fact]
    public void FullForManyAtOnce_ForgetsOnlyWhatWasNotAskedSince()
    {
        const int KeptCount = 20;
        Memo memo = new(capacity: 100);
        int[] kept = [.. Enumerable.Range(0, KeptCount)];
        for (int round = 0; round < 400; round++)
        {
            Assert.All(kept, key => memo.Get(key, () => new Answer(key)));
            Parallel.For(0, 2 * KeptCount, new ParallelOptions { CancellationToken = TestContext.Current.CancellationToken }, k => memo.Get((round, k), () => new Answer(k)));
            Assert.All(kept, key => Assert.True(memo.Knows<Answer>(key)));
        }
    }

    [Fact]
    public void MoreIsAskedForEachTimeThanItHolds_InTheEndItComputesNothing()
    {
        Memo memo = new(capacity: 25);
        long computed = -1;
        for (int round = 0; round < 30 && computed != memo.ComputedCount; round++)
        {
            computed = memo.ComputedCount;
            for (int key = 0; key < 35; key++)
            {
                memo.Get(key, () => new Answer(key));
            }
        }

        Assert.Equal(memo.ComputedCount, computed);
    }
}
