using System.Security.Cryptography;
using Microsoft.Data.Sqlite;
using Orlop.Boat;
using Orlop.Store.Tables;

namespace Orlop.Store.Tests;

/// <summary>Bytes changed on the disk: refused or named, never a wrong boat, and a refused file stays as it is.</summary>
public sealed class DamagedFileTests : TemporaryFolder
{
    private static readonly byte[] Photograph = [0xFF, 0xD8, 0xFF, .. Enumerable.Repeat((byte)7, 9000)];
    private static readonly string PhotographName = Convert.ToHexStringLower(SHA256.HashData(Photograph));

    [Theory]
    [InlineData(0x01)]
    [InlineData(0x80)]
    [InlineData(0xFF)]
    public void Open_AnyByteFlipped_IsRefusedOrNamedOrHarmless(int mask)
    {
        byte[] good = Make();
        Dictionary<long, BoatModel> boats = Read();
        int refused = 0, named = 0;
        foreach (int position in Positions(good.Length, seed: mask))
        {
            byte[] bytes = [.. good];
            bytes[position] ^= (byte)mask;
            string path = At("damaged.orlop");
            File.WriteAllBytes(path, bytes);
            try
            {
                named += LookOver(path, boats) ? 1 : 0;
            }
            catch (StoreException failure) when (failure.Path.Length > 0)
            {
                refused++;
                Assert.Contains("damaged.orlop", failure.Message, StringComparison.Ordinal);
                AssertUntouched(path, bytes);
            }

            File.Delete(path);
        }

        Assert.True(refused > 50 && named > 50, $"{refused} refused, {named} named: the flips must reach both.");
    }

    [Fact]
    public void Open_Truncated_IsRefusedAndUntouched()
    {
        byte[] good = Make();
        foreach (int length in (int[])[0, 1, 16, 99, 100, 511, 512, 4095, 4096, 4097, good.Length / 2, good.Length - 4097, good.Length - 4096])
        {
            string path = At("short.orlop");
            File.WriteAllBytes(path, good[..length]);

            StoreException failure = Assert.Throws<StoreException>(() => BoatStore.Open(path));

            Assert.Contains(failure.Failure, (StoreFailure[])[StoreFailure.Damaged, StoreFailure.NotABoat]);
            AssertUntouched(path, good[..length]);
        }
    }

    [Fact]
    public void Open_LastByteMissing_IsNamed()
    {
        byte[] good = Make();
        Dictionary<long, BoatModel> boats = Read();
        File.WriteAllBytes(At("short.orlop"), good[..^1]);

        Assert.True(LookOver(At("short.orlop"), boats), "the last byte is one of the photograph's");
    }

    [Fact]
    public void Open_HeadRevisionDamaged_NamesItAndTheNewestReadable()
    {
        BoatModel before;
        using (BoatStore store = BoatStore.Create(BoatPath, Boats.Small))
        {
            before = store.Keep(Boats.AddChest("a"), "add a").Boat;
            store.Keep(Boats.AddChest("b"), "the last one");
        }

        byte[] bytes = File.ReadAllBytes(BoatPath);
        bytes[bytes.AsSpan().IndexOf("the last one"u8)] = (byte)'T';
        File.WriteAllBytes(BoatPath, bytes);

        StoreException failure = Assert.Throws<StoreException>(() => BoatStore.Open(BoatPath));

        Assert.Equal(StoreFailure.Damaged, failure.Failure);
        Assert.Contains("revision 3 is not as it was written", failure.Message, StringComparison.Ordinal);
        Assert.Contains("Revision 2, 'add a', is the newest that can be read", failure.Message, StringComparison.Ordinal);
        AssertUntouched(BoatPath, bytes);
        Assert.Equal(before, BoatStore.Rescue(BoatPath)!.Boat);
        AssertUntouched(BoatPath, bytes);
    }

    [Fact]
    public void Undo_ParentDamaged_NamesItAndStaysAtTheHead()
    {
        using (BoatStore store = BoatStore.Create(BoatPath, Boats.Small))
        {
            store.Keep(Boats.AddChest("a"), "the middle one");
            store.Keep(Boats.AddChest("b"));
        }

        byte[] bytes = File.ReadAllBytes(BoatPath);
        bytes[bytes.AsSpan().IndexOf("the middle one"u8)] = (byte)'T';
        File.WriteAllBytes(BoatPath, bytes);
        using BoatStore damaged = BoatStore.Open(BoatPath);

        StoreException failure = Assert.Throws<StoreException>(() => damaged.Undo(3));

        Assert.Contains("revision 2 is not as it was written", failure.Message, StringComparison.Ordinal);
        Assert.Equal(3, damaged.Head.Number);
        Assert.Equal([false, true, false], damaged.History.Page().Select(entry => entry.IsDamaged));
        Assert.Equal("Revision 2 is not as it was written.", Assert.Single(damaged.Verify()));
        Assert.Equal(StepOutcome.Moved, damaged.GoTo(3, 1).Outcome);
    }

    /// <summary>
    /// A log that was left by a killed process and then damaged: SQLite takes its commits up to the damage (sqlite.org/walformat.html, 4.3),
    /// so the head may be an earlier revision, but never anything that was not written.
    /// </summary>
    [Fact]
    public void Open_LeftLogDamaged_GivesARevisionThatWasWritten()
    {
        BoatStore.Create(BoatPath, Boats.Small).Dispose();
        Dictionary<long, BoatModel> boats = [];
        using (BoatStore store = BoatStore.Open(BoatPath))
        using (SqliteConnection reader = new($"Data Source={BoatPath};Pooling=False"))
        {
            // A reader that stays on the first state keeps the later commits in the log.
            reader.Open();
            using SqliteTransaction held = reader.BeginTransaction(deferred: true);
            Assert.Equal(1L, reader.Value("SELECT max(number) FROM revision"));
            boats[1] = store.Head.Boat;
            for (long number = 2; number <= 6; number++)
            {
                boats[number] = store.Keep(Boats.AddChest($"chest-{number}")).Boat;
            }

            File.Copy(BoatPath, At("left.orlop"));
            File.Copy(BoatPath + "-wal", At("left.orlop-wal"));
        }

        byte[] file = File.ReadAllBytes(At("left.orlop")), log = File.ReadAllBytes(At("left.orlop-wal"));
        Assert.Equal(6, HeadWith(file, log, boats));
        Random random = new(7);
        List<long> heads = [];
        for (int flip = 0; flip < 60; flip++)
        {
            byte[] bytes = [.. log];
            bytes[random.Next(bytes.Length)] ^= 0x10;
            heads.Add(HeadWith(file, bytes, boats));
        }

        Assert.Contains(heads, head => head < 6);
    }

    private long HeadWith(byte[] file, byte[] log, Dictionary<long, BoatModel> boats)
    {
        File.WriteAllBytes(At("left.orlop"), file);
        File.WriteAllBytes(At("left.orlop-wal"), log);
        File.Delete(At("left.orlop-shm"));
        using BoatStore store = BoatStore.Open(At("left.orlop"));
        Assert.Equal(boats[store.Head.Number], store.Head.Boat);
        Assert.Empty(store.Verify());
        return store.Head.Number;
    }

    private byte[] Make()
    {
        using (BoatStore store = BoatStore.Create(BoatPath, Boats.Small))
        {
            for (int i = 0; i < 12; i++)
            {
                store.Keep(Boats.AddChest($"chest-{i}", i), $"edit {i}");
            }

            store.GoTo(13, 7);
            store.Keep(Boats.AddChest("another"));
            store.Undo(14);
            store.Attachments.Add(Photograph, "image/jpeg");
        }

        return File.ReadAllBytes(BoatPath);
    }

    private Dictionary<long, BoatModel> Read()
    {
        using BoatStore store = BoatStore.Open(BoatPath);
        return store.History.Page().ToDictionary(entry => entry.Number, entry => store.History.Read(entry.Number).Boat);
    }

    /// <summary>Every byte of the header, the start of every page, and many others.</summary>
    private static IEnumerable<int> Positions(int length, int seed)
    {
        Random random = new(seed);
        return Enumerable.Range(0, 100)
            .Concat(Enumerable.Range(0, length / 4096).SelectMany(page => Enumerable.Range(page * 4096, 12)))
            .Concat(Enumerable.Range(0, 150).Select(_ => random.Next(length)))
            .Distinct();
    }

    /// <summary>Opens the file and compares all it holds. True when damage was named; fails when anything reads as what was never written.</summary>
    private static bool LookOver(string path, Dictionary<long, BoatModel> boats)
    {
        using BoatStore store = BoatStore.Open(path);
        Assert.Equal(7, store.Head.Number);
        Assert.Equal(boats[7], store.Head.Boat);
        bool isNamed = store.Verify().Count > 0;
        foreach ((long number, BoatModel boat) in boats)
        {
            try
            {
                Assert.Equal(boat, store.History.Read(number).Boat);
            }
            catch (StoreException)
            {
                Assert.True(isNamed);
            }
        }

        try
        {
            Assert.Equal(PhotographName, Assert.Single(store.Attachments.List()).Sha256);
            byte[]? bytes = store.Attachments.Read(PhotographName);
            Assert.True(bytes is null ? isNamed : bytes.AsSpan().SequenceEqual(Photograph));
        }
        catch (StoreException)
        {
            Assert.True(isNamed);
        }

        return isNamed;
    }

    private static void AssertUntouched(string path, byte[] bytes)
    {
        Assert.Equal(bytes, File.ReadAllBytes(path));
        Assert.False(Path.Exists(path + "-wal"), "a log was left beside a refused file");
        Assert.False(Path.Exists(path + "-shm"), "an index was left beside a refused file");
    }
}
