using System.Diagnostics;
using Orlop.Store.Files;
using Orlop.Store.Tables;

namespace Orlop.Store.Tests;

public sealed class FullDiskTests : TemporaryFolder
{
    private bool _isMounted;

    [Fact]
    public void Commit_NoRoomOnTheDisk_FailsClearlyAndWorksAgainWhenThereIs()
    {
        string disk = SmallDisk();
        string path = Path.Combine(disk, "boat.orlop");
        using BoatStore store = BoatStore.Create(path, Boats.Small);
        Revision head = store.Keep(Boats.AddChest("a"));
        string ballast = Path.Combine(disk, "ballast");
        Fill(ballast);

        StoreException failure = Assert.Throws<StoreException>(() => FillWithCommits(store, ref head));

        Assert.Equal(StoreFailure.DiskFull, failure.Failure);
        Assert.Contains("no room left", failure.Message, StringComparison.Ordinal);
        Assert.Equal(head, store.Head);
        Assert.Equal(head, store.Refresh());

        File.Delete(ballast);
        Revision next = store.Keep(Boats.AddChest("b"));
        store.Dispose();
        using BoatStore again = BoatStore.Open(path);
        Assert.Equal(next, again.Head);
        Assert.Empty(again.Verify());
    }

    [Fact]
    public void CreateAndBackup_NoRoomOnTheDisk_FailClearlyAndLeaveNothing()
    {
        string disk = SmallDisk();
        Fill(Path.Combine(disk, "ballast"));
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);

        StoreException create = Assert.Throws<StoreException>(() => BoatStore.Create(Path.Combine(disk, "boat.orlop"), Boats.Small));
        StoreException backup = Assert.Throws<StoreException>(() => store.BackupTo(Path.Combine(disk, "backup.orlop")));
        StoreException export = Assert.Throws<StoreException>(() => store.ExportJson(Path.Combine(disk, "boat.json")));

        Assert.Equal([StoreFailure.DiskFull, StoreFailure.DiskFull], [create.Failure, backup.Failure]);
        Assert.Contains(export.Failure, (StoreFailure[])[StoreFailure.DiskFull, StoreFailure.DiskFault]);
        Assert.Contains("backup.orlop", backup.Message, StringComparison.Ordinal);
        Assert.Equal(["ballast"], Directory.GetFiles(disk).Select(Path.GetFileName));
    }

    [Fact]
    public void Open_DiskWriteProtected_IsRefused()
    {
        string disk = SmallDisk();
        string path = Path.Combine(disk, "boat.orlop");
        BoatStore.Create(path, Boats.Small).Dispose();
        Run("mount", "-o", "remount,ro", disk);

        Assert.Equal(StoreFailure.ReadOnly, Assert.Throws<StoreException>(() => BoatStore.Open(path)).Failure);
    }

    [Fact]
    public void Write_PageLimitReached_KeepsNothingOfIt()
    {
        BoatStore.Create(BoatPath, Boats.Small).Dispose();
        using (BoatFile file = BoatFileOpening.Open(BoatPath))
        {
            file.Use(db => db.Value("PRAGMA max_page_count = 12"));

            StoreException failure = Assert.Throws<StoreException>(() => file.Write(db =>
            {
                RevisionTable.Add(db, new StoredRevision(2, 1, 1, "", "", new byte[100_000]));
                return 0;
            }));

            Assert.Equal(StoreFailure.DiskFull, failure.Failure);
            Assert.Equal(2, file.Read(RevisionTable.NextNumber));
            file.Use(db => db.Value("PRAGMA max_page_count = 1000000"));
        }

        using BoatStore store = BoatStore.Open(BoatPath);
        store.Keep(Boats.AddChest("a"));
        Assert.Empty(store.Verify());
    }

    public override void Dispose()
    {
        if (_isMounted)
        {
            Run("umount", At("disk"));
        }

        base.Dispose();
    }

    /// <summary>A disk of 256 kB; only root on Linux can make one.</summary>
    private string SmallDisk()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && Environment.UserName == "root", "Only root on Linux can make a small disk.");
        Directory.CreateDirectory(At("disk"));
        Run("mount", "-t", "tmpfs", "-o", "size=256k", "tmpfs", At("disk"));
        _isMounted = true;
        return At("disk");
    }

    private static void FillWithCommits(BoatStore store, ref Revision head)
    {
        for (int i = 0; i < 200; i++)
        {
            head = store.Keep(Boats.AddChest($"chest-{i}"));
        }
    }

    private static void Fill(string path)
    {
        using FileStream stream = new(path, FileMode.CreateNew, FileAccess.Write, FileShare.None, bufferSize: 0);
        try
        {
            for (int i = 0; i < 1000; i++)
            {
                stream.Write(new byte[1024]);
            }
        }
        catch (IOException)
        {
            return;
        }

        Assert.Fail("The small disk took a megabyte.");
    }

    private static void Run(string program, params string[] arguments)
    {
        using Process process = Process.Start(program, arguments);
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
    }
}
