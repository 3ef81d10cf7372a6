using System.Security.Cryptography;
using System.Text;
using Microsoft.Data.Sqlite;

namespace Orlop.Store.Tables;

/// <summary>
/// Which revision is the head, and for each revision which child redo leads to. Every ancestor of the head points towards the head, so
/// redo follows the branch that was left last.
/// </summary>
internal static class HeadTable
{
    public static long Read(SqliteConnection db)
    {
        List<(object Number, object Seal)> rows = db.Rows(row => (row.GetValue(0), row.GetValue(1)), "SELECT number, sha256 FROM head");
        return rows is [(long number, byte[] seal)] && seal.AsSpan().SequenceEqual(Seal(number))
            ? number
            : throw Damage.Of(db, "the record of which revision is the head is not as it was written");
    }

    /// <summary>Moves the head to a child or the parent of the head.</summary>
    public static void StepTo(SqliteConnection db, long number) => db.Execute(
        "INSERT INTO head (id, number, sha256) VALUES (1, $1, $2) ON CONFLICT DO UPDATE SET number = $1, sha256 = $2", number, Seal(number));

    /// <summary>Moves the head to a new child of the head.</summary>
    public static void StepToNew(SqliteConnection db, long? parent, long number)
    {
        StepTo(db, number);
        if (parent is not null)
        {
            db.Execute("INSERT INTO onward (parent, child) VALUES ($1, $2) ON CONFLICT DO UPDATE SET child = $2", parent, number);
        }
    }

    /// <summary>Moves the head anywhere.</summary>
    public static void JumpTo(SqliteConnection db, long number)
    {
        StepTo(db, number);
        db.Execute(
            """
            WITH RECURSIVE line (number, parent) AS (
              SELECT number, parent FROM revision WHERE number = $1
              UNION SELECT r.number, r.parent FROM revision r JOIN line ON r.number = line.parent)
            INSERT INTO onward (parent, child) SELECT parent, number FROM line WHERE parent IS NOT NULL
            ON CONFLICT (parent) DO UPDATE SET child = excluded.child
            """, number);
    }

    /// <summary>The child that redo leads to, or null at the end of a branch.</summary>
    public static long? Onward(SqliteConnection db, long number) =>
        db.Value("SELECT child FROM onward JOIN revision ON revision.number = child AND revision.parent = onward.parent WHERE onward.parent = $1", number) as long?;

    /// <summary>Numbers from the head back to the first.</summary>
    public static List<long> Behind(SqliteConnection db, long head) => db.Rows(
        row => row.GetInt64(0),
        """
        WITH RECURSIVE line (number) AS (
          SELECT $1 UNION SELECT parent FROM revision JOIN line USING (number) WHERE parent IS NOT NULL)
        SELECT number FROM line WHERE number <> $1
        """, head);

    /// <summary>Numbers that redo leads to from the head.</summary>
    public static List<long> Ahead(SqliteConnection db, long head) => db.Rows(
        row => row.GetInt64(0),
        "WITH RECURSIVE line (number) AS (SELECT $1 UNION SELECT child FROM onward JOIN line ON parent = number) SELECT number FROM line WHERE number <> $1",
        head);

    private static byte[] Seal(long number) => SHA256.HashData(Encoding.UTF8.GetBytes(FormattableString.Invariant($"head {number}")));
}
