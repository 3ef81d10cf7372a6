using Orlop.App.CommandLine;
using Orlop.App.Sessions;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Presentation.Views.Floating;
using Orlop.Review.Practices;
using Orlop.Review.Stability;
using Orlop.Work.Loading;

namespace Orlop.App.Web;

/// <summary>The loading and stability sheet and the tables of the hull, of the boat as built or with an alteration.</summary>
internal static class StabilityFiles
{
    public static void Map(WebApplication app)
    {
        app.MapGet("/stability.pdf", (string? alteration, bool? draws, BoatSession session, HttpContext context) => Sheet(alteration, draws == true, session, context) is { } html
            ? BoatFiles.PdfAsync(html, "loading-and-stability.pdf", context) : Task.FromResult(Results.NotFound()));
        app.MapGet("/stability", (string? alteration, bool? draws, BoatSession session, HttpContext context) =>
            Sheet(alteration, draws == true, session, context) is { } html ? Results.Content(html, "text/html; charset=utf-8") : Results.NotFound());
        app.MapGet("/tables/{kind}.{form}", Table);
    }

    private static string? Sheet(string? alteration, bool isDrawn, BoatSession session, HttpContext context) => IsThere(alteration, session, out Alteration? found)
        ? LoadingSheetHtml.Render(LoadingSheet.Make(session.Engine, session.Now.AsBuilt, found, null, isDrawn, token: context.RequestAborted), BoatFiles.Paper(session, context))
        : null;

    private static IResult Table(string kind, string form, string? alteration, string? condition, BoatSession session)
    {
        if (!StabilityTable.Kinds.Contains(kind) || form is not ("csv" or "json") || !IsThere(alteration, session, out Alteration? found))
        {
            return Results.NotFound();
        }

        BoatModel boat = found is null ? session.Now.AsBuilt : AlteredBoat.Of(session.Now.AsBuilt, found).Boat;
        StabilityView view = new(boat, Practice.Of(boat, session.Engine.Memo), session.Engine.Memo);
        StabilityTable table = StabilityTable.Of(kind, view, boat.All<Condition>().Where(one => condition is null || one.Id == condition), session.Engine.Memo);
        return form == "csv"
            ? Results.File(System.Text.Encoding.UTF8.GetBytes(table.Csv()), "text/csv; charset=utf-8", $"{kind}.csv")
            : Results.File(System.Text.Encoding.UTF8.GetBytes(TableJson.Write(table, view, found?.Id)), "application/json", $"{kind}.json");
    }

    private static bool IsThere(string? alteration, BoatSession session, out Alteration? found)
    {
        found = alteration is null ? null : session.Now.AsBuilt.Find<Alteration>(alteration);
        return alteration is null || found is not null;
    }
}
