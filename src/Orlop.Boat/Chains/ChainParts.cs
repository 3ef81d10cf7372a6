using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Boat.Chains;

/// <summary>The things a chain is being made of, with ids and names after its load.</summary>
internal sealed class ChainParts(BoatModel boat, string loadName)
{
    private readonly List<Thing> _things = [];
    private readonly HashSet<string> _given = new(StringComparer.Ordinal);

    /// <summary>Everything made so far, from the feeding end.</summary>
    public IReadOnlyList<Thing> Things => _things;

    /// <summary>A readable id that is free in the boat and in this chain.</summary>
    public string Id(string words)
    {
        string id = ReadableId.Of($"{loadName} {words}", taken => boat.Find(taken) is not null || _given.Contains(taken));
        _given.Add(id);
        return id;
    }

    /// <summary>What people call a part of it: "Winch fuse".</summary>
    public string Title(string words) => $"{loadName} {words}";

    public void Add(Thing thing) => _things.Add(thing);

    /// <summary>Bolts a one-pole device to a terminal by a link; gives the terminal behind it.</summary>
    public Terminal Join(Terminal feed, Part device)
    {
        _things.Add(new Link { Id = Id("link"), Name = Title("link"), From = feed, To = device.At(TerminalNames.In) });
        _things.Add(device);
        return device.At(TerminalNames.Out);
    }
}
