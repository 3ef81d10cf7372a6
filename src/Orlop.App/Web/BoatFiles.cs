using Orlop.App.Sessions;
using Orlop.Store;

namespace Orlop.App.Web;

/// <summary>Files that pages show or hand out: photographs and work packs.</summary>
internal static class BoatFiles
{
    private const int Sha256Length = 64;

    public static void Map(WebApplication app)
    {
        app.MapGet("/photographs/{sha256}", (string sha256, BoatSession session, HttpContext context) =>
        {
            if (sha256.Length != Sha256Length || !sha256.All(char.IsAsciiHexDigitLower))
            {
                return Results.NotFound();
            }

            Attachment? attachment = session.Store.Attachments.List().FirstOrDefault(kept => kept.Sha256 == sha256);
            byte[]? bytes = attachment is null ? null : session.Store.Attachments.Read(sha256);
            if (bytes is null)
            {
                return Results.NotFound();
            }

            context.Response.Headers.CacheControl = "private, max-age=31536000, immutable";
            return Results.Bytes(bytes, attachment!.MediaType);
        });
    }
}
