using Microsoft.Data.Sqlite;

namespace Orlop.Store.Tables;

/// <summary>Names what is damaged in a file.</summary>
internal static class Damage
{
    public static StoreException Of(SqliteConnection db, string what)
    {
        string readable = RevisionTable.NewestReadable(db) is { } revision
            ? FormattableString.Invariant($"Revision {revision.Number}, '{revision.Summary}', is the newest that can be read.")
            : "No revision in it can be read.";
        return new StoreException(StoreFailure.Damaged, db.DataSource, $"{Message(db.DataSource, what)} {readable}");
    }

    /// <summary>Everything that is not as it was written, a sentence each.</summary>
    public static List<string> All(SqliteConnection db)
    {
        List<string> found = db.Rows(row => row.GetString(0), "PRAGMA integrity_check(20)");
        found.Remove("ok");
        found.AddRange(RevisionTable.DamagedOnes(db).Select(number => FormattableString.Invariant($"Revision {number} is not as it was written.")));
        found.AddRange(AttachmentTable.DamagedOnes(db).Select(number => FormattableString.Invariant($"Attachment {number} is not as it was written.")));
        return found;
    }

    /// <summary>What is read, or nothing when the pages it lies on are damaged; something else may lie on others.</summary>
    public static T? ReadOrNothing<T>(Func<T?> read)
    {
        try
        {
            return read();
        }
        catch (SqliteException)
        {
            return default;
        }
    }

    public static string Message(string path, string what) =>
        $"'{path}' is damaged: {what}. It was left as it is. Keep it, and go on from a backup or from its newest readable revision.";
}
