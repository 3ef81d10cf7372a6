using System.CommandLine;
using Orlop.Boat;
using Orlop.Presentation.Views;

namespace Orlop.App.CommandLine;

/// <summary><c>orlop isolate</c>: how a part is made dead.</summary>
internal static class IsolateCommand
{
    public static Command Make(CommandStreams streams)
    {
        Argument<string> boat = new("boat") { Description = "A .orlop store, a .json boat file, or - for standard input." };
        Argument<string> part = new("part") { Description = "Id of a part, cable or link." };
        Command command = new("isolate", "Tell how a part is made dead: what to open, what stays live, where to prove it.") { boat, part };
        command.SetAction(parsed =>
        {
            BoatModel model = BoatInput.Read(parsed.GetValue(boat)!, streams);
            string id = parsed.GetValue(part)!;
            if (model.Find(id) is null)
            {
                throw new CommandException($"There is no thing '{id}' in the boat. Ids stand in: orlop export BOAT -o -");
            }

            IsolationView plan = IsolationView.Of(model, id);
            streams.Out.WriteLine(plan.Status);
            Write(streams.Out, "", plan.Steps, isNumbered: true);
            Write(streams.Out, "Cannot be made dead:", plan.Cannot);
            Write(streams.Out, "Stays live:", plan.StaysLive);
            Write(streams.Out, "Prove it dead:", plan.Proofs);
            streams.Out.WriteLine();
            streams.Out.WriteLine(IsolationView.Caution);
            return ExitCode.Good;
        });
        return command;
    }

    private static void Write(TextWriter output, string title, IReadOnlyList<string> lines, bool isNumbered = false)
    {
        if (lines.Count == 0)
        {
            return;
        }

        output.WriteLine();
        if (title.Length > 0)
        {
            output.WriteLine(title);
        }

        for (int i = 0; i < lines.Count; i++)
        {
            output.WriteLine(isNumbered ? $"{i + 1,3}. {lines[i]}" : $"  - {lines[i]}");
        }
    }
}
