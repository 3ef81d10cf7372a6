using Orlop.Boat.Things;

namespace Orlop.Review.Mending;

/// <summary>The new draft that a proposal is tried in.</summary>
public static class MendDraft
{
    /// <summary>A copy of the draft that was mended, or a new one for the boat as built; nothing of it is built or ticked yet.</summary>
    public static Alteration Of(Alteration? mended, string id, string name) => (mended ?? new Alteration { Id = id }) with
    {
        Id = id,
        Name = name,
        Status = AlterationStatus.Draft,
        Edits = [.. (mended?.Edits ?? []).Where(edit => edit.BuiltOn is null)],
        Ticks = [],
        StepRemarks = [],
    };
}
