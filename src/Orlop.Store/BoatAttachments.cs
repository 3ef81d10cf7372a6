using Orlop.Store.Files;
using Orlop.Store.Tables;

namespace Orlop.Store;

/// <summary>The photographs of a boat: bytes in her file, named by their hash. They are no part of a revision; undo leaves them.</summary>
public sealed class BoatAttachments
{
    /// <summary>Largest attachment, in bytes: 20 MB.</summary>
    public const int MostBytes = 20_000_000;

    private readonly BoatFile _file;
    private readonly TimeProvider _time;

    internal BoatAttachments(BoatFile file, TimeProvider time)
    {
        _file = file;
        _time = time;
    }

    /// <summary>All attachments, in the order they were added.</summary>
    public IReadOnlyList<Attachment> List() => _file.Read(AttachmentTable.List);

    /// <summary>The bytes with this SHA-256, checked against it; null when there are none.</summary>
    public byte[]? Read(string sha256) => _file.Read(db => AttachmentTable.Read(db, sha256));

    /// <summary>Keeps the bytes of a JPEG, PNG or WebP image of at most <see cref="MostBytes"/> bytes.</summary>
    /// <param name="bytes">The image's file.</param>
    /// <param name="mediaType">What the sender says it is; held against what the bytes say.</param>
    public AttachmentResult Add(byte[] bytes, string mediaType)
    {
        if (Complaint(bytes, mediaType) is { } complaint)
        {
            return new AttachmentRefused(complaint);
        }

        string sha256 = AttachmentTable.NameOf(bytes);
        return _file.Write(db =>
        {
            Attachment? there = AttachmentTable.Find(db, sha256);
            Attachment attachment = there ?? new Attachment(sha256, mediaType, bytes.Length, _time.GetUtcNow());
            if (there is null)
            {
                AttachmentTable.Add(db, attachment, bytes);
            }

            return new AttachmentKept(attachment, there is not null);
        });
    }

    private static string? Complaint(byte[] bytes, string mediaType)
    {
        if (bytes.Length > MostBytes)
        {
            return FormattableString.Invariant($"The file has {bytes.Length / 1e6:0.0} MB; at most {MostBytes / 1e6:0} MB are kept. Make the photograph smaller.");
        }

        string? found = ImageBytes.MediaType(bytes);
        if (found is null)
        {
            return "The file is not a JPEG, PNG or WebP image by its first bytes; only these are kept.";
        }

        return found == mediaType ? null : $"The file is said to be '{mediaType}' but its first bytes are those of {found}. Give it its right type.";
    }
}
