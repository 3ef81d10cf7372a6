using System.Collections.Immutable;

namespace Orlop.Electrics.Protection;

/// <summary>Which of two devices in series opens first at one current.</summary>
public enum SelectivityStatus
{
    /// <summary>The nearer device is not made to open by so little, and neither is the one before it.</summary>
    NeitherMustOpen,

    /// <summary>The nearer device opens first; the gates alone prove it.</summary>
    NearerFirst,

    /// <summary>The nearer device opens first by the curves drawn between the gates, which the standard does not promise.</summary>
    NearerFirstAsDrawn,

    /// <summary>What is known of the two leaves it open: the device before may open first, or both may.</summary>
    EitherFirst,

    /// <summary>The device before opens first.</summary>
    EarlierFirst,

    /// <summary>Nothing is known of one of them at this current.</summary>
    NotTold,
}

/// <summary>A stretch of current in which one thing is true of two devices.</summary>
/// <param name="FromA">Current through the nearer device, A.</param>
/// <param name="ToA">Up to this current, A.</param>
/// <param name="Status">What is true of every current between.</param>
public sealed record SelectivityBand(double FromA, double ToA, SelectivityStatus Status);

/// <summary>Which of two devices in series opens first, from one current to another.</summary>
/// <param name="Bands">In rising current, without gaps.</param>
public sealed record SelectivityResult(ImmutableArray<SelectivityBand> Bands)
{
    /// <summary>The nearer device opens first, or neither must, at every current up to this one, A; 0 where it does not at the lowest.</summary>
    public double SelectiveToA => Bands.TakeWhile(band => IsSelective(band.Status)).Select(band => band.ToA).LastOrDefault();

    /// <summary>The nearer device opens first, or neither must, at every current asked about.</summary>
    public bool IsSelective() => Bands.All(band => IsSelective(band.Status));

    /// <summary>The gates alone prove it at every current up to this one, A; 0 where they do not at the lowest.</summary>
    public double ProvedToA => Bands.TakeWhile(band => band.Status is SelectivityStatus.NearerFirst or SelectivityStatus.NeitherMustOpen).Select(band => band.ToA).LastOrDefault();

    private static bool IsSelective(SelectivityStatus status) =>
        status is SelectivityStatus.NearerFirst or SelectivityStatus.NearerFirstAsDrawn or SelectivityStatus.NeitherMustOpen;
}
