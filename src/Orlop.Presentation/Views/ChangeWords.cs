using Orlop.Review.Findings;

namespace Orlop.Presentation.Views;

/// <summary>The words for what an alteration does to a finding.</summary>
public static class ChangeWords
{
    /// <summary>Heading of a group, with an alteration open.</summary>
    public static string Title(Change change) => change switch
    {
        Change.NewTrouble => "New trouble",
        Change.Worse => "Gets worse",
        Change.Unknown => "Cannot tell yet",
        Change.AsBefore => "As before: fails, unknown or tight",
        Change.Better => "Gets better",
        Change.Holds => "Holds",
        _ => "Gone",
    };

    /// <summary>Heading of a group in a review of the boat as built alone.</summary>
    public static string TitleAsBuilt(Change change) => change == Change.AsBefore ? "Fails, unknown or tight" : Title(change);

    /// <summary>The word in JSON: <c>new-trouble</c>.</summary>
    public static string Id(Change change) => change switch
    {
        Change.NewTrouble => "new-trouble",
        Change.AsBefore => "as-before",
        _ => change.ToString().ToLowerInvariant(),
    };
}
