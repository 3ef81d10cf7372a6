namespace Orlop.Work.Paper;

/// <summary>What came of printing to PDF.</summary>
/// <param name="File">The PDF; null when there is none.</param>
/// <param name="WhyNot">Why there is none, and what to do instead; null when there is one.</param>
public sealed record PdfResult(string? File, string? WhyNot);
