using System.Globalization;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Views.Hulls;

namespace Orlop.Drawings.Hulls;

/// <summary>How a hull's lines are drawn.</summary>
public sealed record LinesOptions
{
    /// <summary>Id of the drawing's outermost element, unique on its page.</summary>
    public string Id { get; init; } = "hull-lines-drawing";

    /// <summary>Width of the drawing in drawing units of 1/96 in, from 240.</summary>
    public double WidthPx { get; init; } = 800;

    /// <summary>The station that is worked on, counted from 0; null for none.</summary>
    public int? ChosenStation { get; init; }

    /// <summary>The starboard side is worked on, of a boat whose sides differ.</summary>
    public bool IsStarboard { get; init; }

    /// <summary>The hull as last kept, its chosen station drawn dashed; null where nothing differs.</summary>
    public HullFacts? Kept { get; init; }

    /// <summary>A point is held: the drawing keeps the scale of the hull as last kept, so that the point stays under the hand.</summary>
    public bool IsHeld { get; init; }

    /// <summary>Units of grid, scale bar and marks.</summary>
    public DisplayUnits Units { get; init; } = DisplayUnits.Metric;

    /// <summary>How numbers are written.</summary>
    public CultureInfo Culture { get; init; } = CultureInfo.InvariantCulture;
}
