using System.Globalization;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Surfaces;
using Orlop.Presentation.Quantities;

namespace Orlop.Presentation.Views.Hulls;

/// <summary>A hull that is begun from a starting form, as typed.</summary>
public sealed class StartingHull(DisplayUnits units, CultureInfo culture)
{
    private const int MillimetreDecimals = 3;

    /// <summary>The forms to choose from, the commonest first, each in a few words.</summary>
    public static IReadOnlyList<(StartingShape Shape, string Name, string About)> Shapes { get; } =
    [
        (StartingShape.SingleChine, "Single chine", "V bottom, one hard chine, transom"),
        (StartingShape.RoundBilge, "Round bilge", "round sections, transom"),
        (StartingShape.FlatBottom, "Flat bottom", "flat across, flared sides, transom"),
        (StartingShape.DoubleEnder, "Double-ender", "round sections, pointed at both ends"),
        (StartingShape.Barge, "Barge", "box with raked ends"),
        (StartingShape.Box, "Box", "pontoon, square ends"),
    ];

    public StartingShape Shape { get; set; } = StartingShape.SingleChine;

    /// <summary>Length over all, as typed.</summary>
    public string Length { get; set; } = "";

    /// <summary>Greatest beam, as typed.</summary>
    public string Beam { get; set; } = "";

    /// <summary>Where the depth is taken: there every starting form has it within a hundredth.</summary>
    public static string DepthHint => "from the keel to the deck edge, at 40 to 50 % of her length from aft";

    /// <summary>Depth amidships from keel to deck edge, as typed.</summary>
    public string Depth { get; set; } = "";

    /// <summary>Why each cannot be used; null where it can.</summary>
    public string? LengthRefusal { get; private set; }

    /// <summary>Why the beam cannot be used.</summary>
    public string? BeamRefusal { get; private set; }

    /// <summary>Why the depth cannot be used.</summary>
    public string? DepthRefusal { get; private set; }

    /// <summary>Begins with what the particulars say.</summary>
    public StartingHull From(Particulars? particulars)
    {
        (Length, Beam, Depth) = (Text(particulars?.LengthOverAllM?.Value), Text(particulars?.BeamM?.Value), Text(particulars?.DepthM?.Value));
        return this;

        string Text(double? m) => HullCell.Text(m, units, culture);
    }

    /// <summary>The lines, to the millimetre; null with the refusals set where something cannot be used.</summary>
    public HullLines? Make(HullLines? before)
    {
        LengthRefusal = Read(Length, 2, 60, "Length over all", out double lengthM);
        BeamRefusal = Read(Beam, 0.4, 20, "Greatest beam", out double beamM);
        DepthRefusal = Read(Depth, 0.2, 10, "Depth amidships", out double depthM);
        return LengthRefusal is null && BeamRefusal is null && DepthRefusal is null
            ? HullEdit.Of(StartingForm.Create("hull", Shape, lengthM, beamM, depthM), before, MillimetreDecimals, StationOrigin.Form)
            : null;
    }

    /// <summary>The particulars with the sizes that were typed where they said none; null where nothing of them is empty, or there are none.</summary>
    public Particulars? Fill(Particulars? particulars)
    {
        if (particulars is null or { LengthOverAllM: not null, BeamM: not null, DepthM: not null })
        {
            return null;
        }

        Quantity? Typed(string text) => QuantityText.Parse(text, "M", units, culture).Quantity;
        return particulars with
        {
            LengthOverAllM = particulars.LengthOverAllM ?? Typed(Length),
            BeamM = particulars.BeamM ?? Typed(Beam),
            DepthM = particulars.DepthM ?? Typed(Depth),
        };
    }

    private string? Read(string typed, double leastM, double mostM, string name, out double m)
    {
        QuantityReading read = QuantityText.Parse(typed, "M", units, culture);
        m = read.Quantity?.Value ?? 0;
        return read.Quantity is null ? $"{name}: {read.Refusal ?? "it is not given."}"
            : m >= leastM && m <= mostM ? null
            : $"{name}: found {HullCell.Text(m, units, culture)}; allowed {HullCell.Text(leastM, units, culture)} to {HullCell.Text(mostM, units, culture)}.";
    }
}
