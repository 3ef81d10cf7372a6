namespace Orlop.Hull.Surfaces;

/// <summary>A shape to start from when nothing has been measured yet. All are invented for this purpose.</summary>
public enum StartingShape
{
    /// <summary>A plain box.</summary>
    Box,

    /// <summary>A box with raked ends.</summary>
    Barge,

    /// <summary>A flat bottom, flared sides, a transom and a raked stem.</summary>
    FlatBottom,

    /// <summary>A working boat with one hard chine, a transom and a raked stem.</summary>
    SingleChine,

    /// <summary>A working boat with round bilges, a transom and a raked stem.</summary>
    RoundBilge,

    /// <summary>A working boat with round bilges, pointed at both ends.</summary>
    DoubleEnder,
}
