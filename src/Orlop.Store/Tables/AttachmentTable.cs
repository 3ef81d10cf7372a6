using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Microsoft.Data.Sqlite;

namespace Orlop.Store.Tables;

/// <summary>Attachments by the hash of their bytes; what is said of them has a seal.</summary>
internal static class AttachmentTable
{
    private const string Lines = "SELECT sha256, media_type, length(bytes), at, seal FROM attachment";

    public static string NameOf(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    public static void Add(SqliteConnection db, Attachment attachment, byte[] bytes) => db.Execute(
        "INSERT INTO attachment (sha256, media_type, at, seal, bytes) VALUES ($1, $2, $3, $4, $5)",
        attachment.Sha256, attachment.MediaType, StoredRevision.Written(attachment.At), Seal(attachment), bytes);

    public static Attachment? Find(SqliteConnection db, string sha256) =>
        db.Rows(row => Intact(row) ?? throw DamagedLine(db), Lines + " WHERE sha256 = $1", sha256).SingleOrDefault();

    /// <summary>In the order they were added.</summary>
    public static List<Attachment> List(SqliteConnection db) => db.Rows(row => Intact(row) ?? throw DamagedLine(db), Lines + " ORDER BY rowid");

    /// <summary>The bytes, checked against their name; null when there are none of this name.</summary>
    public static byte[]? Read(SqliteConnection db, string sha256)
    {
        object? bytes = db.Value("SELECT bytes FROM attachment WHERE sha256 = $1", sha256);
        return bytes is null || (bytes is byte[] found && NameOf(found) == sha256)
            ? bytes as byte[]
            : throw Damage.Of(db, $"the bytes of attachment {sha256} are not as they were written; the boat itself is not touched by this");
    }

    /// <summary>Numbers, in the order they were added, of the attachments that are not as they were written.</summary>
    public static IEnumerable<long> DamagedOnes(SqliteConnection db) => db
        .Rows(row => row.GetInt64(0), "SELECT rowid FROM attachment ORDER BY rowid")
        .Where(number => !Damage.ReadOrNothing(() => IsIntact(db, number)));

    private static bool IsIntact(SqliteConnection db, long number) =>
        db.Rows(Intact, Lines + " WHERE rowid = $1", number) is [{ } attachment]
        && db.Value("SELECT bytes FROM attachment WHERE rowid = $1", number) is byte[] bytes
        && NameOf(bytes) == attachment.Sha256;

    /// <summary>What is said of an attachment, or null when it is not what was sealed.</summary>
    private static Attachment? Intact(SqliteDataReader row)
    {
        if (row.GetValue(0) is string sha256 && row.GetValue(1) is string mediaType && row.GetValue(2) is long count
            && row.GetValue(3) is string at && row.GetValue(4) is byte[] seal
            && DateTimeOffset.TryParseExact(at, "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTimeOffset instant))
        {
            Attachment attachment = new(sha256, mediaType, count, instant);
            return Seal(attachment).AsSpan().SequenceEqual(seal) ? attachment : null;
        }

        return null;
    }

    private static byte[] Seal(Attachment attachment) => SHA256.HashData(Encoding.UTF8.GetBytes(FormattableString.Invariant(
        $"attachment {attachment.Sha256} {attachment.MediaType} {attachment.ByteCount} {StoredRevision.Written(attachment.At)}")));

    private static StoreException DamagedLine(SqliteConnection db) =>
        Damage.Of(db, "what is said of an attachment is not as it was written; the boat itself is not touched by this");
}
