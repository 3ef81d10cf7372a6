using System.Collections.Immutable;

namespace Orlop.Hull.Floating;

/// <summary>What a curve of righting levers is made for.</summary>
public sealed record RightingInput
{
    /// <summary>The loaded boat; her sideways pulls are left out of the curve, since they are what it is held against.</summary>
    public required FloatingInput Boat { get; init; }

    /// <summary>Openings through which she could fill.</summary>
    public ImmutableArray<Opening> Openings { get; init; } = [];

    /// <summary>Last heel, to starboard 0 to 180, to port 0 to -180.</summary>
    public double ToDeg { get; init; } = 180;

    /// <summary>Step between computed heels, 0.1 to 10.</summary>
    public double StepDeg { get; init; } = 1;

    /// <summary>True to let her trim as she heels; false to hold her level fore and aft.</summary>
    public bool IsTrimFree { get; init; } = true;
}
