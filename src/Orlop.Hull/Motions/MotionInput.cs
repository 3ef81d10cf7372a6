using Orlop.Hull.Surfaces;

namespace Orlop.Hull.Motions;

/// <summary>A stated motion of the boat and a place on her. Amplitudes are to one side; an angle of 0 leaves that motion out.</summary>
public sealed record MotionInput
{
    public required string Subject { get; init; }

    /// <summary>The place, in the boat's axes.</summary>
    public required Point3 Place { get; init; }

    /// <summary>Where she turns: near the waterline, in way of the centre of flotation (common practice, no source).</summary>
    public required Point3 Centre { get; init; }

    /// <summary>Roll to one side, 0 to 60.</summary>
    public required double RollDeg { get; init; }

    /// <summary>Whole period of roll, 1 to 60.</summary>
    public required double RollPeriodS { get; init; }

    /// <summary>Pitch to one end, 0 to 30.</summary>
    public required double PitchDeg { get; init; }

    /// <summary>Whole period of pitch, 1 to 60.</summary>
    public required double PitchPeriodS { get; init; }

    /// <summary>Amplitude of vertical acceleration of the centre, 0 to 30.</summary>
    public required double HeaveMPerS2 { get; init; }
}
