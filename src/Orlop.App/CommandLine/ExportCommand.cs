using System.CommandLine;
using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Review;

namespace Orlop.App.CommandLine;

/// <summary><c>orlop export</c>: the whole boat as a boat file, or one kind of thing as a table.</summary>
internal static class ExportCommand
{
    public static Command Make(CommandStreams streams)
    {
        Argument<string> boat = new("boat") { Description = "A .orlop store, a .json boat file, or - for standard input." };
        Option<string?> list = ListOption.Make("Write only this list, as CSV.");
        Option<string> output = new("--output", "-o") { Description = "File to write, or - for standard output.", Required = true };
        Command command = new("export", "Write a boat as JSON, or one list of it as CSV.") { boat, list, output };
        command.SetAction(parsed =>
        {
            BoatModel model = BoatInput.Read(parsed.GetValue(boat)!, streams);
            string text = parsed.GetValue(list) is { } kind ? BoatTable.Export(model, kind) : BoatJson.Write(model);
            Write(parsed.GetValue(output)!, text, streams);
            return ExitCode.Good;
        });
        return command;
    }

    private static void Write(string output, string text, CommandStreams streams)
    {
        if (output == BoatInput.StandardStream)
        {
            streams.Out.Write(text);
            return;
        }

        CommandFiles.WriteNew(output, text);
        streams.Error.WriteLine($"Wrote {output}.");
    }
}
