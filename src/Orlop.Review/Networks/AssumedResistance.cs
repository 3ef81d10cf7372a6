using Orlop.Boat.Things;

namespace Orlop.Review.Networks;

/// <summary>
/// What is taken for the resistance of a joint or device that gives none. All from memory, on the high side, shown as guesses in every
/// working that uses them. For the greatest fault current they are taken as nothing.
/// </summary>
public static class AssumedResistance
{
    /// <summary>Crimp and stud face together, on the high side of 0.05 to 0.3 milliohm.</summary>
    public const double JointOhm = 0.0003;

    /// <summary>One mated contact of a plug.</summary>
    public const double ContactOhm = 0.0005;

    /// <summary>Voltage lost in a fuse or breaker at its rating.</summary>
    public const double ProtectionAtRatingV = 0.1;

    /// <summary>Voltage lost in a switch at its rating.</summary>
    public const double SwitchAtRatingV = 0.05;

    /// <summary>Where these come from.</summary>
    public const string Source = "common practice, no source";

    /// <summary>Through one pole of a fuse or breaker.</summary>
    public static double OfProtection(Protection device) => ProtectionAtRatingV / device.RatedA.Value;

    /// <summary>Through one closed pole of a switch; as a joint when it has no rating.</summary>
    public static double OfSwitch(double? ratedA) => ratedA is > 0 ? SwitchAtRatingV / ratedA.Value : JointOhm;
}
