using System.Globalization;
using Orlop.Presentation.Views;
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
            error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Reviewed {value.ReviewedCount} sets, at most {value.MostCount}{(MendView.Near(value, CultureInfo.InvariantCulture) is { } near ? $"; {near.Replace('\u00A0', ' ')}" : "")}. Ctrl+C stops it and tells the best found so far."));
        }
    }
}
