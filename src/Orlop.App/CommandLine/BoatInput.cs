using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Store;

namespace Orlop.App.CommandLine;

/// <summary>Reads the boat that a command names: a store (<c>.orlop</c>), a boat file (<c>.json</c>), or "-" for a boat file on standard input.</summary>
internal static class BoatInput
{
    public const string StandardStream = "-";

    /// <summary>The boat, or a <see cref="CommandException"/> that tells everything wrong with it.</summary>
    public static BoatModel Read(string boat, CommandStreams streams)
    {
        if (boat == StandardStream)
        {
            return Boat("standard input", BoatJson.Read(streams.In.ReadToEnd()));
        }

        if (IsJson(boat))
        {
            return ReadJson(boat);
        }

        using BoatStore store = BoatStore.Open(boat);
        return store.Head.Boat;
    }

    /// <summary>The boat of a boat file.</summary>
    public static BoatModel ReadJson(string path)
    {
        MustExist(path);
        using FileStream file = CommandFiles.Try(() => File.OpenRead(path), $"'{path}' cannot be read");
        return Boat(path, BoatJson.Read(file));
    }

    /// <summary>An alteration of the boat by its id or its name.</summary>
    public static Alteration Alteration(BoatModel boat, string named)
    {
        List<Alteration> all = [.. boat.All<Alteration>()];
        if (all.Find(alteration => alteration.Id == named) is { } found)
        {
            return found;
        }

        List<Alteration> sameName = all.FindAll(alteration => string.Equals(alteration.Name, named, StringComparison.OrdinalIgnoreCase));
        return sameName.Count switch
        {
            1 => sameName[0],
            0 when all.Count == 0 => throw new CommandException($"There is no alteration '{named}': the boat has none."),
            0 => throw new CommandException(
                $"There is no alteration '{named}'.{NearNames.Hint(named, all.Select(alteration => (alteration.Id, (string?)alteration.Name)))} The boat has: {string.Join(", ", all.Select(alteration => alteration.Id))}."),
            _ => throw new CommandException($"{sameName.Count} alterations are named '{named}'. Give the id of one: {string.Join(", ", sameName.Select(alteration => alteration.Id))}."),
        };
    }

    /// <summary>The boat as an alteration would leave her; what no longer fits is said.</summary>
    public static BoatModel Altered(BoatModel asBuilt, Alteration draft, TextWriter error)
    {
        EditOutcome outcome = AlteredBoat.Of(asBuilt, draft);
        if (outcome.Clashes.Count > 0)
        {
            error.WriteLine($"The boat has changed since '{draft.Id}' was drafted; left out: {string.Join(", ", outcome.Clashes.Select(clash => clash.Id))}.");
        }

        return outcome.Boat;
    }

    public static bool IsJson(string path) => path.EndsWith(".json", StringComparison.OrdinalIgnoreCase);

    public static void MustExist(string path) => CommandFiles.MustExist(path, "Check the name and the folder, or make a boat with: orlop new FILE.orlop");

    private static BoatModel Boat(string source, BoatReadResult read) => read.Boat ?? throw new CommandException(
        $"'{source}' is not a boat that can be used; {read.Problems.Count} {(read.Problems.Count == 1 ? "thing is" : "things are")} wrong in it:{Environment.NewLine}"
        + string.Join(Environment.NewLine, read.Problems));
}
