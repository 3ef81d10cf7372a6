namespace Orlop.Hull.Measuring;

/// <summary>A point of a fitted line, and how sure the line is there.</summary>
/// <param name="HeelTangentRatio">Tangent of heel, starboard positive.</param>
/// <param name="MomentKgM">Moment of the line, to starboard positive.</param>
/// <param name="HalfBandKgM">Half-width of the line's band of 95 % (Student's t; Draper and Smith, Applied Regression Analysis, 1.4, from memory).</param>
public sealed record LineBandPoint(double HeelTangentRatio, double MomentKgM, double HalfBandKgM);
