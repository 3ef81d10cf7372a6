using Orlop.Review;
using Orlop.Review.Findings;

namespace Orlop.Work.Loading;

/// <summary>One line of a table of criteria.</summary>
/// <param name="Check">What is asked.</param>
/// <param name="Now">How it came out for the boat the sheet is about; null where it is gone.</param>
/// <param name="Was">As built, beside an alteration; null without one, or where it is new.</param>
public sealed record SheetFinding(CheckDescription Check, Finding? Now, Finding? Was);
