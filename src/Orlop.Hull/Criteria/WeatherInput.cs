using Orlop.Hull.Floating;

namespace Orlop.Hull.Criteria;

/// <summary>What the weather criterion is found from.</summary>
public sealed record WeatherInput
{
    /// <summary>Levers to the lee side, with the openings.</summary>
    public required RightingCurve Leeward { get; init; }

    /// <summary>Levers to the windward side.</summary>
    public required RightingCurve Windward { get; init; }

    /// <summary>Side area of boat and deck cargo above the waterline, above 0 to 10 000.</summary>
    public required double WindAreaM2 { get; init; }

    /// <summary>From the centre of that area to half the draught, or to the centre of the underwater side, above 0 to 100.</summary>
    public required double WindLeverM { get; init; }

    /// <summary>Form, GM and bilge, for the roll to windward.</summary>
    public required RollbackInput Roll { get; init; }

    /// <summary>Heel at which the deck edge goes under, above 0 to 90; null when not known, and then the steady heel is held against 16° alone.</summary>
    public double? DeckEdgeDeg { get; init; }
}
