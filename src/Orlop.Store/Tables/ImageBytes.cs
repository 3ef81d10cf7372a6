namespace Orlop.Store.Tables;

/// <summary>Tells an image's media type from its first bytes.</summary>
internal static class ImageBytes
{
    /// <summary>image/jpeg (ISO/IEC 10918-1, B.1.1.3), image/png (W3C PNG, 5.2), image/webp (RFC 9649, 2.4), or null.</summary>
    public static string? MediaType(ReadOnlySpan<byte> bytes) => bytes switch
    {
        [0xFF, 0xD8, 0xFF, ..] => "image/jpeg",
        [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A, ..] => "image/png",
        [(byte)'R', (byte)'I', (byte)'F', (byte)'F', _, _, _, _, (byte)'W', (byte)'E', (byte)'B', (byte)'P', ..] => "image/webp",
        _ => null,
    };
}
