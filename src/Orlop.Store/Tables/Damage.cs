using Microsoft.Data.Sqlite;

namespace Orlop.Store.Tables;

/// <summary>Names what is damaged in a file.</summary>
internal static class Damage
{
    public static StoreException Of(SqliteConnection db, string what) =>
        new(StoreFailure.Damaged, db.DataSource, Message(db.DataSource, what));

    public static string Message(string path, string what) =>
        $"'{path}' is damaged: {what}. It was left as it is. Keep it, and go on from a backup or from its newest readable revision.";
}
