namespace Orlop.Hull.Criteria;

/// <summary>What stands under the turn of the bilge.</summary>
public enum BilgeShape
{
    /// <summary>Round, with neither bilge keels nor a bar keel.</summary>
    Round,

    /// <summary>A sharp bilge: a hard chine.</summary>
    Sharp,

    /// <summary>Bilge keels or a bar keel, whose area is given.</summary>
    Keels,
}

/// <summary>What the angle of roll to windward of the weather criterion is found from.</summary>
public sealed record RollbackInput
{
    public required string Subject { get; init; }

    /// <summary>Length on the waterline, above 0 to 200.</summary>
    public required double WaterlineLengthM { get; init; }

    /// <summary>Moulded beam, above 0 to 50.</summary>
    public required double BeamM { get; init; }

    /// <summary>Mean moulded draught, above 0 to 20.</summary>
    public required double DraughtM { get; init; }

    /// <summary>Block coefficient, above 0 to 1.</summary>
    public required double BlockCoefficient { get; init; }

    /// <summary>Centre of gravity above the keel that the draught is measured from, -20 to 50.</summary>
    public required double KgM { get; init; }

    /// <summary>Initial GM with free surfaces taken off; not above 0 means no period and no angle.</summary>
    public required double GmM { get; init; }

    public required BilgeShape Bilge { get; init; }

    /// <summary>Whole area of bilge keels, or the side area of a bar keel, or both; used for <see cref="BilgeShape.Keels"/>.</summary>
    public double KeelAreaM2 { get; init; }
}
