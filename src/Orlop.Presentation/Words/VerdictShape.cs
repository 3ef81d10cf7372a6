using Orlop.Review.Findings;

namespace Orlop.Presentation.Words;

/// <summary>A verdict by shape first: square fails, triangle tight, disc holds, open diamond unknown.</summary>
public static class VerdictShape
{
    /// <summary>A small SVG picture of the verdict, 1.1 em high, with the word as its accessible name.</summary>
    public static string Svg(Verdict verdict) =>
        $"""<svg class="verdict {Wording.Of(verdict)}" role="img" aria-label="{Wording.Of(verdict)}" viewBox="0 0 18 18" width="1.1em" height="1.1em"><title>{Wording.Of(verdict)}</title>{Path(verdict)}</svg>""";

    /// <summary>The shape alone, in a box of 18 by 18, to be placed inside another drawing.</summary>
    public static string Path(Verdict verdict) => verdict switch
    {
        Verdict.Fails => """<rect x="2" y="2" width="14" height="14" fill="var(--fails,#b3261e)"/>""",
        Verdict.Tight => """<path d="M9 1 17 16H1Z" fill="var(--tight,#b06a00)"/>""",
        Verdict.Holds => """<circle cx="9" cy="9" r="7.5" fill="var(--holds,#1f7a5a)"/>""",
        _ => """<path d="M9 1 17 9 9 17 1 9Z" fill="none" stroke="var(--unknown,#6a5acd)" stroke-width="2"/>""",
    };
}
