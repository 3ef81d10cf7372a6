using Orlop.Review.Findings;

namespace Orlop.Presentation.Views;

/// <summary>A circuit in the list of circuits: what takes the power, and how it stands.</summary>
/// <param name="TakerId">The load, converter or charger at its end.</param>
/// <param name="Title">What people call that.</param>
/// <param name="Verdict">The worst finding about anything that only this circuit uses; null before the first review.</param>
/// <param name="Use">The largest use that gives this verdict, as a percentage; empty when there is none.</param>
/// <param name="UseAbout">The sentence of the finding with that use; empty when there is none.</param>
/// <param name="IsNew">The open draft adds it.</param>
public sealed record CircuitRow(string TakerId, string Title, Verdict? Verdict, string Use, string UseAbout, bool IsNew);
