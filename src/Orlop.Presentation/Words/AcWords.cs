namespace Orlop.Presentation.Words;

/// <summary>Words for the AC side, the same on page, paper and command line.</summary>
public static class AcWords
{
    /// <summary>Where neutral and earth are joined.</summary>
    /// <param name="places">The places; null where it is not known.</param>
    public static string Bond(IReadOnlyList<string>? places) => places switch
    {
        null => "not known",
        [] => "nowhere",
        _ => string.Join("; ", places),
    };

    /// <summary>What ends a fault to earth.</summary>
    /// <param name="hasEarth">The metal is joined to the source's earth.</param>
    /// <param name="title">What ends it; null where nothing is sure to.</param>
    public static string EndedBy(bool hasEarth, string? title) => title ?? (hasEarth ? "nothing that is sure to open" : "nothing: no earth leads back");
}
