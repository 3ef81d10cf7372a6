namespace Orlop.Store;

/// <summary>A photograph's bytes, kept once however often they are added.</summary>
/// <param name="Sha256">SHA-256 of the bytes in 64 small hexadecimal letters; its name.</param>
/// <param name="MediaType">image/jpeg, image/png or image/webp.</param>
/// <param name="ByteCount">Number of bytes.</param>
/// <param name="At">When it was first added.</param>
public sealed record Attachment(string Sha256, string MediaType, long ByteCount, DateTimeOffset At);

/// <summary>What became of bytes handed over as an attachment.</summary>
public abstract record AttachmentResult;

/// <summary>The bytes are kept, on the disk.</summary>
/// <param name="Attachment">Their name and media type.</param>
/// <param name="WasThere">The same bytes had been kept before.</param>
public sealed record AttachmentKept(Attachment Attachment, bool WasThere) : AttachmentResult;

/// <summary>The bytes are not kept.</summary>
/// <param name="Reason">What was found and what is allowed.</param>
public sealed record AttachmentRefused(string Reason) : AttachmentResult;
