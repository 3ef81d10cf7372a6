using System.CommandLine;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review;
using Orlop.Review.Stability;

namespace Orlop.App.CommandLine;

/// <summary>A boat, perhaps with an alteration, in one condition or in all: what commands about weight and stability are asked about.</summary>
/// <param name="AsBuilt">The boat as built.</param>
/// <param name="Alteration">The alteration; null for the boat as built.</param>
/// <param name="View">The boat, as altered where an alteration is named.</param>
/// <param name="Conditions">The conditions.</param>
/// <param name="Memo">What was worked out already.</param>
internal sealed record LoadedInput(BoatModel AsBuilt, Alteration? Alteration, StabilityView View, IReadOnlyList<Condition> Conditions, Memo Memo)
{
    /// <summary>Id of the alteration; null for the boat as built.</summary>
    public string? AlterationId => Alteration?.Id;

    /// <summary>How its results are written.</summary>
    public enum OutputForm { Text, Json, Csv }

    /// <summary>A command on such a boat.</summary>
    public static Command Command(string name, string description, CommandStreams streams, Action<LoadedInput, OutputForm, string?> write) =>
        Command(name, description, streams, [], (input, form, parsed, _) =>
        {
            write(input, form, parsed.GetValue<string?>("--units"));
            return Task.CompletedTask;
        });

    /// <summary>A command on such a boat with options of its own.</summary>
    public static Command Command(string name, string description, CommandStreams streams, IReadOnlyList<Option> more, Func<LoadedInput, OutputForm, ParseResult, CancellationToken, Task> write)
    {
        Argument<string> boat = new("boat") { Description = "A .orlop store, a .json boat file, or - for standard input." };
        Option<string?> alteration = new("--alteration", "-a") { Description = "Id or name of an alteration: the boat as it would leave her." };
        Option<string?> condition = ConditionOption.Make();
        Option<bool> json = new("--json") { Description = $"Write JSON, as docs/{name}.schema.json says." };
        Option<bool> csv = new("--csv") { Description = "Write a table for a spreadsheet." };
        Option<string> units = UnitsOption.Make();
        Command command = new(name, description) { boat, alteration, condition, json, csv, units };
        foreach (Option option in more)
        {
            command.Add(option);
        }

        command.Validators.Add(result =>
        {
            if (result.IsGiven("--json") && result.IsGiven("--csv"))
            {
                result.AddError("Choose one of --json and --csv.");
            }
        });
        command.SetAction(async (parsed, token) =>
        {
            BoatModel asBuilt = BoatInput.Read(parsed.GetValue(boat)!, streams);
            Alteration? draft = parsed.GetValue(alteration) is { } wanted ? BoatInput.Alteration(asBuilt, wanted) : null;
            BoatModel model = draft is null ? asBuilt : BoatInput.Altered(asBuilt, draft, streams.Error);
            Memo memo = new();
            LoadedInput input = new(asBuilt, draft, new StabilityView(model, null, memo), ConditionOption.Of(model, parsed.GetValue(condition)), memo);
            await write(input, parsed.GetValue(json) ? OutputForm.Json : parsed.GetValue(csv) ? OutputForm.Csv : OutputForm.Text, parsed, token);
            return ExitCode.Good;
        });
        return command;
    }
}
