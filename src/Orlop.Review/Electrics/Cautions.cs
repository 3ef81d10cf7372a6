namespace Orlop.Review.Electrics;

/// <summary>The usual cautions, in one place so that page, paper and command line say the same.</summary>
public static class Cautions
{
    /// <summary>At a battery's posts.</summary>
    public const string BatteryPost =
        "A battery can burn and blind: rings off, insulated tools, eye protection, cover the other post. Its posts stay live whatever is switched off.";

    /// <summary>Where batteries are joined with one another.</summary>
    public const string Strings =
        "Batteries joined with one another: a spanner across two posts, or a string joined at another voltage, is a short circuit of thousands of amperes. Insulated tools, posts covered, "
        + "one lead at a time; join only what was measured to be of one voltage and one polarity.";

    /// <summary>On the AC side.</summary>
    public const string MainsVoltage =
        "Shore and inverter voltage can kill. A licensed electrician works on and checks this side; local codes come first.";

    /// <summary>On what protects people on the AC side.</summary>
    public const string EarthFault =
        "This decides whether touched metal kills. Nothing here replaces a licensed electrician's measurement with an installation tester; local codes come first.";

    /// <summary>At the input of an inverter or a large converter.</summary>
    public const string StoredCharge =
        "Its input holds a charge after it is switched off. Wait as its sheet says and prove it dead before touching.";
}
