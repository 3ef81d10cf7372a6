namespace Orlop.Hull.Surfaces;

/// <summary>Which neighbours do not bear a point out.</summary>
public enum FormRun
{
    /// <summary>The same row on the sections before and behind it.</summary>
    AlongTheBoat,

    /// <summary>The points below and above it on its own section.</summary>
    RoundTheSection,
}

/// <summary>A measured point that stands off the run of its neighbours: measure it again before believing it.</summary>
/// <param name="SectionId">Its section.</param>
/// <param name="PointNumber">Counted from 1 at the keel.</param>
/// <param name="OffM">How far it stands from where its neighbours would put it.</param>
/// <param name="ExpectedHalfBreadthM">Half-breadth there.</param>
/// <param name="ExpectedHeightM">Height there.</param>
/// <param name="Run">The neighbours it is held against.</param>
/// <param name="OutwardM">What of it stands square out of the section's outline: above 0 outside a fair line, below 0 inside it.</param>
/// <param name="WideM">How much wider than expected its half-breadth is; below 0 where it is narrower.</param>
/// <param name="HighM">How much higher than expected it stands; below 0 where it is lower.</param>
/// <param name="IsStarboard">It is on the starboard side of a boat whose sides differ.</param>
public sealed record FormDoubt(
    string SectionId, int PointNumber, double OffM, double ExpectedHalfBreadthM, double ExpectedHeightM, FormRun Run = FormRun.AlongTheBoat, double OutwardM = 0, double WideM = 0, double HighM = 0, bool IsStarboard = false);
