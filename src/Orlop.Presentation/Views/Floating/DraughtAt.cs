namespace Orlop.Presentation.Views.Floating;

/// <summary>How high the water stands over the base line at a place along the boat, on the centre line.</summary>
/// <param name="Where">"aft", "amidships" or "forward": the after end of the hull, the middle, the forward end.</param>
/// <param name="XM">That place, forward of the after perpendicular.</param>
/// <param name="DraughtM">Height of the water over the base line there, below 0 under it.</param>
public sealed record DraughtAt(string Where, double XM, double DraughtM);
