using Orlop.Review.Findings;

namespace Orlop.Review.Stability;

/// <summary>One check of weight, floating position or stability: what it is, and how it reads the floating boat.</summary>
public interface IStabilityCheck
{
    /// <summary>What it is, for docs and pages.</summary>
    CheckDescription Description { get; }

    /// <summary>Its findings, one for each thing it is about and each condition.</summary>
    IEnumerable<Finding> Run(StabilityView view);
}
