using System.CommandLine;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Tables;
using Orlop.Boat.Things;
using Orlop.Review;
using Orlop.Store;

namespace Orlop.App.CommandLine;

/// <summary><c>orlop import</c>: brings a whole boat file, or a table of one kind of thing, into a store as one revision.</summary>
internal static class ImportCommand
{
    public static Command Make(CommandStreams streams)
    {
        Argument<string> boat = new("boat") { Description = "The .orlop store to change." };
        Argument<string> file = new("file") { Description = "A .json boat file, or a .csv table with --list, or - for standard input." };
        Option<string?> list = ListOption.Make("The file is a CSV table of this list.");
        Command command = new("import", "Bring a boat file or a table into a store, as one revision that can be undone.") { boat, file, list };
        command.SetAction(parsed =>
        {
            using BoatStore store = BoatStore.Open(parsed.GetValue(boat)!);
            string source = parsed.GetValue(file)!;
            Revision head = store.Head;
            IReadOnlyList<Edit> edits = parsed.GetValue(list) is { } kind
                ? Table(head.Boat, kind, source, streams)
                : BoatEdits.Between(head.Boat, BoatInput.Read(source, streams));
            if (edits.Count == 0)
            {
                streams.Out.WriteLine("Nothing differs; nothing was changed.");
                return ExitCode.Good;
            }

            CommitResult result = store.Commit(head.Number, edits, $"Read from {Path.GetFileName(source)}");
            streams.Out.WriteLine(result switch
            {
                Conflict conflict => throw new CommandException($"The boat was changed by another program meanwhile: {string.Join(", ", conflict.Clashes.Select(clash => clash.Id))}. Run the command again."),
                Refused refused => throw new CommandException($"Nothing was kept; {refused.Problems.Count} {(refused.Problems.Count == 1 ? "thing" : "things")} would be wrong in the boat:{Environment.NewLine}{string.Join(Environment.NewLine, refused.Problems)}"),
                _ => $"{edits.Count} {(edits.Count == 1 ? "thing" : "things")} changed; revision {result.Head.Number}.",
            });
            return ExitCode.Good;
        });
        return command;
    }

    private static IReadOnlyList<Edit> Table(BoatModel boat, string kind, string source, CommandStreams streams)
    {
        string csv = source == BoatInput.StandardStream ? streams.In.ReadToEnd() : CommandFiles.ReadText(source);
        TableImport import = BoatTable.Import(boat, kind, csv);
        if (import.MadeIds.Count > 0)
        {
            streams.Out.WriteLine($"Rows without an id are new things; ids made from their names: {string.Join(", ", import.MadeIds)}.");
        }

        return import.Problems.Count == 0
            ? import.Edits
            : throw new CommandException($"'{source}' cannot be used; nothing was changed:{Environment.NewLine}{string.Join(Environment.NewLine, import.Problems)}");
    }
}
