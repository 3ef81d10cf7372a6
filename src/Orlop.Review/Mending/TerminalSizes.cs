using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Review.Mending;

/// <summary>The thickest cable that the terminals, holders and contacts at its ends take: as typed, else what is common at their rating. Common practice, no source; a device's own figure goes first.</summary>
public static class TerminalSizes
{
    /// <summary>Up to which rating in A, and the largest conductor in mm² that is common there; beyond, and on studs, ring terminals take what is needed.</summary>
    public static ImmutableArray<(double RatedA, double MostMm2)> Common { get; } = [(30, 10), (60, 16), (100, 35), (200, 70), (300, 120)];

    /// <summary>The common sizes in words: "up to 30 A 10 mm², …".</summary>
    public static string Words { get; } = string.Join(", ", Common.Select(size => FormattableString.Invariant($"up to {size.RatedA} A {size.MostMm2} mm²")));

    /// <summary>The largest conductor that is common at a rating, in mm²; infinite where any is.</summary>
    /// <param name="ratedA">In A, above 0; null where it is not known, and nothing is ruled out.</param>
    public static double AtRatingMm2(double? ratedA) => ratedA is > 0 ? Common.Where(size => ratedA <= size.RatedA).Select(size => size.MostMm2).FirstOrDefault(double.PositiveInfinity) : double.PositiveInfinity;

    /// <summary>The thickest that a cable may become, in mm²; what is there already is never too thick.</summary>
    public static double MostMm2(BoatModel boat, Cable cable)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(cable);
        IEnumerable<(Terminal At, Termination? End)> ends = cable.Cores.SelectMany(core => new[] { (core.From, core.FromEnd), (core.To, core.ToEnd) });
        return Math.Max(cable.AreaMm2.Value, ends.Select(end => OfEnd(boat.Find<Part>(end.At.Part), end.At, end.End)).DefaultIfEmpty(double.PositiveInfinity).Min());
    }

    // A ring is bolted to a stud; what fits on it the checks of studs and lugs tell.
    private static double OfEnd(Part? part, Terminal at, Termination? end) => part switch
    {
        null => double.PositiveInfinity,
        { TerminalMm2: { } typed } => typed.Value,
        _ when end?.Means is TerminationMeans.Ring or TerminationMeans.Fork || part.StudOf(at.Name) is not null => double.PositiveInfinity,
        Protection device => AtRatingMm2(device.RatedA.Value),
        IsolatorSwitch device => AtRatingMm2(device.RatedA?.Value),
        Changeover device => AtRatingMm2(device.RatedA?.Value),
        PlugAndSocket plug => AtRatingMm2(plug.RatedA?.Value),
        ElectricLoad load => AtRatingMm2(load.RunningA?.Value ?? load.RunningW?.Value / load.NominalV.Value),
        _ => double.PositiveInfinity,
    };
}
