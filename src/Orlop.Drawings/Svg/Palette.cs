namespace Orlop.Drawings.Svg;

/// <summary>The colours of the drawings, as sRGB hex; the page's style sheet holds the same under the same names.</summary>
internal static class Palette
{
    internal const string Paper = "#f4f2ec";
    internal const string Sheet = "#fdfcf8";
    internal const string Ink = "#14242e";
    internal const string Soft = "#54636c";
    internal const string Line = "#dcd7ca";
    internal const string Water = "#cfe3ea";
    internal const string WaterLine = "#3b7f99";
    internal const string Band = "#e9e5da";
    internal const string Fails = "#b3261e";
    internal const string Draft = "#0b5fa5";
    internal const string DraftFill = "#dcebf7";
    internal const string Gone = "#6f757a";
    internal const string GoneText = "#596066";
    internal const string Gear = "#f1ecdd";
    internal const string Way = "#867e68";

    /// <summary>How much of the water's colour shows.</summary>
    internal const double WaterOpacityFraction = 0.55;
}
