namespace Orlop.Drawings.Paper;

/// <summary>A sheet of paper. A4: ISO 216; Letter: ANSI/ASME Y14.1 size A.</summary>
public enum PaperSize { A4, Letter }

internal static class PaperSizes
{
    internal static (double WidthMm, double HeightMm) Of(PaperSize size) => size == PaperSize.Letter ? (215.9, 279.4) : (210, 297);
}
