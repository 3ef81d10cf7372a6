using Orlop.Review.Findings;

namespace Orlop.Review.Electrics;

/// <summary>One check of the electrics: an id, what it is about, the limits it uses, and how it reads the solved networks.</summary>
public interface IElectricsCheck
{
    /// <summary>What it is, for docs and pages.</summary>
    CheckDescription Description { get; }

    /// <summary>Its findings, one for each thing it is about and each condition.</summary>
    IEnumerable<Finding> Run(ElectricsView view);
}
