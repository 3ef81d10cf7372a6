using Orlop.Review.Findings;

namespace Orlop.Work.Loading;

/// <summary>Something to weigh before it goes aboard.</summary>
/// <param name="ThingId">The thing.</param>
/// <param name="Title">What people call it.</param>
/// <param name="MassKg">What it is taken to weigh; null where nobody has said.</param>
/// <param name="Known">How that is known, in words.</param>
public sealed record WeighLine(string ThingId, string Title, double? MassKg, Sentence Known);
