namespace Orlop.Review.Readings;

/// <summary>What to mind at a joint that turns power to heat, in one place so that finding, page and paper say the same.</summary>
public static class HotJoint
{
    /// <summary>From this heat on, W, a ring or a lug is too hot to touch within minutes (common practice, no source).</summary>
    public const double FromW = 3;

    /// <summary>What is done about one that is hot.</summary>
    public const string LetCool = "Do not touch it while it is hot; switch the load off and let it cool. Nothing is opened before it is made dead and proved dead.";

    /// <summary>What to mind at one that may be.</summary>
    public const string MayBeHot = "Live: nothing is opened before it is made dead and proved dead. A bad joint may be hot: switch the load off and let it cool.";
}
