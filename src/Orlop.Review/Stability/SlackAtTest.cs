using System.Collections.Immutable;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability;

/// <summary>A tank that was neither empty nor full at a berth test.</summary>
/// <param name="Title">What it is called.</param>
/// <param name="FillFraction">How full it was, by the mass of its liquid; null where its density or its shape is not given.</param>
/// <param name="FreeSurfaceKgM">Liquid's density times second moment of its surface, the boat upright, in kg·m; null with the fill.</param>
public sealed record SlackTank(string Title, double? FillFraction, double? FreeSurfaceKgM);

/// <summary>
/// Tanks that were slack while a boat was rolled or inclined: their liquid runs to the low side, and takes from the GM that the test reads. It is put back for KG as of a surface that follows at once; a liquid that
/// surges, or a tank that was fuller than it says, is not in that.
/// </summary>
/// <param name="Tanks">Each.</param>
/// <param name="LossM">What those of which it can be told took from GM, in m; null where the boat's displacement is not known.</param>
public sealed record SlackAtTest(ImmutableArray<SlackTank> Tanks, double? LossM)
{
    /// <summary>"Fuel (45 % full), Water (how full is not told) and Day tank (10 % full)".</summary>
    public string Names
    {
        get
        {
            string[] names = [.. Tanks.Select(tank => tank.FillFraction is { } fill ? FormattableString.Invariant($"{tank.Title} ({100 * fill:0} % full)") : $"{tank.Title} (how full is not told)")];
            return names.Length == 1 ? names[0] : $"{string.Join(", ", names[..^1])} and {names[^1]}";
        }
    }

    /// <summary>It is not told how full one of them was: what it took is in no number.</summary>
    public bool HasUntold => Tanks.Any(tank => tank.FreeSurfaceKgM is null);

    /// <summary>How many times longer a roll takes than it would with the tanks pressed up: √((GM + loss)/GM).</summary>
    /// <param name="gmM">GM as the test read it, the loss in it.</param>
    public double? LongerRatio(double gmM) => LossM is { } loss && gmM > 0 ? Math.Sqrt((gmM + loss) / gmM) : null;

    /// <summary>The warning in the working of a test.</summary>
    internal WorkingLine Line => new(
        "Slack tanks", $"{Names}: what their free surface took from GM then, put back for KG; press them up or empty them, and take the test again{(HasUntold ? "; what a tank of which the fill is not told took is not in it" : "")}",
        LossM is { } loss ? M(loss) : null, "Σρ·i/Δ, upright");
}
