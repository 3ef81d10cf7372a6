using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;

namespace Orlop.Boat.Chains;

/// <summary>What an edit of a chain comes to: edits, or why it cannot be done.</summary>
public sealed record ChainEdit(IReadOnlyList<Edit> Edits, string? Refusal = null)
{
    internal static ChainEdit Refused(string why) => new([], why);
}

/// <summary>Puts a one-pole device into a chain's way out, or takes one from it.</summary>
public static class ChainEditing
{
    /// <summary>Puts a device behind the chain item with this index; -1 puts it at the source. The conductor there is moved to the device, which is bolted on by a link.</summary>
    public static ChainEdit Insert(BoatModel boat, Chain chain, int behind, Part device)
    {
        if (device is not (Protection { IsTwoPole: false } or IsolatorSwitch { IsTwoPole: false }))
        {
            return ChainEdit.Refused("Only a one-pole fuse, breaker or isolator can be put in here; give a plug or a two-pole device in its own sheet.");
        }

        if (behind < -1 || behind >= chain.Out.Length)
        {
            return ChainEdit.Refused("There is no such place in the chain.");
        }

        string node = behind < 0 ? chain.Out[0].EnteredAt : chain.Out[behind].LeftAt;
        Thing? next = behind + 1 < chain.Out.Length ? chain.Out[behind + 1].Thing : null;
        string linkId = ReadableId.Of($"{device.Id} link", id => boat.Find(id) is not null || id == device.Id);
        if (next is Cable or Link)
        {
            Link link = new() { Id = linkId, Name = $"{device.Title} link", From = Terminal.Parse(node), To = device.At(TerminalNames.In) };
            return new ChainEdit([BoatEdits.Add(device), BoatEdits.Add(link), BoatEdits.Replace(next, Moved(next, node, device.At(TerminalNames.Out)))]);
        }

        if (behind >= 0 && chain.Out[behind].Thing is Cable or Link)
        {
            Thing before = chain.Out[behind].Thing;
            Link link = new() { Id = linkId, Name = $"{device.Title} link", From = device.At(TerminalNames.Out), To = Terminal.Parse(node) };
            return new ChainEdit([BoatEdits.Add(device), BoatEdits.Add(link), BoatEdits.Replace(before, Moved(before, node, device.At(TerminalNames.In)))]);
        }

        return ChainEdit.Refused("Nothing that could be moved meets there.");
    }

    /// <summary>Takes a device out of the chain, with the link it was bolted on by; the conductor behind it is moved to where the link was.</summary>
    public static ChainEdit Remove(BoatModel boat, Wiring wiring, Chain chain, string deviceId)
    {
        int at = chain.Out.ToList().FindIndex(item => item.Thing.Id == deviceId);
        if (at < 0 || chain.Out[at].Thing is not Part device || chain.Out[at].Edges.Length != 1)
        {
            return ChainEdit.Refused("Only a fuse, breaker, switch or other device in the way out can be taken from the chain.");
        }

        string[] others = [.. device.TerminalNames.Select(name => device.At(name).ToString())
            .SelectMany(node => wiring.At(node)).Where(edge => edge.Owner.Id != deviceId
                && edge.Owner.Id != Neighbour(chain, at - 1)?.Id && edge.Owner.Id != Neighbour(chain, at + 1)?.Id)
            .Select(edge => edge.Owner.Title).Distinct()];
        if (others.Length > 0)
        {
            return ChainEdit.Refused($"{string.Join(", ", others)} {(others.Length == 1 ? "is" : "are")} connected to {device.Title} too; move that first.");
        }

        ChainEdit? ahead = BoltedAhead(chain, at, device), behind = BoltedBehind(chain, at, device);
        bool isBoltedBehind = Neighbour(chain, at + 1)?.Id.StartsWith($"{device.Id}-", StringComparison.Ordinal) == true;
        if ((isBoltedBehind ? behind ?? ahead : ahead ?? behind) is { } edit)
        {
            return edit;
        }

        return ChainEdit.Refused($"Without {device.Title} two cables would meet with nothing to join them; lead one of them elsewhere in its own sheet first.");
    }

    private static ChainEdit? BoltedAhead(Chain chain, int at, Part device) =>
        Neighbour(chain, at - 1) is Link link && Neighbour(chain, at + 1) is { } next and (Cable or Link)
            ? new ChainEdit([BoatEdits.Replace(next, Moved(next, chain.Out[at].LeftAt, Terminal.Parse(chain.Out[at - 1].EnteredAt))), BoatEdits.Remove(link), BoatEdits.Remove(device)])
            : null;

    private static ChainEdit? BoltedBehind(Chain chain, int at, Part device) =>
        Neighbour(chain, at + 1) is Link link && Neighbour(chain, at - 1) is { } before and (Cable or Link)
            ? new ChainEdit([BoatEdits.Replace(before, Moved(before, chain.Out[at].EnteredAt, Terminal.Parse(chain.Out[at + 1].LeftAt))), BoatEdits.Remove(link), BoatEdits.Remove(device)])
            : null;

    private static Thing? Neighbour(Chain chain, int index) => index >= 0 && index < chain.Out.Length ? chain.Out[index].Thing : null;

    // A cable's cores and a link may touch a node with either end.
    private static Thing Moved(Thing conductor, string from, Terminal to) => conductor switch
    {
        Link link => link with { From = link.From.ToString() == from ? to : link.From, To = link.To.ToString() == from ? to : link.To },
        Cable cable => cable with { Cores = cable.Cores.Select(core => Moved(core, from, to)).ToValueList() },
        _ => conductor,
    };

    private static Core Moved(Core core, string from, Terminal to) =>
        core with { From = core.From.ToString() == from ? to : core.From, To = core.To.ToString() == from ? to : core.To };
}
