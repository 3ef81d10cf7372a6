namespace Orlop.Work.Readings;

/// <summary>Progress of one of several equal parts, told as progress of the whole.</summary>
internal sealed class PartOfProgress(IProgress<double> whole, int index, int count) : IProgress<double>
{
    public void Report(double value) => whole.Report((index + value) / count);
}
