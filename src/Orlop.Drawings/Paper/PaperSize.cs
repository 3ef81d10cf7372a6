namespace Orlop.Drawings.Paper;

/// <summary>A sheet of paper. A3, A4: ISO 216; Letter, Tabloid: ANSI/ASME Y14.1 sizes A and B.</summary>
public enum PaperSize { A4, Letter, A3, Tabloid }

/// <summary>How large sheets are, and what they are called where the owner chooses one.</summary>
public static class PaperSizes
{
    /// <summary>The name in lower case, as options and addresses write it.</summary>
    public static string NameOf(PaperSize size) => size switch { PaperSize.A4 => "a4", PaperSize.Letter => "letter", PaperSize.A3 => "a3", _ => "tabloid" };

    /// <summary>The size of a name in any case; null where there is none.</summary>
    public static PaperSize? Named(string? name) => Enum.GetValues<PaperSize>().Cast<PaperSize?>().FirstOrDefault(size => string.Equals(NameOf(size!.Value), name, StringComparison.OrdinalIgnoreCase));

    /// <summary>Width and height upright, mm.</summary>
    public static (double WidthMm, double HeightMm) Of(PaperSize size) => size switch
    {
        PaperSize.A4 => (210, 297),
        PaperSize.Letter => (215.9, 279.4),
        PaperSize.A3 => (297, 420),
        _ => (279.4, 431.8),
    };
}
