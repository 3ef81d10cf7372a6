namespace Orlop.Work.Loading;

/// <summary>How far a loading and stability sheet with draws is.</summary>
/// <param name="Condition">What the condition is called whose draws go on.</param>
/// <param name="DoneFraction">Share of its draws, 0 to 1.</param>
public readonly record struct SheetProgress(string Condition, double DoneFraction);

/// <summary>Tells the draws of one condition on, from the thread that draws.</summary>
internal sealed class DrawsProgress(string condition, IProgress<SheetProgress> progress) : IProgress<double>
{
    public void Report(double value) => progress.Report(new SheetProgress(condition, value));
}
