namespace Orlop.Drawings.Paper;

/// <summary>A wrap-around label for one end of a cable.</summary>
/// <param name="Id">What it is called, printed largest.</param>
/// <param name="From">Where it comes from; what it is, where <paramref name="To"/> is empty.</param>
/// <param name="To">Where it goes.</param>
/// <param name="Size">Conductor size, as people read it.</param>
/// <param name="Fuse">What protects it; empty where nothing does.</param>
public sealed record CableLabel(string Id, string From, string To, string Size, string Fuse);
