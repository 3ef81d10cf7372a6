using System.Globalization;
using Orlop.Drawings.Paper;
using Orlop.Presentation.Quantities;

namespace Orlop.Work.Paper;

/// <summary>How a pack is put on paper.</summary>
/// <param name="On">The day printed on it.</param>
/// <param name="Revision">The revision of the boat's store it was made from; null for a boat file, which has none.</param>
public sealed record PaperOptions(DateOnly On, string? Revision = null)
{
    /// <summary>The paper of the pages: A4 or Letter.</summary>
    public PaperSize Size { get; init; } = PaperSize.A4;

    /// <summary>The paper of the one-line diagram, used on its side; that of the pages where nobody chose one.</summary>
    public PaperSize? DiagramSize { get; init; }

    /// <summary>Address at which what is done and read is typed in; null for a file, which leads nowhere.</summary>
    public string? RecordHref { get; init; }

    public DisplayUnits Units { get; init; } = DisplayUnits.Metric;

    public CultureInfo Culture { get; init; } = CultureInfo.InvariantCulture;
}
