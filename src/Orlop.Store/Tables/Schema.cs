using Microsoft.Data.Sqlite;

namespace Orlop.Store.Tables;

/// <summary>The layout of a boat's file.</summary>
internal static class Schema
{
    /// <summary>Stands in the file's header and says whose file it is: the letters ORLP.</summary>
    public const long ApplicationId = 0x4F524C50;

    /// <summary>Version of the layout, in the file's header.</summary>
    public const long Version = 1;

    private static readonly string[] Statements =
    [
        """
        CREATE TABLE revision (
          number INTEGER PRIMARY KEY,
          parent INTEGER REFERENCES revision (number),
          branch INTEGER NOT NULL REFERENCES revision (number),
          at TEXT NOT NULL,
          summary TEXT NOT NULL,
          boat BLOB NOT NULL,
          sha256 BLOB NOT NULL
        ) STRICT
        """,
        "CREATE INDEX revision_by_parent ON revision (parent)",
        """
        CREATE TABLE head (
          id INTEGER PRIMARY KEY CHECK (id = 1),
          number INTEGER NOT NULL REFERENCES revision (number),
          sha256 BLOB NOT NULL
        ) STRICT
        """,
        """
        CREATE TABLE onward (
          parent INTEGER PRIMARY KEY REFERENCES revision (number),
          child INTEGER NOT NULL REFERENCES revision (number)
        ) STRICT
        """,
        """
        CREATE TABLE attachment (
          sha256 TEXT PRIMARY KEY CHECK (length(sha256) = 64),
          media_type TEXT NOT NULL,
          at TEXT NOT NULL,
          seal BLOB NOT NULL,
          bytes BLOB NOT NULL
        ) STRICT
        """,
    ];

    public static void Lay(SqliteConnection db)
    {
        foreach (string statement in Statements)
        {
            db.Execute(statement);
        }

        db.Execute(FormattableString.Invariant($"PRAGMA application_id = {ApplicationId}"));
        db.Execute(FormattableString.Invariant($"PRAGMA user_version = {Version}"));
    }

    /// <summary>The tables are laid out word for word as this version lays them out.</summary>
    public static bool IsAsLaid(SqliteConnection db)
    {
        List<string> found = db.Rows(row => row.GetString(0), "SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL");
        return found.Order(StringComparer.Ordinal).SequenceEqual(Statements.Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }
}
