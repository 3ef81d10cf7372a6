namespace Orlop.Hull.Surfaces;

/// <summary>One thing wrong with a hull as measured: which section, which of its points (counted from 1; null for the section as a whole), what was found and what is allowed.</summary>
public sealed record FormProblem(string SectionId, int? PointNumber, string Message)
{
    public override string ToString() => PointNumber is null ? $"{SectionId}: {Message}" : $"{SectionId}, point {PointNumber}: {Message}";
}
