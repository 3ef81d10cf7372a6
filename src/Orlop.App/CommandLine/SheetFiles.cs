using Orlop.Drawings.Paper;
using Orlop.Presentation.Quantities;
using Orlop.Review;
using Orlop.Work.Circuits;
using Orlop.Work.Loading;
using Orlop.Work.Paper;

namespace Orlop.App.CommandLine;

/// <summary>Writes sheets to print into a folder.</summary>
internal static class SheetFiles
{
    /// <summary>The owner's electrical pages: over all conditions, or in the one that was asked for.</summary>
    public static Task WriteElectricalAsync(LoadedInput input, string folder, PaperSize? diagram, DisplayUnits units, CommandStreams streams, CancellationToken token)
    {
        ElectricalSheet Make() => ElectricalSheet.Make(WholeReview.NewEngine(), input.AsBuilt, input.Alteration, input.Conditions is [{ Id: var only }] ? only : null, token);
        return PrintAsync(folder, units, streams, paper => ElectricalSheetHtml.Write(Make(), paper with { DiagramSize = diagram }, folder), token);
    }

    /// <summary>The loading and stability sheet.</summary>
    public static Task WriteAsync(LoadedInput input, string folder, bool isDrawn, DisplayUnits units, CommandStreams streams, CancellationToken token)
    {
        LoadingSheet Make() => LoadingSheet.Make(
            WholeReview.NewEngine(), input.AsBuilt, input.Alteration, [.. input.Conditions.Select(condition => condition.Id)], isDrawn, progress: isDrawn ? new DrawsTold(streams.Error) : null, token: token);
        return PrintAsync(folder, units, streams, paper => LoadingSheetHtml.Write(Make(), paper, folder), token);
    }

    private static async Task PrintAsync(string folder, DisplayUnits units, CommandStreams streams, Func<PaperOptions, string> write, CancellationToken token)
    {
        if (File.Exists(folder))
        {
            throw new CommandException($"'{folder}' is a file; the sheet goes into a folder. Name another.");
        }

        PaperOptions paper = new(DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime)) { Units = units, Size = units == DisplayUnits.Us ? PaperSize.Letter : PaperSize.A4 };
        string page = CommandFiles.Try(() => write(paper), $"The sheet cannot be written into '{folder}'");
        await streams.Out.WriteLineAsync(page);
        PdfResult printed = await PdfPrinter.PrintAsync(page, Path.ChangeExtension(page, ".pdf"), token);
        await (printed.File is not null ? streams.Out : streams.Error).WriteLineAsync(printed.File ?? printed.WhyNot);
    }
}
