using System.CommandLine;
using Orlop.Boat;
using Orlop.Drawings.Paper;
using Orlop.Presentation.Quantities;
using Orlop.Review;
using Orlop.Work;
using Orlop.Work.Paper;
using Orlop.Work.Troubles;

namespace Orlop.App.CommandLine;

/// <summary><c>orlop pack</c>: the work pack of an alteration as a folder of files.</summary>
internal static class PackCommand
{
    public static Command Make(CommandStreams streams)
    {
        Argument<string> boat = new("boat") { Description = "A .orlop store, a .json boat file, or - for standard input." };
        Option<string> alteration = new("--alteration", "-a") { Description = "Id or name of the alteration.", Required = true };
        Option<string> output = new("--output", "-o") { Description = "Folder to write to; made if needed.", Required = true };
        Option<string> units = UnitsOption.Make();
        Command command = new("pack", "Write the work pack of an alteration: HTML to print, PDF where a browser is installed, tables, labels.") { boat, alteration, output, units };
        command.SetAction(async (parsed, token) =>
        {
            BoatModel model = BoatInput.Read(parsed.GetValue(boat)!, streams);
            DisplayUnits shown = UnitsOption.Of(parsed.GetValue(units));
            WorkPack pack = WorkPacks.Plan(model, BoatInput.Alteration(model, parsed.GetValue(alteration)!), token);
            PaperOptions paper = new(DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime))
            {
                Units = shown,
                Size = shown == DisplayUnits.Us ? PaperSize.Letter : PaperSize.A4,
            };
            string folder = parsed.GetValue(output)!;
            if (File.Exists(folder))
            {
                throw new CommandException($"'{folder}' is a file; the pack goes into a folder. Name another.");
            }

            ReviewEngine engine = WholeReview.NewEngine();
            foreach (string name in CommandFiles.Try(() => PackFolder.Write(pack, paper, folder, engine), $"The pack cannot be written into '{folder}'"))
            {
                await streams.Out.WriteLineAsync(Path.Combine(folder, name));
            }

            string pdf = Path.Combine(folder, "pack.pdf");
            PdfResult printed = await PdfPrinter.PrintAsync(Path.Combine(folder, "pack.html"), pdf, token);
            await (printed.File is not null ? streams.Out : streams.Error).WriteLineAsync(printed.File ?? printed.WhyNot);
            await streams.Error.WriteLineAsync(PackTroubles.Of(pack, engine, token).Status);
            if (!pack.Clashes.IsEmpty)
            {
                await streams.Error.WriteLineAsync($"Do not start: the boat has changed since this was drafted ({string.Join(", ", pack.Clashes.Select(clash => clash.Id))}). Settle that first.");
            }

            if (!pack.FailedTests.IsEmpty)
            {
                await streams.Error.WriteLineAsync($"Tests that did not pass: {string.Join("; ", pack.FailedTests.Select(step => $"{step.Text} {step.Failed!.Words}"))}");
            }

            return ExitCode.Good;
        });
        return command;
    }
}
