using Orlop.App.Sessions;
using Orlop.Boat.Things;
using Orlop.Drawings.Paper;
using Orlop.Work.Circuits;

namespace Orlop.App.Web;

/// <summary>The owner's electrical pages, of the boat as built or with an alteration.</summary>
internal static class ElectricalFiles
{
    public static void Map(WebApplication app)
    {
        app.MapGet("/electrical.pdf", (string? alteration, string? condition, string? diagram, BoatSession session, HttpContext context) => Pages(alteration, condition, diagram, session, context) is { } html
            ? BoatFiles.PdfAsync(html, "electrical-pages.pdf", context) : Task.FromResult(Results.NotFound()));
        app.MapGet("/electrical", (string? alteration, string? condition, string? diagram, BoatSession session, HttpContext context) =>
            Pages(alteration, condition, diagram, session, context) is { } html ? Results.Content(html, "text/html; charset=utf-8") : Results.NotFound());
    }

    private static string? Pages(string? alteration, string? condition, string? diagram, BoatSession session, HttpContext context)
    {
        Alteration? found = alteration is null ? null : session.Now.AsBuilt.Find<Alteration>(alteration);
        return alteration is null || found is not null
            ? ElectricalSheetHtml.Render(ElectricalSheet.Make(session.Engine, session.Now.AsBuilt, found, condition, context.RequestAborted), BoatFiles.Paper(session, context) with { DiagramSize = PaperSizes.Named(diagram) })
            : null;
    }
}
