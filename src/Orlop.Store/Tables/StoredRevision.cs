using System.Globalization;
using System.Security.Cryptography;

namespace Orlop.Store.Tables;

/// <summary>A revision as its row holds it.</summary>
internal sealed record StoredRevision(long Number, long? Parent, long Branch, string At, string Summary, byte[] Boat)
{
    /// <summary>The instant that <see cref="At"/> writes.</summary>
    public DateTimeOffset Instant => DateTimeOffset.ParseExact(At, "O", CultureInfo.InvariantCulture);

    public static string Written(DateTimeOffset at) => at.ToUniversalTime().ToString("O", CultureInfo.InvariantCulture);

    /// <summary>SHA-256 over every field, each string and blob with its length.</summary>
    public byte[] Digest()
    {
        using MemoryStream stream = new();
        using (BinaryWriter writer = new(stream))
        {
            writer.Write(Number);
            writer.Write(Parent ?? 0);
            writer.Write(Branch);
            writer.Write(At);
            writer.Write(Summary);
            writer.Write(Boat.Length);
            writer.Write(Boat);
        }

        return SHA256.HashData(stream.ToArray());
    }
}
