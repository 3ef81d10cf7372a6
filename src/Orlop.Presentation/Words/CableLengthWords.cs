namespace Orlop.Presentation.Words;

/// <summary>Which length of a cable is meant: it is laid and reckoned with from terminal to terminal, and cut longer. The same words wherever one of them is shown.</summary>
public static class CableLengthWords
{
    /// <summary>As it is laid, drawn and reckoned with.</summary>
    public const string Laid = "from terminal to terminal";

    /// <summary>As it is cut.</summary>
    public const string Cut = "with tails and a loop";
}
