namespace Orlop.Hull.Surfaces;

/// <summary>How finely a surface is laid through a hull as measured.</summary>
/// <param name="StepsPerIntervalCount">Steps from one section to the next, 1 to 100.</param>
/// <param name="RowsPerIntervalCount">Rows from one measured point of a section to the next, 1 to 100.</param>
public sealed record FormFineness(int StepsPerIntervalCount = 4, int RowsPerIntervalCount = 3);
