using Microsoft.Data.Sqlite;
using Orlop.Store.Files;
using Orlop.Store.Tables;

namespace Orlop.Store.Tests;

public sealed class BoatFileTests : TemporaryFolder
{
    /// <summary>What durability and integrity rest on (sqlite.org/pragma.html): synchronous 2 is FULL.</summary>
    [Theory]
    [InlineData("journal_mode", "wal")]
    [InlineData("synchronous", 2L)]
    [InlineData("foreign_keys", 1L)]
    [InlineData("wal_autocheckpoint", 1L)]
    [InlineData("busy_timeout", 10_000L)]
    [InlineData("trusted_schema", 0L)]
    [InlineData("application_id", 0x4F524C50L)]
    [InlineData("user_version", 1L)]
    public void Open_Pragma_IsSet(string pragma, object expected)
    {
        BoatStore.Create(BoatPath, Boats.Small).Dispose();
        using BoatFile file = BoatFileOpening.Open(BoatPath);

        Assert.Equal(expected, file.Use(db => db.Value($"PRAGMA {pragma}")));
    }

    [Fact]
    public void Open_Tables_AreAllStrict()
    {
        BoatStore.Create(BoatPath, Boats.Small).Dispose();
        using BoatFile file = BoatFileOpening.Open(BoatPath);

        Assert.Equal(4L, file.Use(db => db.Value("SELECT count(*) FROM pragma_table_list WHERE schema = 'main' AND name NOT LIKE 'sqlite%' AND strict")));
        Assert.Equal(4L, file.Use(db => db.Value("SELECT count(*) FROM pragma_table_list WHERE schema = 'main' AND name NOT LIKE 'sqlite%'")));
    }

    [Fact]
    public void Write_OtherHoldsTheFile_SaysLocked()
    {
        BoatStore.Create(BoatPath, Boats.Small).Dispose();
        using BoatFile one = BoatFileOpening.Open(BoatPath), other = BoatFileOpening.Open(BoatPath);
        other.Use(db =>
        {
            db.DefaultTimeout = 1;
            return db.Value("PRAGMA busy_timeout = 50");
        });

        StoreException failure = one.Write(_ => Assert.Throws<StoreException>(() => other.Write(db => HeadTable.Read(db))));

        Assert.Equal(StoreFailure.Locked, failure.Failure);
        Assert.Equal(1, other.Write(HeadTable.Read));
    }

    [Fact]
    public void Commit_FileCopiedWhileOpen_CopyAloneHoldsIt()
    {
        using BoatStore store = BoatStore.Create(BoatPath, Boats.Small);
        Revision head = store.Keep(Boats.AddChest("a"));

        // A copy by another program, without the log beside it; this process may not open the file past SQLite.
        using System.Diagnostics.Process copy = OperatingSystem.IsWindows()
            ? System.Diagnostics.Process.Start("cmd", ["/c", "copy", BoatPath, At("copy.orlop")])
            : System.Diagnostics.Process.Start("cp", [BoatPath, At("copy.orlop")]);
        copy.WaitForExit();

        using BoatStore copied = BoatStore.Open(At("copy.orlop"));
        Assert.Equal(head, copied.Head);
    }

    [Fact]
    public void PackedText_RoundTrip_IsTheSame()
    {
        string text = string.Concat(Enumerable.Repeat("{ \"kind\": \"gear\", \"name\": \"Kiste für Öl\" }\n", 200));
        byte[] packed = PackedText.Pack(text);

        Assert.Equal(text, PackedText.Unpack(packed));
        Assert.True(packed.Length < text.Length / 10);
    }

    [Fact]
    public void SqliteFailures_EveryPrimaryCode_HasAMessageThatNamesTheFile()
    {
        for (int code = 1; code <= 28; code++)
        {
            StoreException failure = SqliteFailures.For(BoatPath, new SqliteException("told by SQLite", code));

            Assert.Contains(BoatPath, failure.Message, StringComparison.Ordinal);
        }
    }
}
