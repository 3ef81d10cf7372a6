using System.Globalization;
using Orlop.Presentation.Quantities;

namespace Orlop.Drawings.Circuits;

/// <summary>How a one-line diagram is drawn and in whose units.</summary>
public sealed record OneLineOptions
{
    /// <summary>Id of the drawing's outermost element, unique on its page.</summary>
    public string Id { get; init; } = "one-line";

    /// <summary>Every part and cable can be reached by keyboard and clicked.</summary>
    public bool IsInteractive { get; init; }

    /// <summary>Names and ratings take the room they need; otherwise a long one is cut.</summary>
    public bool AreNamesWhole { get; init; }

    /// <summary>The diagram reads downwards in this width, in drawing units of 1/96 in, from 240; from left to right in the width it needs where this is null.</summary>
    public double? DownwardWidthPx { get; init; }

    /// <summary>How much larger than its own size it is shown, above 0.</summary>
    public double ScaleFactor { get; init; } = 1;

    /// <summary>Units of the labels.</summary>
    public DisplayUnits Units { get; init; } = DisplayUnits.Metric;

    /// <summary>How numbers are written.</summary>
    public CultureInfo Culture { get; init; } = CultureInfo.InvariantCulture;
}
