using Microsoft.Data.Sqlite;

namespace Orlop.Store.Files;

/// <summary>An open boat's file: one connection, used by one thread at a time.</summary>
internal sealed class BoatFile : IDisposable
{
    private readonly SqliteConnection _db;

    internal BoatFile(string path, SqliteConnection db)
    {
        Path = path;
        _db = db;
    }

    public string Path { get; }

    /// <summary>Held while the connection is used.</summary>
    public Lock Gate { get; } = new();

    /// <summary>Reads from one state of the file, whatever other processes commit meanwhile.</summary>
    public T Read<T>(Func<SqliteConnection, T> read) => Use(db => InTransaction(db, isReading: true, read));

    /// <summary>Writes all or nothing. Other writers wait; when it returns, the disk has it.</summary>
    public T Write<T>(Func<SqliteConnection, T> write) => Use(db => InTransaction(db, isReading: false, write));

    /// <summary>Runs what may not stand in a transaction, or must go on after a failed read has ended one.</summary>
    /// <param name="use">What to run.</param>
    /// <param name="written">The file that is written, where it is another one.</param>
    public T Use<T>(Func<SqliteConnection, T> use, string? written = null)
    {
        lock (Gate)
        {
            try
            {
                return use(_db);
            }
            catch (SqliteException exception)
            {
                throw SqliteFailures.For(written ?? Path, exception);
            }
        }
    }

    public void Dispose()
    {
        lock (Gate)
        {
            _db.Dispose();
        }
    }

    private static T InTransaction<T>(SqliteConnection db, bool isReading, Func<SqliteConnection, T> work)
    {
        using SqliteTransaction transaction = db.BeginTransaction(deferred: isReading);
        T result = work(db);
        transaction.Commit();
        return result;
    }
}
