using System.CommandLine;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Presentation.Views;

namespace Orlop.App.CommandLine;

/// <summary><c>orlop isolate</c>: how a part is made dead.</summary>
internal static class IsolateCommand
{
    public static Command Make(CommandStreams streams)
    {
        Argument<string> boat = new("boat") { Description = "A .orlop store, a .json boat file, or - for standard input." };
        Argument<string> part = new("part") { Description = "Id or name of a part, cable or link." };
        Option<string?> alteration = new("--alteration", "-a") { Description = "Id or name of an alteration: the boat as it would leave her." };
        Option<bool> json = new("--json") { Description = "Write JSON, as docs/isolation.schema.json says." };
        Command command = new("isolate", "Tell how a part is made dead: what to open, what stays live, where to prove it.") { boat, part, alteration, json };
        command.SetAction(parsed =>
        {
            BoatModel asBuilt = BoatInput.Read(parsed.GetValue(boat)!, streams);
            Alteration? draft = parsed.GetValue(alteration) is { } wanted ? BoatInput.Alteration(asBuilt, wanted) : null;
            BoatModel model = draft is null ? asBuilt : BoatInput.Altered(asBuilt, draft, streams.Error);
            string named = parsed.GetValue(part)!;
            Thing thing = model.Find(named) ?? ByName(model, named) ?? throw new CommandException(NotThere(asBuilt, model, draft, named));
            if (thing is not (Part or Cable or Link))
            {
                throw new CommandException($"'{named}' is no part, cable or link, so there is nothing to make dead.");
            }

            if (parsed.GetValue(json))
            {
                streams.Out.WriteLine(IsolationJson.Write(model, draft?.Id, thing.Id));
            }
            else
            {
                IsolationText.Write(streams.Out, IsolationView.Of(model, thing.Id));
            }

            return ExitCode.Good;
        });
        return command;
    }

    // The one part, cable or link of that name; none where the name is no one's.
    private static Thing? ByName(BoatModel model, string name)
    {
        Thing[] all = [.. model.Things.Where(thing => thing is Part or Cable or Link && string.Equals(thing.Name, name, StringComparison.OrdinalIgnoreCase))];
        return all.Length < 2 ? all.FirstOrDefault() : throw new CommandException($"{all.Length} things are named '{name}'. Give the id of one: {string.Join(", ", all.Select(thing => thing.Id))}.");
    }

    // Where else it is, before what else may have been meant.
    private static string NotThere(BoatModel asBuilt, BoatModel model, Alteration? draft, string id)
    {
        string where = draft is null ? "the boat as built" : $"the boat with '{draft.Id}'";
        string[] others = [.. asBuilt.All<Alteration>().Where(other => other.Id != draft?.Id && other.Edits.Any(edit => edit.Id == id && edit.Becomes is not null)).Select(other => other.Id)];
        if (others.Length > 0)
        {
            return $"There is no '{id}' in {where}; {(others.Length == 1 ? $"alteration {others[0]} has it" : $"alterations {string.Join(" and ", others)} have it")}. Add: --alteration {others[0]}";
        }

        if (draft is not null && asBuilt.Find(id) is not null)
        {
            return $"There is no '{id}' in {where}: that takes it out. Leave --alteration away for the boat as built.";
        }

        IEnumerable<Thing> drafted = asBuilt.All<Alteration>().SelectMany(other => other.Edits).Select(edit => edit.Becomes).OfType<Thing>();
        string hint = NearNames.Hint(id, model.Things.Concat(drafted).Where(thing => thing is Part or Cable or Link).DistinctBy(thing => thing.Id).Select(thing => (thing.Id, thing.Name)));
        return $"There is no '{id}' in {where}.{(hint.Length > 0 ? hint : " Ids stand in: orlop export BOAT -o -")}";
    }
}
