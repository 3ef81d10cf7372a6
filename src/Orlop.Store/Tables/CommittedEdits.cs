using Orlop.Boat.Things;

namespace Orlop.Store.Tables;

/// <summary>Edits as a commit takes them.</summary>
internal static class CommittedEdits
{
    /// <summary>Refuses what no caller may hand over: no edit, an edit whose things have other ids, no summary.</summary>
    public static void Guard(IReadOnlyList<Edit> edits, string summary)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(summary);
        if (edits.Count == 0)
        {
            throw new ArgumentException("A commit has at least one edit; there is none.", nameof(edits));
        }

        foreach (Edit edit in edits)
        {
            string? other = new[] { edit.Was?.Id, edit.Becomes?.Id }.FirstOrDefault(id => id is not null && id != edit.Id);
            if (other is not null)
            {
                throw new ArgumentException($"An edit of '{edit.Id}' holds the thing '{other}'; an edit keeps to one id.", nameof(edits));
            }
        }
    }
}
