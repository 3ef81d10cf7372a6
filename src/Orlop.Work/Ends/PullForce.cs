namespace Orlop.Work.Ends;

/// <summary>Least pull-out force of a crimp.</summary>
/// <param name="ForceN">In newtons.</param>
/// <param name="Gauge">The gauge it is given for: the largest that is not larger than the conductor.</param>
/// <param name="Source">Where the value is from.</param>
public sealed record PullForce(double ForceN, string Gauge, string Source);
