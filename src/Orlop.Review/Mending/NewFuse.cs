using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Review.Mending;

/// <summary>A fuse that mending puts in, beside the thing that feeds it.</summary>
internal static class NewFuse
{
    // A fuse in its holder, so that its terminals are where the thing beside it is.
    private static readonly BoxSize Size = new(0.09, 0.05, 0.05);

    /// <summary>The fuse of a catalogue part; without a place where what feeds it has none, and then without mass, for it stands nowhere.</summary>
    public static Protection Of(CataloguePart part, string id, string name, Part? feed) => new()
    {
        Id = id,
        Name = name,
        Means = ProtectionMeans.Fuse,
        RatedA = part.RatedA!,
        RatedV = part.RatedV,
        BreakingA = part.BreakingA,
        Gates = part.Gates,
        ResistanceOhm = part.ResistanceOhm,
        Place = feed?.Place,
        Size = feed?.Place is null ? null : Size,
        Space = feed?.Space,
        MassKg = feed?.Place is null ? null : Mounting.MassKg(part),
        Note = MendBench.NoteOf(part),
    };

    /// <summary>The strap that bolts a fuse to what feeds it; its length and resistance are common practice, no source.</summary>
    public static Link Strap(Protection fuse, Terminal feed) => new()
    {
        Id = $"{fuse.Id}-link",
        From = feed,
        To = fuse.At(TerminalNames.In),
        LengthM = new Quantity(0.05, Knowledge.Estimated),
        ResistanceOhm = new Quantity(0.00005, Knowledge.Estimated),
    };
}
