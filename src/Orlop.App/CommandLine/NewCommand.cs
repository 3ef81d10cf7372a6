using System.CommandLine;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Orlop.Store;

namespace Orlop.App.CommandLine;

/// <summary><c>orlop new</c>: a boat from a handful of measurements.</summary>
internal static class NewCommand
{
    public static Command Make(CommandStreams streams)
    {
        Argument<string> file = new("file") { Description = "The store to make, named with .orlop." };
        Option<string?> name = new("--name") { Description = "What she is called." };
        Option<string?> length = new("--length") { Description = "Length over all: 10.6 m, 34 ft 9." };
        Option<string?> beam = new("--beam") { Description = "Greatest breadth." };
        Option<string?> depth = new("--depth") { Description = "Depth amidships, base line to deck edge." };
        Option<string?> draught = new("--draught") { Description = "Draught as she usually floats." };
        Option<string?> material = new("--material") { Description = "steel, aluminium, grp, wood or other; left out, it is not known." };
        material.AcceptOnlyFromAmong("steel", "aluminium", "grp", "wood", "other");
        Option<string> practice = new("--practice") { Description = "iso-small-craft, us-federal or owner.", DefaultValueFactory = _ => "iso-small-craft" };
        practice.AcceptOnlyFromAmong("iso-small-craft", "us-federal", "owner");
        Option<string> units = UnitsOption.Make();
        Command command = new("new", "Make a boat from a handful of measurements.") { file, name, length, beam, depth, draught, material, practice, units };
        command.SetAction(parsed =>
        {
            DisplayUnits typedIn = UnitsOption.Of(parsed.GetValue(units));
            string path = parsed.GetValue(file)!;
            MustBeFree(path);
            NewBoat boat = new(
                parsed.GetValue(name) ?? Path.GetFileNameWithoutExtension(path),
                Length("--length", parsed.GetValue(length), typedIn),
                Length("--beam", parsed.GetValue(beam), typedIn),
                Length("--depth", parsed.GetValue(depth), typedIn),
                Length("--draught", parsed.GetValue(draught), typedIn),
                parsed.GetValue(material) is { } hull ? Enum.Parse<HullMaterial>(hull, ignoreCase: true) : null,
                parsed.GetValue(practice)!);
            using BoatStore store = BoatStore.Create(path, boat.Make(), "A new boat");
            streams.Out.WriteLine($"Made {store.Path}. Open it with: orlop serve {CommandFiles.Typed(path)}");
            return ExitCode.Good;
        });
        return command;
    }

    private static void MustBeFree(string path)
    {
        if (Directory.Exists(path))
        {
            throw new CommandException($"'{path}' is a folder. Name a file in it: orlop new {CommandFiles.Typed(Path.Combine(path, "boat.orlop"))}");
        }

        if (!path.EndsWith(".orlop", StringComparison.OrdinalIgnoreCase))
        {
            throw new CommandException($"'{path}': a boat's own file is named with .orlop, as in: orlop new {CommandFiles.Typed(Path.ChangeExtension(path, ".orlop"))}");
        }
    }

    private static Quantity? Length(string option, string? typed, DisplayUnits units)
    {
        if (typed is null)
        {
            return null;
        }

        QuantityReading read = QuantityText.Parse(typed, "M", units, UnitsOption.Culture);
        return read.Quantity ?? throw new CommandException($"{option} '{typed}': {read.Refusal}");
    }
}
