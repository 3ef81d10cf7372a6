using Orlop.Boat.Things;

namespace Orlop.Presentation.Views;

/// <summary>The words for how far an alteration has come.</summary>
public static class AlterationWords
{
    /// <summary>One or two words.</summary>
    public static string Of(AlterationStatus status) => status switch
    {
        AlterationStatus.UnderWay => "under way",
        _ => status.ToString().ToLowerInvariant(),
    };

    /// <summary>How far it has come, for paper: "drafted"; "8 of 12 edits built" where some are; "built".</summary>
    public static string State(Alteration alteration)
    {
        ArgumentNullException.ThrowIfNull(alteration);
        int built = alteration.Edits.Count(edit => edit.BuiltOn is not null);
        return alteration.Status == AlterationStatus.Built || (built > 0 && built == alteration.Edits.Count) ? "built"
            : built > 0 ? $"{built} of {alteration.Edits.Count} edits built"
            : alteration.Status == AlterationStatus.Draft ? "drafted" : Of(alteration.Status);
    }

    /// <summary>How many of its edits are built: "4 of 9 built"; how many there are when none is.</summary>
    public static string Progress(Alteration alteration)
    {
        int built = alteration.Edits.Count(edit => edit.BuiltOn is not null);
        string edits = $"{alteration.Edits.Count} {(alteration.Edits.Count == 1 ? "edit" : "edits")}";
        return built == 0 ? edits : built == alteration.Edits.Count ? $"{edits}, all built" : $"{edits}, {built} built";
    }
}
