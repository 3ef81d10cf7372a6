using System.Globalization;
using Orlop.Work.Loading;

namespace Orlop.App.CommandLine;

/// <summary>Tells on the error stream how far the draws of a sheet are, every tenth of each condition.</summary>
internal sealed class DrawsTold(TextWriter error) : IProgress<SheetProgress>
{
    private const int StepCount = 10;
    private readonly Lock _lock = new();
    private (string Condition, int Step)? _told;

    public void Report(SheetProgress value)
    {
        int step = (int)(value.DoneFraction * StepCount);
        lock (_lock)
        {
            // Draws go on in several threads: what comes late is not told.
            if (_told is { } told && told.Condition == value.Condition && step <= told.Step)
            {
                return;
            }

            _told = (value.Condition, step);
            error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Drawing her weight, {value.Condition}: {step * (100 / StepCount)} %. Ctrl+C stops it."));
        }
    }
}
