using System.CommandLine;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Review;
using Orlop.Review.Practices;
using Orlop.Review.Ways;

namespace Orlop.App.CommandLine;

/// <summary><c>orlop route</c>: the best ways of a cable by the owner's preferences, or of several planned together.</summary>
internal static class RouteCommand
{
    public static Command Make(CommandStreams streams)
    {
        Argument<string> boat = new("boat") { Description = "A .orlop store, a .json boat file, or - for standard input." };
        Argument<string[]> cables = new("cable") { Description = "Id or name of a cable; several are planned together.", Arity = ArgumentArity.OneOrMore };
        Option<string?> alteration = new("--alteration", "-a") { Description = "Id or name of an alteration: the boat as it would leave her." };
        Option<bool> json = new("--json") { Description = "Write JSON, as docs/route.schema.json says." };
        Option<bool> csv = new("--csv") { Description = "Write a table for a spreadsheet: a row for each stretch." };
        Option<string> units = UnitsOption.Make();
        Command command = new("route", "Find the best ways for a cable by the owner's preferences, with length, holes, bends, supports, conduit fill and what must be opened.") { boat, cables, alteration, json, csv, units };
        command.Validators.Add(result =>
        {
            if (result.IsGiven("--json") && result.IsGiven("--csv"))
            {
                result.AddError("Choose one of --json and --csv.");
            }

            if (result.GetResult(cables)?.Tokens.Count > JointRoutes.MostCableCount)
            {
                result.AddError($"At most {JointRoutes.MostCableCount} cables are planned together.");
            }
        });
        command.SetAction(parsed =>
        {
            BoatModel asBuilt = BoatInput.Read(parsed.GetValue(boat)!, streams);
            Alteration? draft = parsed.GetValue(alteration) is { } wanted ? BoatInput.Alteration(asBuilt, wanted) : null;
            BoatModel model = draft is null ? asBuilt : BoatInput.Altered(asBuilt, draft, streams.Error);
            Cable[] named = [.. parsed.GetValue(cables)!.Select(name => CableOf(model, name)).DistinctBy(cable => cable.Id)];
            Memo memo = new();
            WaysView view = new(model, Practice.Of(model, memo), memo, CancellationToken.None);
            CableRoutes[] options = [.. named.Select(cable => RouteFinder.Find(view, cable))];
            JointRoutes? together = named.Length > 1 ? JointRoutes.Plan(view, named) : null;
            if (parsed.GetValue(json))
            {
                streams.Out.WriteLine(RouteJson.Write(model, draft?.Id, options, together));
            }
            else if (parsed.GetValue(csv))
            {
                RouteCsv.Write(streams.Out, options, together);
            }
            else
            {
                RouteText.Write(streams.Out, options, together, UnitsOption.Of(parsed.GetValue(units)), model);
            }

            return ExitCode.Good;
        });
        return command;
    }

    private static Cable CableOf(BoatModel model, string named)
    {
        if (model.Find<Cable>(named) is { } found)
        {
            return found;
        }

        Cable[] all = [.. model.All<Cable>().Where(cable => string.Equals(cable.Name, named, StringComparison.OrdinalIgnoreCase))];
        return all.Length switch
        {
            1 => all[0],
            0 => throw new CommandException($"There is no cable '{named}' in the boat.{NearNames.Hint(named, model.All<Cable>().Select(cable => (cable.Id, cable.Name)))}"),
            _ => throw new CommandException($"{all.Length} cables are named '{named}'. Give the id of one: {string.Join(", ", all.Select(cable => cable.Id))}."),
        };
    }
}
