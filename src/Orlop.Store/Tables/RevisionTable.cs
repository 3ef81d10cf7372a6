using Microsoft.Data.Sqlite;

namespace Orlop.Store.Tables;

/// <summary>Revisions, each checked against its hash whenever it is read.</summary>
internal static class RevisionTable
{
    private const string Columns = "number, parent, branch, at, summary, boat, sha256";

    public static void Add(SqliteConnection db, StoredRevision revision) => db.Execute(
        $"INSERT INTO revision ({Columns}) VALUES ($1, $2, $3, $4, $5, $6, $7)",
        revision.Number, revision.Parent, revision.Branch, revision.At, revision.Summary, revision.Boat, revision.Digest());

    public static long NextNumber(SqliteConnection db) => (long)db.Value("SELECT coalesce(max(number), 0) + 1 FROM revision")!;

    public static bool HasChild(SqliteConnection db, long number) =>
        db.Value("SELECT 1 FROM revision WHERE parent = $1", number) is not null;

    public static void MustExist(SqliteConnection db, long number)
    {
        if (db.Value("SELECT 1 FROM revision WHERE number = $1", number) is null)
        {
            throw new ArgumentOutOfRangeException(
                nameof(number), number, FormattableString.Invariant($"There is no revision {number}; the newest is {NextNumber(db) - 1}."));
        }
    }

    /// <summary>The revision, intact; <see cref="StoreException"/> when it is not there or damaged.</summary>
    public static StoredRevision Read(SqliteConnection db, long number) => FindIntact(db, number) ??
        throw Damage.Of(db, FormattableString.Invariant($"revision {number} is not as it was written"));

    /// <summary>Newest first, those below <paramref name="before"/>; null stands for a damaged one.</summary>
    public static List<(long Number, StoredRevision? Revision)> Page(SqliteConnection db, long before, int count) => db.Rows(
        row => (row.GetInt64(0), Intact(row)),
        $"SELECT {Columns} FROM revision WHERE number < $1 ORDER BY number DESC LIMIT $2", before, count);

    /// <summary>The newest revision that can still be read, also from a file with damaged pages; null when there is none.</summary>
    public static StoredRevision? NewestReadable(SqliteConnection db)
    {
        long newest = Damage.ReadOrNothing(() => NextNumber(db) - 1);
        for (long number = newest; number >= 1; number--)
        {
            if (Damage.ReadOrNothing(() => FindIntact(db, number)) is { } revision)
            {
                return revision;
            }
        }

        return null;
    }

    /// <summary>Numbers of the revisions that are not as they were written.</summary>
    public static IEnumerable<long> DamagedOnes(SqliteConnection db)
    {
        long newest = NextNumber(db) - 1;
        for (long number = 1; number <= newest; number++)
        {
            if (Damage.ReadOrNothing(() => FindIntact(db, number)) is null)
            {
                yield return number;
            }
        }
    }

    private static StoredRevision? FindIntact(SqliteConnection db, long number) =>
        db.Rows(Intact, $"SELECT {Columns} FROM revision WHERE number = $1", number).SingleOrDefault();

    /// <summary>The row as a revision, or null when its fields are not what was hashed.</summary>
    private static StoredRevision? Intact(SqliteDataReader row)
    {
        if (row.GetValue(0) is long number && row.GetValue(1) is var parent and (long or DBNull) && row.GetValue(2) is long branch
            && row.GetValue(3) is string at && row.GetValue(4) is string summary
            && row.GetValue(5) is byte[] boat && row.GetValue(6) is byte[] sha256)
        {
            StoredRevision revision = new(number, parent as long?, branch, at, summary, boat);
            return revision.Digest().AsSpan().SequenceEqual(sha256) ? revision : null;
        }

        return null;
    }
}
