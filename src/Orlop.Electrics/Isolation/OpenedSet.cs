namespace Orlop.Electrics.Isolation;

/// <summary>Which devices are opened and which sources stopped, by their number in the wiring.</summary>
internal sealed class OpenedSet(bool[] devices, bool[] sources)
{
    public bool IsOpened(int device) => devices[device];

    public bool IsStopped(int source) => sources[source];

    public OpenedSet WithoutDevice(int device) => new(Without(devices, device), sources);

    public OpenedSet WithoutSource(int source) => new(devices, Without(sources, source));

    private static bool[] Without(bool[] set, int item)
    {
        bool[] fewer = [.. set];
        fewer[item] = false;
        return fewer;
    }
}
