namespace Orlop.App.Parts;

/// <summary>The steps in which a drawing grows and shrinks.</summary>
/// <param name="Factor">How much larger than its own size it is drawn.</param>
/// <param name="LeastFactor">The smallest it may become, up to 1.</param>
public sealed record DrawingZoom(double Factor, double LeastFactor)
{
    private const double Nearly = 0.01;
    private static readonly double[] Steps = [0.25, 0.35, 0.5, 0.7, 1, 1.5, 2, 3, 4, 6];

    /// <summary>The largest it may become.</summary>
    public const double MostFactor = 6;

    /// <summary>It can grow further.</summary>
    public bool CanGrow => Factor < MostFactor - Nearly;

    /// <summary>It can shrink further.</summary>
    public bool CanShrink => Factor > LeastFactor + Nearly;

    /// <summary>The next step up.</summary>
    public DrawingZoom Grown() => this with { Factor = Steps.FirstOrDefault(step => step > Factor + Nearly, MostFactor) };

    /// <summary>The next step down.</summary>
    public DrawingZoom Shrunk() => this with { Factor = Math.Max(LeastFactor, Steps.LastOrDefault(step => step < Factor - Nearly, LeastFactor)) };
}
