namespace Orlop.App.Parts;

/// <summary>The room a page has for a drawing.</summary>
/// <param name="WidthPx">Width of the box it stands in, in pixels; null until the browser has told it.</param>
/// <param name="ZoomFactor">How much larger than at first it is wanted, from 0.1 to 6.</param>
public sealed record DrawingRoom(double? WidthPx, double ZoomFactor);
