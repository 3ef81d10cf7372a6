using System.Globalization;
using System.Security.Cryptography;
using Microsoft.Data.Sqlite;

namespace Orlop.Store.Tables;

/// <summary>Attachments by the hash of their bytes.</summary>
internal static class AttachmentTable
{
    public static string NameOf(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    public static void Add(SqliteConnection db, Attachment attachment, byte[] bytes) => db.Execute(
        "INSERT INTO attachment (sha256, media_type, at, bytes) VALUES ($1, $2, $3, $4)",
        attachment.Sha256, attachment.MediaType, StoredRevision.Written(attachment.At), bytes);

    public static Attachment? Find(SqliteConnection db, string sha256) =>
        db.Rows(Line, "SELECT sha256, media_type, length(bytes), at FROM attachment WHERE sha256 = $1", sha256).SingleOrDefault();

    /// <summary>In the order they were added.</summary>
    public static List<Attachment> List(SqliteConnection db) =>
        db.Rows(Line, "SELECT sha256, media_type, length(bytes), at FROM attachment ORDER BY rowid");

    /// <summary>The bytes, checked against their name; null when there are none of this name.</summary>
    public static byte[]? Read(SqliteConnection db, string sha256)
    {
        object? bytes = Bytes(db, sha256);
        return bytes is null || (bytes is byte[] found && NameOf(found) == sha256)
            ? bytes as byte[]
            : throw Damage.Of(db, $"the bytes of attachment {sha256} are not as they were written; the boat itself is not touched by this");
    }

    /// <summary>Names of the attachments whose bytes are not those they are named for.</summary>
    public static IEnumerable<string> DamagedOnes(SqliteConnection db) => db
        .Rows(row => row.GetString(0), "SELECT sha256 FROM attachment")
        .Where(sha256 => Damage.ReadOrNothing(() => Bytes(db, sha256)) is not byte[] bytes || NameOf(bytes) != sha256);

    private static object? Bytes(SqliteConnection db, string sha256) => db.Value("SELECT bytes FROM attachment WHERE sha256 = $1", sha256);

    private static Attachment Line(SqliteDataReader row) => new(
        row.GetString(0), row.GetString(1), row.GetInt64(2), DateTimeOffset.ParseExact(row.GetString(3), "O", CultureInfo.InvariantCulture));
}
