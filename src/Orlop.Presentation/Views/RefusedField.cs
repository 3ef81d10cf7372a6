namespace Orlop.Presentation.Views;

/// <summary>A field of a form whose text cannot be used.</summary>
/// <param name="Id">Id of its box on the page.</param>
/// <param name="Label">What is asked for.</param>
/// <param name="Why">Why it was refused.</param>
public sealed record RefusedField(string Id, string Label, string Why)
{
    /// <summary>The field where there is a refusal; nothing where there is none.</summary>
    public static IEnumerable<RefusedField> If(string id, string label, string? why) => why is null ? [] : [new RefusedField(id, label, why)];
}
