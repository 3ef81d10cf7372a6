using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Boat.Topology;

/// <summary>How the elements and nodes of the network are named, from the boat's things. One rule for engine, drawing, label and reading.</summary>
public static class ElementIds
{
    /// <summary>A core: <c>cable.core</c>.</summary>
    public static string Core(Cable cable, Core core) => $"{cable.Id}.{core.Id}";

    /// <summary>The joint at the first end of a core, and the node inside it: <c>cable.core@from</c>.</summary>
    public static string FromJoint(Cable cable, Core core) => $"{cable.Id}.{core.Id}@from";

    /// <summary>The joint at the other end of a core, and the node inside it: <c>cable.core@to</c>.</summary>
    public static string ToJoint(Cable cable, Core core) => $"{cable.Id}.{core.Id}@to";

    /// <summary>The second pole of a two-pole device; the first has the device's own id.</summary>
    public static string SecondPole(Part device) => $"{device.Id}.2";

    /// <summary>The node of a terminal.</summary>
    public static string Node(Terminal terminal) => terminal.ToString();

    /// <summary>The id of the thing an element or node belongs to: what stands before the first dot.</summary>
    public static string ThingOf(string elementOrNode)
    {
        int dot = elementOrNode.IndexOf('.', StringComparison.Ordinal);
        return dot < 0 ? elementOrNode : elementOrNode[..dot];
    }
}
