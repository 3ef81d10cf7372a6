namespace Orlop.Hull.Measuring;

/// <summary>One reading of an inclining test.</summary>
/// <param name="Id">For messages.</param>
/// <param name="MomentKgM">Heeling moment of the weights moved, positive to starboard: mass times distance moved across.</param>
/// <param name="HeelTangentRatio">Deflection of the plumb line over its length, positive to starboard; -0.3 to 0.3.</param>
/// <param name="ReadToRatio">One standard deviation of that tangent, by how finely it can be read: 0 to 0.1; 0 where nothing is said of it.</param>
public sealed record InclinationReading(string Id, double MomentKgM, double HeelTangentRatio, double ReadToRatio = 0);
