using Microsoft.Data.Sqlite;

namespace Orlop.Store.Tests;

/// <summary>Files that are no boat this program may write: refused with the reason, and left byte for byte.</summary>
public sealed class RefusedFileTests : TemporaryFolder
{
    [Fact]
    public void Open_NotThere_SaysSoAndMakesNothing()
    {
        Assert.Equal(StoreFailure.NotThere, Refusal(BoatPath).Failure);
        Assert.Empty(Directory.GetFiles(Folder));
        Assert.Equal(StoreFailure.NotABoat, Refusal(Folder).Failure);
    }

    [Theory]
    [InlineData("")]
    [InlineData("a letter to the yard")]
    [InlineData("SQLite format 3\0")]
    public void Open_NotADatabase_IsRefusedAndUntouched(string text)
    {
        File.WriteAllText(BoatPath, text);

        Assert.Equal(StoreFailure.NotABoat, RefusalOfUntouched().Failure);
    }

    [Theory]
    [InlineData("DELETE")]
    [InlineData("WAL")]
    public void Open_OtherProgramsDatabase_IsRefusedAndUntouched(string journal)
    {
        Sql(BoatPath, $"PRAGMA journal_mode = {journal}; CREATE TABLE revision (number INTEGER PRIMARY KEY); PRAGMA user_version = 1; PRAGMA application_id = 77;");

        Assert.Equal(StoreFailure.NotABoat, RefusalOfUntouched().Failure);
    }

    [Fact]
    public void Open_OurMarkButOtherTables_IsRefusedAndUntouched()
    {
        BoatStore.Create(BoatPath, Boats.Small).Dispose();
        Sql(BoatPath, "CREATE TABLE guest (id INTEGER PRIMARY KEY);");

        Assert.Equal(StoreFailure.Damaged, RefusalOfUntouched().Failure);
    }

    [Fact]
    public void Open_NewerLayout_IsRefusedAndUntouched()
    {
        BoatStore.Create(BoatPath, Boats.Small).Dispose();
        Sql(BoatPath, "PRAGMA user_version = 2;");

        StoreException failure = RefusalOfUntouched();

        Assert.Equal(StoreFailure.NewerVersion, failure.Failure);
        Assert.Contains("layout 2", failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Open_NewerLayoutStillInTheLog_IsRefusedAndFileAndLogUntouched()
    {
        BoatStore.Create(BoatPath, Boats.Small).Dispose();
        using (SqliteConnection newer = Connect(BoatPath))
        {
            Execute(newer, "PRAGMA wal_autocheckpoint = 0; PRAGMA user_version = 2;");
            File.Copy(BoatPath, At("copy.orlop"));
            File.Copy(BoatPath + "-wal", At("copy.orlop-wal"));
        }

        byte[] file = File.ReadAllBytes(At("copy.orlop")), log = File.ReadAllBytes(At("copy.orlop-wal"));
        Assert.NotEmpty(log);

        Assert.Equal(StoreFailure.NewerVersion, Refusal(At("copy.orlop")).Failure);

        Assert.Equal(file, File.ReadAllBytes(At("copy.orlop")));
        Assert.Equal(log, File.ReadAllBytes(At("copy.orlop-wal")));
    }

    [Fact]
    public void Open_WriteProtected_IsRefusedAndUntouched()
    {
        BoatStore.Create(BoatPath, Boats.Small).Dispose();
        File.SetAttributes(BoatPath, FileAttributes.ReadOnly);

        Assert.Equal(StoreFailure.ReadOnly, RefusalOfUntouched().Failure);

        File.SetAttributes(BoatPath, FileAttributes.Normal);
        BoatStore.Open(BoatPath).Dispose();
    }

    [Fact]
    public void Open_NameWithMarksOfAUri_Works()
    {
        string path = At("50% of a boat #2 ?.orlop");
        if (OperatingSystem.IsWindows())
        {
            path = At("50% of a boat #2.orlop");
        }

        BoatStore.Create(path, Boats.Small).Dispose();
        using BoatStore store = BoatStore.Open(path);

        Assert.Equal(path, store.Path);
    }

    private StoreException RefusalOfUntouched()
    {
        byte[] before = File.ReadAllBytes(BoatPath);
        StoreException failure = Refusal(BoatPath);
        Assert.Equal(before, File.ReadAllBytes(BoatPath));
        Assert.Equal([BoatPath], Directory.GetFiles(Folder));
        return failure;
    }

    private static StoreException Refusal(string path)
    {
        StoreException failure = Assert.Throws<StoreException>(() => BoatStore.Open(path));
        Assert.Contains(path, failure.Message, StringComparison.Ordinal);
        Assert.Equal(path, failure.Path);
        return failure;
    }

    private static void Sql(string path, string sql)
    {
        using SqliteConnection db = Connect(path);
        Execute(db, sql);
    }

    private static SqliteConnection Connect(string path)
    {
        SqliteConnection db = new(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ToString());
        db.Open();
        return db;
    }

    private static void Execute(SqliteConnection db, string sql)
    {
        using SqliteCommand command = db.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }
}
