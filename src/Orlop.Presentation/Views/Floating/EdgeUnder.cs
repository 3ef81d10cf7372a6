namespace Orlop.Presentation.Views.Floating;

/// <summary>Heel to either side at which the deck edge goes under.</summary>
/// <param name="StarboardDeg">To starboard, 0 to 180; null where it stays dry.</param>
/// <param name="PortDeg">To port, 0 to 180; null where it stays dry.</param>
internal sealed record EdgeUnder(double? StarboardDeg, double? PortDeg);
