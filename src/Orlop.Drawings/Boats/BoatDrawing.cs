using Orlop.Boat;

namespace Orlop.Drawings.Boats;

/// <summary>The boat to scale, as SVG: as built, and what an alteration would add (blue), take out (dashed grey) and move (arrow).</summary>
public static class BoatDrawing
{
    /// <summary>Seen from starboard, bow to the right.</summary>
    public static string Profile(BoatModel asBuilt, BoatModel? altered, BoatDrawingOptions options) =>
        new BoatSheet(asBuilt, altered, options).Draw("Profile", showsProfile: true);

    /// <summary>Seen from above, bow to the right, port side up.</summary>
    public static string Plan(BoatModel asBuilt, BoatModel? altered, BoatDrawingOptions options) =>
        new BoatSheet(asBuilt, altered, options).Draw("Plan", showsPlan: true);

    /// <summary>Profile and sections, where the water is seen.</summary>
    public static string ProfileAndSections(BoatModel asBuilt, BoatModel? altered, BoatDrawingOptions options) =>
        new BoatSheet(asBuilt, altered, options).Draw("Profile and sections", showsProfile: true, showsSections: true);

    /// <summary>Cuts across the boat, looking forward, at the options' places.</summary>
    public static string Sections(BoatModel asBuilt, BoatModel? altered, BoatDrawingOptions options) =>
        new BoatSheet(asBuilt, altered, options).Draw("Sections", showsSections: true);

    /// <summary>Profile, plan and sections on one sheet at one scale.</summary>
    public static string All(BoatModel asBuilt, BoatModel? altered, BoatDrawingOptions options) =>
        new BoatSheet(asBuilt, altered, options).Draw("Profile, plan and sections", showsProfile: true, showsPlan: true, showsSections: true);

    /// <summary>The largest usual scale, as its denominator (50 for 1:50), at which the boat's length fits a width on paper in mm; the smallest usual one where none does.</summary>
    public static double ScaleDenominatorRatioFor(BoatModel boat, double paperWidthMm) => new BoatSheet(boat, null, new BoatDrawingOptions()).ScaleFor(paperWidthMm);
}
