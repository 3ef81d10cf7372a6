using Orlop.Review.Findings;

namespace Orlop.Review;

/// <summary>One check of a discipline: what it is, and how it reads the discipline's view of a boat. A class of its own; <see cref="CheckSet{TView}"/> finds it.</summary>
/// <typeparam name="TView">What the discipline's checks read. Safe from several threads.</typeparam>
public interface ICheck<in TView>
{
    /// <summary>What it is, for docs and pages.</summary>
    CheckDescription Description { get; }

    /// <summary>Its findings, one for each thing it is about and each condition.</summary>
    IEnumerable<Finding> Run(TView view);
}
