using Orlop.Review.Findings;

namespace Orlop.Presentation.Views;

/// <summary>A thing that no circuit has for itself and that does not hold.</summary>
/// <param name="ThingId">The thing.</param>
/// <param name="Title">What people call it.</param>
/// <param name="Verdict">Its worst finding.</param>
/// <param name="Use">The use of the limit by that finding, as a percentage; empty when there is none.</param>
/// <param name="About">The sentence of that finding.</param>
public sealed record SharedRow(string ThingId, string Title, Verdict Verdict, string Use, string About);
