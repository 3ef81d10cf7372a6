namespace Orlop.Hull.Measuring;

/// <summary>One reading of an inclining test.</summary>
/// <param name="Id">For messages.</param>
/// <param name="MomentKgM">Heeling moment of the weights moved, positive to starboard: mass times distance moved across.</param>
/// <param name="HeelTangentRatio">Deflection of the plumb line over its length, positive to starboard; -0.3 to 0.3.</param>
public sealed record InclinationReading(string Id, double MomentKgM, double HeelTangentRatio);
