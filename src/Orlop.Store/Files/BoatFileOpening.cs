using Microsoft.Data.Sqlite;
using Orlop.Store.Tables;
using SQLitePCL;

namespace Orlop.Store.Files;

/// <summary>
/// Makes and opens boats' files. A file that is refused is left byte for byte as it was. The file is never read past SQLite: closing a
/// handle of our own would drop the locks that other connections of this process hold on it (sqlite.org/howtocorrupt.html, 2.2).
/// </summary>
internal static class BoatFileOpening
{
    private const int NoCheckpointOnClose = 1006;
    private const int PatienceSeconds = 10;

    /// <summary>Makes a new file with what <paramref name="fill"/> writes. It appears under its name when it is whole.</summary>
    public static void Create(string path, Action<SqliteConnection> fill) => NewFile.Make(path, fresh =>
    {
        using SqliteConnection db = Connect(fresh, SqliteOpenMode.ReadWriteCreate);
        db.Execute("PRAGMA synchronous = FULL");
        using SqliteTransaction transaction = db.BeginTransaction();
        Schema.Lay(db);
        fill(db);
        transaction.Commit();
    });

    /// <summary>Opens a boat's file after looking it over.</summary>
    public static BoatFile Open(string path)
    {
        MustBeThere(path);
        try
        {
            CheckWhoseItIs(path);
            return File.GetAttributes(path).HasFlag(FileAttributes.ReadOnly) ? throw WriteProtected(path) : OpenChecked(path);
        }
        catch (SqliteException exception)
        {
            throw SqliteFailures.For(path, exception);
        }
    }

    /// <summary>Looks into a boat's file that need not be good, and leaves it as it is.</summary>
    public static T Examine<T>(string path, Func<SqliteConnection, T> look)
    {
        MustBeThere(path);
        try
        {
            CheckWhoseItIs(path);
            using SqliteConnection db = Connect(path, SqliteOpenMode.ReadWrite);
            SetNoCheckpointOnClose(db, HasLog(path));
            return look(db);
        }
        catch (SqliteException exception)
        {
            throw SqliteFailures.For(path, exception);
        }
    }

    private static void MustBeThere(string path)
    {
        if (!File.Exists(path))
        {
            throw Directory.Exists(path)
                ? new StoreException(StoreFailure.NotABoat, path, $"'{path}' is a folder. Choose a boat's file in it.")
                : new StoreException(StoreFailure.NotThere, path, $"There is no file '{path}'. Check the name and the folder, or start a new boat.");
        }
    }

    /// <summary>A process ended without moving its last commits from the log into the file.</summary>
    private static bool HasLog(string path) => new FileInfo(path + "-wal") is { Exists: true, Length: > 0 };

    /// <summary>Looks at the header alone; immutable, so that no lock is taken, no journal played back and no file made beside it.</summary>
    private static void CheckWhoseItIs(string path)
    {
        using SqliteConnection db = Connect(new Uri(Path.GetFullPath(path)).AbsoluteUri + "?immutable=1", SqliteOpenMode.ReadOnly);
        if (db.Value("PRAGMA application_id") is not Schema.ApplicationId)
        {
            throw new StoreException(StoreFailure.NotABoat, path, SqliteFailures.NotABoat(path));
        }

        CheckVersion(path, db);
    }

    private static BoatFile OpenChecked(string path)
    {
        bool hasLog = HasLog(path);
        SqliteConnection db = Connect(path, SqliteOpenMode.ReadWrite);
        try
        {
            if (IsReadOnly(db))
            {
                throw WriteProtected(path);
            }

            // Until the file is found good, nothing may be moved from the log into it.
            SetNoCheckpointOnClose(db, hasLog);
            db.Execute("PRAGMA trusted_schema = OFF");
            CheckVersion(path, db);
            if (!Schema.IsAsLaid(db))
            {
                throw Damage.Of(db, "its tables are not laid out as they were made");
            }

            if (db.Value("PRAGMA quick_check(1)") is var found and not "ok")
            {
                throw Damage.Of(db, $"SQLite's check says '{found}'");
            }

            if (IsReadOnly(db))
            {
                throw Damage.Of(db, "its header says that it may not be written");
            }

            SetNoCheckpointOnClose(db, false);
            Prepare(db);
            return new BoatFile(path, db);
        }
        catch
        {
            db.Dispose();
            throw;
        }
    }

    /// <summary>
    /// Write-ahead log, so that readers never wait; every commit is forced to the disk before it is acknowledged, and moved from the log
    /// into the file at once, so that a copy of the file alone is whole.
    /// </summary>
    private static void Prepare(SqliteConnection db)
    {
        db.Value("PRAGMA journal_mode = WAL");
        db.Execute("PRAGMA synchronous = FULL");
        db.Execute("PRAGMA fullfsync = ON");
        db.Execute("PRAGMA checkpoint_fullfsync = ON");
        db.Value("PRAGMA wal_autocheckpoint = 1");
        db.Execute("PRAGMA temp_store = MEMORY");
    }

    private static SqliteConnection Connect(string source, SqliteOpenMode mode)
    {
        SqliteConnection db = new(new SqliteConnectionStringBuilder
        {
            DataSource = source,
            Mode = mode,
            ForeignKeys = true,
            Pooling = false,
            DefaultTimeout = PatienceSeconds,
        }.ToString());
        try
        {
            db.Open();
            db.Value(FormattableString.Invariant($"PRAGMA busy_timeout = {PatienceSeconds * 1000}"));
            return db;
        }
        catch
        {
            db.Dispose();
            throw;
        }
    }

    private static void CheckVersion(string path, SqliteConnection db)
    {
        long version = db.Value("PRAGMA user_version") as long? ?? 0;
        if (version > Schema.Version)
        {
            throw new StoreException(StoreFailure.NewerVersion, path, FormattableString.Invariant(
                $"'{path}' was written by a newer version of this program (layout {version}; this one knows up to {Schema.Version}). It was left as it is. Open it with the newer version."));
        }

        if (version < 1)
        {
            throw Damage.Of(db, FormattableString.Invariant($"its header gives layout {version}, and layouts count from 1"));
        }
    }

    private static bool IsReadOnly(SqliteConnection db) => raw.sqlite3_db_readonly(db.Handle!, "main") == 1;

    private static void SetNoCheckpointOnClose(SqliteConnection db, bool isOn) =>
        _ = raw.sqlite3_db_config(db.Handle!, NoCheckpointOnClose, isOn ? 1 : 0, out _);

    private static StoreException WriteProtected(string path) => new(StoreFailure.ReadOnly, path,
        $"'{path}' is write-protected. It was left as it is. Take the protection off, or copy the file to where you may write.");
}
