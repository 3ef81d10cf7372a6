using System.Globalization;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;

namespace Orlop.Drawings.Boats;

/// <summary>What a boat drawing shows, how large and in whose units.</summary>
public sealed record BoatDrawingOptions
{
    /// <summary>Id of the drawing's outermost element, unique on its page.</summary>
    public string Id { get; init; } = "boat-drawing";

    /// <summary>Gear, tanks and what is carried are drawn.</summary>
    public bool ShowsGear { get; init; } = true;

    /// <summary>Electrical parts are drawn.</summary>
    public bool ShowsParts { get; init; } = true;

    /// <summary>Cable ways and cable runs are drawn.</summary>
    public bool ShowsRuns { get; init; } = true;

    /// <summary>Spaces are drawn.</summary>
    public bool ShowsSpaces { get; init; }

    /// <summary>Openings of hull and deck are drawn: wells, hatches, doors, vents, through-hulls.</summary>
    public bool ShowsOpenings { get; init; } = true;

    /// <summary>Of things, only those that an alteration adds, changes, moves or takes out are drawn.</summary>
    public bool ShowsOnlyChanges { get; init; }

    /// <summary>Every thing can be reached by keyboard and clicked.</summary>
    public bool IsInteractive { get; init; }

    /// <summary>The condition whose waterline is drawn: people, stores and hung weights that it has not aboard are drawn faint and without a name. Null where none is: then all are drawn alike.</summary>
    public string? ConditionId { get; init; }

    /// <summary>Where the water stands; null where that is not known, or where she comes to rest nowhere.</summary>
    public Waterline? Waterline { get; init; }

    /// <summary>Without a waterline, the draught of her particulars is drawn and labelled as typed; false where she was floated and comes to rest nowhere: then no water is drawn.</summary>
    public bool ShowsTypedDraught { get; init; } = true;

    /// <summary>Where it stood as built, drawn dashed; null where that is the same, or not known.</summary>
    public Waterline? WaterlineAsBuilt { get; init; }

    /// <summary>Points marked over all else.</summary>
    public ValueList<BoatMark> Marks { get; init; } = [];

    /// <summary>Ways that a cable may take, the best first, drawn over all else.</summary>
    public ValueList<DrawnRoute> Routes { get; init; } = [];

    /// <summary>The thing whose name is placed first.</summary>
    public string? SelectedId { get; init; }

    /// <summary>Width of the drawing in drawing units of 1/96 in, from 240; the boat is scaled to fit. Not used where <see cref="ScaleDenominatorRatio"/> is given.</summary>
    public double WidthPx { get; init; } = 1000;

    /// <summary>For paper: 50 draws at 1:50, in true millimetres.</summary>
    public double? ScaleDenominatorRatio { get; init; }

    /// <summary>Where the sections are cut, in metres from the after perpendicular; four evenly spaced ones when left out.</summary>
    public IReadOnlyList<double>? SectionsXM { get; init; }

    /// <summary>Units of grid, scale bar and labels.</summary>
    public DisplayUnits Units { get; init; } = DisplayUnits.Metric;

    /// <summary>How numbers are written.</summary>
    public CultureInfo Culture { get; init; } = CultureInfo.InvariantCulture;
}
