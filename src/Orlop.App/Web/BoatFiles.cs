using Orlop.App.Sessions;
using Orlop.Boat.Things;
using Orlop.Drawings.Paper;
using Orlop.Presentation.Quantities;
using Orlop.Store;
using Orlop.Work;
using Orlop.Work.Paper;

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
        app.MapGet("/favicon.ico", () => Results.Redirect("/favicon.svg"));
        app.MapGet("/packs/{alteration}.pdf", PackPdfAsync);
        app.MapGet("/packs/{alteration}", (string alteration, BoatSession session, HttpContext context) =>
            PackHtml(alteration, session, context) is { } html ? Results.Content(html, "text/html; charset=utf-8") : Results.NotFound());
        StabilityFiles.Map(app);
        ElectricalFiles.Map(app);
    }

    private static string? PackHtml(string alteration, BoatSession session, HttpContext context)
    {
        if (session.Now.AsBuilt.Find<Alteration>(alteration) is not { } found)
        {
            return null;
        }

        return WorkPackHtml.Render(WorkPacks.Plan(session.Now.AsBuilt, found, context.RequestAborted), Paper(session, context) with { RecordHref = $"/record?alteration={Uri.EscapeDataString(found.Id)}&part=steps" }, session.Engine);
    }

    /// <summary>The paper of the reader's units.</summary>
    public static PaperOptions Paper(BoatSession session, HttpContext context)
    {
        bool isUs = context.Request.Cookies["units"] == "us";
        return new PaperOptions(session.Today, session.Now.Head.Number.ToString(System.Globalization.CultureInfo.InvariantCulture))
        {
            Units = isUs ? DisplayUnits.Us : DisplayUnits.Metric,
            Size = isUs ? PaperSize.Letter : PaperSize.A4,
        };
    }

    private static Task<IResult> PackPdfAsync(string alteration, BoatSession session, HttpContext context) => PackHtml(alteration, session, context) is { } html
        ? PdfAsync(html, $"{alteration}.pdf", context)
        : Task.FromResult(Results.NotFound());

    /// <summary>An HTML page printed to PDF.</summary>
    /// <param name="name">What the file is to be called.</param>
    public static async Task<IResult> PdfAsync(string html, string name, HttpContext context)
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("orlop-pack-");
        try
        {
            string page = Path.Combine(folder.FullName, "pack.html");
            await File.WriteAllTextAsync(page, html, context.RequestAborted);
            PdfResult printed = await PdfPrinter.PrintAsync(page, Path.Combine(folder.FullName, "pack.pdf"), context.RequestAborted);
            return printed.File is { } pdf
                ? Results.Bytes(await File.ReadAllBytesAsync(pdf, context.RequestAborted), "application/pdf", name)
                : Results.Text(printed.WhyNot, statusCode: StatusCodes.Status503ServiceUnavailable);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
