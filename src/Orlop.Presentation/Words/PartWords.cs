using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;

namespace Orlop.Presentation.Words;

/// <summary>Names of a boat's things, terminals and elements as people say them.</summary>
public sealed class PartWords(BoatModel boat)
{
    /// <summary>What people call a thing; its id where it is not in the boat.</summary>
    public string Title(string id) => boat.Find(id)?.Title ?? id;

    /// <summary>What people call it and the space it is in: "Main isolator (after locker)".</summary>
    public string Located(string id) => SpaceOf(id) is { } space ? $"{Title(id)} ({Small(space)})" : Title(id);

    /// <summary>What the space of a thing is called, or null.</summary>
    public string? SpaceOf(string id) => boat.Find(id) switch
    {
        Part { Space: { } space } => boat.Find<Space>(space)?.Title,
        Gear { Space: { } space } => boat.Find<Space>(space)?.Title,
        _ => null,
    };

    /// <summary>A terminal: "Winch fuse, out".</summary>
    public string At(Terminal terminal) => TerminalName(terminal.Name) is { Length: > 0 } name ? $"{Title(terminal.Part)}, {name}" : Title(terminal.Part);

    /// <summary>A node: a terminal, or a conductor's end inside its crimp.</summary>
    public string Node(string node)
    {
        if (!Terminal.TryParse(node, out Terminal terminal))
        {
            return node;
        }

        int joint = terminal.Name.IndexOf('@', StringComparison.Ordinal);
        if (joint < 0 || boat.Find<Cable>(terminal.Part) is not { } cable || cable.Cores.FirstOrDefault(core => core.Id == terminal.Name[..joint]) is not { } core)
        {
            return At(terminal);
        }

        return $"the copper of {cable.Title}, {CoreName(core.Id)}, at {At(terminal.Name[joint..] == "@from" ? core.From : core.To)}";
    }

    /// <summary>An element of the network: a crimp, a core, a device.</summary>
    public string Element(string id)
    {
        string owner = ElementIds.ThingOf(id);
        if (boat.Find<Cable>(owner) is { } cable && id.Length > owner.Length)
        {
            string rest = id[(owner.Length + 1)..];
            int joint = rest.IndexOf('@', StringComparison.Ordinal);
            string coreId = joint < 0 ? rest : rest[..joint];
            Core? core = cable.Cores.FirstOrDefault(core => core.Id == coreId);
            return core is null || joint < 0
                ? $"{cable.Title}, {CoreName(coreId)}"
                : $"the end of {cable.Title}, {CoreName(coreId)}, at {At(rest[joint..] == "@from" ? core.From : core.To)}";
        }

        return id.EndsWith(".2", StringComparison.Ordinal) ? $"{Title(owner)}, second pole" : Title(owner);
    }

    /// <summary>A core: "plus core".</summary>
    public static string CoreName(string coreId) => $"{coreId} core";

    /// <summary>A title inside a sentence: its first letter small, unless the word is all capitals or has a digit.</summary>
    public static string Small(string title) =>
        title.Length > 1 && char.IsUpper(title[0]) && char.IsLower(title[1]) ? char.ToLowerInvariant(title[0]) + title[1..] : title;

    private static string TerminalName(string name) => name switch
    {
        TerminalNames.Plus => "plus",
        TerminalNames.Minus => "minus",
        TerminalNames.In2 => "second pole in",
        TerminalNames.Out2 => "second pole out",
        TerminalNames.InPlus => "input plus",
        TerminalNames.InMinus => "input minus",
        TerminalNames.OutPlus => "output plus",
        TerminalNames.OutMinus => "output minus",
        TerminalNames.Live => "live",
        TerminalNames.Neutral => "neutral",
        TerminalNames.Earth => "earth",
        TerminalNames.Bar => "",
        TerminalNames.A2 => "a, second pole",
        TerminalNames.B2 => "b, second pole",
        _ => name,
    };
}
