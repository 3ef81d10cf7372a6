namespace Orlop.Presentation.Views.Hulls;

/// <summary>How a hull is measured ashore by someone who has no lines plan (common practice, no source).</summary>
public static class MeasuringGuide
{
    /// <summary>Before anybody goes near a boat ashore.</summary>
    public static IReadOnlyList<string> Cautions { get; } =
    [
        "Never crawl under a boat that is not propped and chocked, keel on blocks that carry her, and never alone.",
        "Never move, ease or lean on a shore, and never tie anything to one: ask the yard. Where a shore hides a point, measure beside it.",
        "No measuring in a wind that shakes her, and none from a ladder that leans on her. Local rules and the yard's own come first.",
    ];

    /// <summary>What to do, in order.</summary>
    public static IReadOnlyList<(string What, string How)> Steps { get; } =
    [
        ("Level line", "Stretch a string level along the keel, by a water level or a long spirit level, and note how far the keel's foot is from it at both ends. That string is the base line; all heights count from it."),
        ("Centre line", "Hang a plumb bob from the middle of the stem and from the middle of the transom, and stretch a string on the ground between the two marks. Half-breadths count square out from it."),
        ("Stations", "Chalk eight to twelve stations along the string, closer where the shape changes: transom, both ends of the flat run, the widest place, and near the stem. Note each one's place forward of the transom."),
        ("Points", "At each station set a straight batten upright at a known half-breadth, plumb, and measure level in to the hull at even heights; or hang the plumb bob from the deck edge and measure in to the side. Take the keel, the chine or knuckles, three or four places on a round side, and the deck edge."),
        ("Under the bottom", "Lay a level straightedge from the keel out, and measure up from it to the bottom, from outside, with a stick."),
        ("Stem", "Plumb down from the stem head and measure in to the stem at four heights: the stem is a station whose half-breadths are all 0."),
        ("Check", "Measure beam and length over all with the tape by themselves, and both sides at two stations. Points that the page marks as doubtful are measured again, not guessed right."),
    ];
}
