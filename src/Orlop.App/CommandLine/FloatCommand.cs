using System.CommandLine;
using Orlop.Presentation.Views.Floating;

namespace Orlop.App.CommandLine;

/// <summary><c>orlop float</c>: how a boat floats in her conditions, and how she rights herself; her tables, and her loading and stability sheet.</summary>
internal static class FloatCommand
{
    public static Command Make(CommandStreams streams)
    {
        Option<string?> table = new("--table") { Description = $"A table instead: {string.Join(", ", StabilityTable.Kinds)}; as CSV, or with --json as docs/table.schema.json says." };
        table.AcceptOnlyFromAmong([.. StabilityTable.Kinds]);
        Option<string?> paper = new("--paper") { Description = "Write the loading and stability sheet into this folder: HTML to print, PDF where a browser is installed." };
        Option<bool> draws = new("--draws") { Description = "With --paper: also draw her weight 10 000 times and tell in how many draws each general criterion holds; a second or more for each condition." };
        Option<bool> motions = new("--motions") { Description = "Also accelerations and tilt at every listed thing, for the motion that is stated in each condition." };
        Command command = LoadedInput.Command(
            "float", "Tell how she floats: displacement, draughts, trim, heel, GM, righting levers.", streams, [table, paper, draws, motions], async (input, form, parsed, token) =>
            {
                string? units = parsed.GetValue<string?>("--units");
                if (parsed.GetValue(paper) is { } folder)
                {
                    await SheetFiles.WriteAsync(input, folder, parsed.GetValue(draws), UnitsOption.Of(units), streams, token);
                }
                else if (parsed.GetValue(table) is { } kind)
                {
                    StabilityTable wanted = StabilityTable.Of(kind, input.View, input.Conditions, input.Memo);
                    await streams.Out.WriteAsync(form == LoadedInput.OutputForm.Json ? TableJson.Write(wanted, input.View, input.AlterationId) + Environment.NewLine : wanted.Csv());
                }
                else
                {
                    Write(input, form, units, parsed.GetValue(motions), streams.Out);
                }
            });
        command.Validators.Add(result =>
        {
            if (result.IsGiven("--paper") && (result.IsGiven("--table") || result.IsGiven("--json") || result.IsGiven("--csv")))
            {
                result.AddError("--paper writes a sheet and nothing else: leave out --table, --json and --csv.");
            }
            else if (result.IsGiven("--motions") && (result.IsGiven("--paper") || result.IsGiven("--table") || result.IsGiven("--csv")))
            {
                result.AddError("--motions goes with the text or with --json: leave out --paper, --table and --csv.");
            }
            else if (result.IsGiven("--draws") && !result.IsGiven("--paper"))
            {
                result.AddError("--draws goes with --paper.");
            }
        });
        return command;
    }

    private static void Write(LoadedInput input, LoadedInput.OutputForm form, string? units, bool hasMotions, TextWriter output)
    {
        if (form == LoadedInput.OutputForm.Csv)
        {
            output.Write(StabilityTable.Of("gz", input.View, input.Conditions, input.Memo).Csv());
            return;
        }

        FloatingFacts[] all = [.. input.Conditions.Select(condition => FloatingFacts.Of(input.View, condition, input.Memo))];
        if (form == LoadedInput.OutputForm.Json)
        {
            output.WriteLine(FloatJson.Write(input, all, hasMotions));
        }
        else
        {
            FloatText.Write(output, input.View, all, hasMotions, UnitsOption.Of(units), UnitsOption.Culture);
        }
    }
}
