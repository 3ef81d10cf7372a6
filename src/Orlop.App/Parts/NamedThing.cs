namespace Orlop.App.Parts;

/// <summary>A thing of a drawing, to be chosen among others.</summary>
/// <param name="Id">Its id in the drawing.</param>
/// <param name="Name">What it is called there.</param>
public sealed record NamedThing(string Id, string Name);
