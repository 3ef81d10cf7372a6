using System.Globalization;
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

    /// <summary>" A long lead is needed: …" where two nodes are further apart than two probes reach, or in two spaces; empty where they are near, or where they are is not known.</summary>
    public string LongLead(string node, string otherNode)
    {
        (Part? one, Part? other) = (PartOf(node), PartOf(otherNode));
        if (one is null || other is null || one.Id == other.Id)
        {
            return "";
        }

        double? apartM = DistanceM(one, other);
        bool areInTwo = one.Space is not null && other.Space is not null && one.Space != other.Space;
        if (!areInTwo && !(apartM > ProbesReachM))
        {
            return "";
        }

        string far = apartM is { } m ? string.Create(CultureInfo.InvariantCulture, $"the two points are about {m:0.#}\u00A0m apart{(areInTwo ? ", " : "")}") : "the two points are ";
        return $" A long lead is needed: {far}{(areInTwo ? $"in {Small(SpaceOf(one.Id) ?? one.Space!)} and {Small(SpaceOf(other.Id) ?? other.Space!)}" : "")}.";
    }

    /// <summary>The nearest to a node of these others: nearer than the one that is named by at least a probe's reach, or in the node's own space where that is not; null where there is none.</summary>
    public string? NearerTo(string node, string otherNode, IEnumerable<string> others)
    {
        if (PartOf(node) is not { } one || PartOf(otherNode) is not { } named || LongLead(node, otherNode).Length == 0)
        {
            return null;
        }

        double namedM = DistanceM(one, named) ?? double.PositiveInfinity;
        return others.Where(at => PartOf(at) is { } part && part.Id != named.Id && part.Id != one.Id
                && (DistanceM(one, part) <= namedM - ProbesReachM || (part.Space is not null && part.Space == one.Space && named.Space != one.Space)))
            .OrderBy(at => DistanceM(one, PartOf(at)!) ?? double.MaxValue).ThenBy(at => at, StringComparer.Ordinal).FirstOrDefault();
    }

    // A meter's own two leads, from the hand of one to the hand of the other; common practice, no source.
    private const double ProbesReachM = 1.5;

    private static double? DistanceM(Part one, Part other) => one.Place is { } a && other.Place is { } b
        ? Math.Sqrt(((a.XM - b.XM) * (a.XM - b.XM)) + ((a.YM - b.YM) * (a.YM - b.YM)) + ((a.ZM - b.ZM) * (a.ZM - b.ZM))) : null;

    // A conductor's end inside its crimp is where its terminal is.
    private Part? PartOf(string node)
    {
        if (!Terminal.TryParse(node, out Terminal terminal))
        {
            return null;
        }

        int joint = terminal.Name.IndexOf('@', StringComparison.Ordinal);
        return joint >= 0 && boat.Find<Cable>(terminal.Part)?.Cores.FirstOrDefault(core => core.Id == terminal.Name[..joint]) is { } core
            ? boat.Find<Part>((terminal.Name[joint..] == "@from" ? core.From : core.To).Part)
            : boat.Find<Part>(terminal.Part);
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
