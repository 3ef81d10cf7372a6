namespace Orlop.Hull.Measuring;

/// <summary>A line through readings by least squares, moments over tangents of heel.</summary>
/// <param name="SlopeKgM">Moment per unit tangent: displacement times GM.</param>
/// <param name="SlopeDeviationKgM">Standard deviation of the slope.</param>
/// <param name="InterceptKgM">Moment at no heel; 0 for a line through the origin.</param>
/// <param name="GmM">Slope over displacement.</param>
/// <param name="GmDeviationM">Standard deviation of GM, that of the displacement included.</param>
/// <param name="GmHalfBandM">Half-width of GM's band of 95 % (Student's t on the slope, 1.96 on the displacement, combined as squares).</param>
public sealed record LineFit(double SlopeKgM, double SlopeDeviationKgM, double InterceptKgM, double GmM, double GmDeviationM, double GmHalfBandM);
