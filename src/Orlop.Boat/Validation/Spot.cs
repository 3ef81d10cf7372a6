using System.Globalization;

namespace Orlop.Boat.Validation;

/// <summary>A place in a boat's tree; becomes text only when something is wrong there.</summary>
internal sealed class Spot
{
    private readonly Spot? _parent;
    private readonly string _step;

    private Spot(Spot? parent, string step, int order)
    {
        _parent = parent;
        _step = step;
        Order = order;
    }

    /// <summary>The boat itself.</summary>
    public static Spot Boat { get; } = new(null, "boat", -1);

    /// <summary>Position of the thing in the boat, to sort by; -1 for the boat itself.</summary>
    public int Order { get; }

    /// <summary>A thing by position and id, where it has one.</summary>
    public static Spot Thing(int index, string? id) =>
        new(null, id is null ? $"things[{index}]" : $"things[{index}] '{id}'", index);

    /// <summary>A row of a table, counted as a spreadsheet does: the header is row 1.</summary>
    public static Spot Row(int row) => new(null, $"row {row}", row);

    /// <summary>The steps from the thing to here.</summary>
    public IReadOnlyList<string> Steps => _parent is null ? [] : [.. _parent.Steps, _step];

    /// <summary>What it is in; itself for a thing, row or boat.</summary>
    public Spot Parent => _parent ?? this;

    /// <summary>The thing, row or boat it is in.</summary>
    public Spot Root => _parent?.Root ?? this;

    public Spot At(string name) => new(this, name, Order);

    public Spot At(int index) => new(this, index.ToString(CultureInfo.InvariantCulture), Order);

    public override string ToString() => _parent is null ? _step : $"{_parent}{(_parent._parent is null ? " " : "")}/{Escaped}";

    private string Escaped => _step.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal);
}
