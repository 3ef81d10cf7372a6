using Orlop.Drawings.Paper;
using Orlop.Presentation.Quantities;
using Orlop.Review;
using Orlop.Work.Loading;
using Orlop.Work.Paper;

namespace Orlop.App.CommandLine;

/// <summary>Writes a loading and stability sheet into a folder.</summary>
internal static class SheetFiles
{
    public static async Task WriteAsync(LoadedInput input, string folder, bool isDrawn, DisplayUnits units, CommandStreams streams, CancellationToken token)
    {
        if (File.Exists(folder))
        {
            throw new CommandException($"'{folder}' is a file; the sheet goes into a folder. Name another.");
        }

        ReviewEngine engine = Reviewing.NewEngine();
        LoadingSheet sheet = LoadingSheet.Make(engine, input.AsBuilt, input.Alteration, [.. input.Conditions.Select(condition => condition.Id)], isDrawn, progress: isDrawn ? new DrawsTold(streams.Error) : null, token: token);
        PaperOptions paper = new(DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime)) { Units = units, Size = units == DisplayUnits.Us ? PaperSize.Letter : PaperSize.A4 };
        string page = CommandFiles.Try(() => LoadingSheetHtml.Write(sheet, paper, folder), $"The sheet cannot be written into '{folder}'");
        await streams.Out.WriteLineAsync(page);
        PdfResult printed = await PdfPrinter.PrintAsync(page, Path.ChangeExtension(page, ".pdf"), token);
        await (printed.File is not null ? streams.Out : streams.Error).WriteLineAsync(printed.File ?? printed.WhyNot);
    }
}
