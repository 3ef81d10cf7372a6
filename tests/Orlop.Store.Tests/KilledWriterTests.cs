namespace Orlop.Store.Tests;

/// <summary>A process that is killed while it commits loses nothing that it had acknowledged.</summary>
public sealed class KilledWriterTests : TemporaryFolder
{
    private const int KillCount = 25;

    [Fact]
    public void Commit_ProcessKilledAtRandomMoments_EveryAcknowledgedRevisionIsThere()
    {
        BoatStore.Create(BoatPath, Boats.Small).Dispose();
        Random moments = new(20260503);
        List<(long Number, double MassKg)> acknowledged = [];
        for (int kill = 0; kill < KillCount; kill++)
        {
            using WriterProcess writer = new(BoatPath, int.MaxValue);
            writer.WaitForFirst();
            Thread.Sleep(moments.Next(60));
            acknowledged.AddRange(writer.Kill());

            using BoatStore store = BoatStore.Open(BoatPath);
            Assert.All(acknowledged, line => Assert.Equal(line.MassKg, store.History.Read(line.Number).Boat.MassKg("chest")));

            // A commit may have reached the disk just before it could be acknowledged; none may be missing in between.
            Assert.InRange(store.Head.Number - acknowledged[^1].Number, 0, 1);
            Assert.Equal(38 + store.Head.Number + 1, store.Head.Boat.MassKg("chest"));
            Assert.Empty(store.Verify());
        }
    }
}
