namespace Orlop.Hull.Surfaces;

/// <summary>A measured point that stands off the run of its neighbours: measure it again before believing it.</summary>
/// <param name="SectionId">Its section.</param>
/// <param name="PointNumber">Counted from 1 at the keel.</param>
/// <param name="OffM">How far it stands from where the sections before and behind would put it.</param>
/// <param name="ExpectedHalfBreadthM">Half-breadth there.</param>
/// <param name="ExpectedHeightM">Height there.</param>
public sealed record FormDoubt(string SectionId, int PointNumber, double OffM, double ExpectedHalfBreadthM, double ExpectedHeightM);
