using System.Globalization;
using Orlop.Review.Mending;

namespace Orlop.App.CommandLine;

/// <summary>Tells on the error stream how far a search is, after every so many reviews.</summary>
internal sealed class MendTold(TextWriter error) : IProgress<MendProgress>
{
    private const int Every = 50;

    public void Report(MendProgress value)
    {
        if (value.ReviewedCount % Every == 0)
        {
            error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Reviewed {value.ReviewedCount} sets, at most {value.MostCount}{(value.HasFound ? "; one that clears it is found" : "")}. Ctrl+C stops it."));
        }
    }
}
