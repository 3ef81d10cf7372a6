using System.CommandLine;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review;
using Orlop.Review.Stability;

namespace Orlop.App.CommandLine;

/// <summary>A boat, perhaps with an alteration, in one condition or in all: what commands about weight and stability are asked about.</summary>
/// <param name="View">The boat.</param>
/// <param name="AlterationId">Id of the alteration; null for the boat as built.</param>
/// <param name="Conditions">The conditions.</param>
/// <param name="Memo">What was worked out already.</param>
internal sealed record LoadedInput(StabilityView View, string? AlterationId, IReadOnlyList<Condition> Conditions, Memo Memo)
{
    /// <summary>How its results are written.</summary>
    public enum OutputForm { Text, Json, Csv }

    /// <summary>A command on such a boat.</summary>
    public static Command Command(string name, string description, CommandStreams streams, Action<LoadedInput, OutputForm, string?> write)
    {
        Argument<string> boat = new("boat") { Description = "A .orlop store, a .json boat file, or - for standard input." };
        Option<string?> alteration = new("--alteration", "-a") { Description = "Id or name of an alteration: the boat as it would leave her." };
        Option<string?> condition = ConditionOption.Make();
        Option<bool> json = new("--json") { Description = $"Write JSON, as docs/{name}.schema.json says." };
        Option<bool> csv = new("--csv") { Description = "Write a table for a spreadsheet." };
        Option<string> units = UnitsOption.Make();
        Command command = new(name, description) { boat, alteration, condition, json, csv, units };
        command.Validators.Add(result =>
        {
            if (result.GetValue(json) && result.GetValue(csv))
            {
                result.AddError("Choose one of --json and --csv.");
            }
        });
        command.SetAction(parsed =>
        {
            BoatModel asBuilt = BoatInput.Read(parsed.GetValue(boat)!, streams);
            Alteration? draft = parsed.GetValue(alteration) is { } wanted ? BoatInput.Alteration(asBuilt, wanted) : null;
            BoatModel model = draft is null ? asBuilt : BoatInput.Altered(asBuilt, draft, streams.Error);
            Memo memo = new();
            LoadedInput input = new(new StabilityView(model, null, memo), draft?.Id, ConditionOption.Of(model, parsed.GetValue(condition)), memo);
            write(input, parsed.GetValue(json) ? OutputForm.Json : parsed.GetValue(csv) ? OutputForm.Csv : OutputForm.Text, parsed.GetValue(units));
            return ExitCode.Good;
        });
        return command;
    }
}
