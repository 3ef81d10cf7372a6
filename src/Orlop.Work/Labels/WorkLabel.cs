using Orlop.Review.Findings;

namespace Orlop.Work.Labels;

/// <summary>One label: for a core's end or a device.</summary>
/// <param name="Key">The end's joint id, or the device's id.</param>
/// <param name="Name">What is printed large: the core or the device, in the words of the steps.</param>
/// <param name="From">The terminal its core comes from; the space of a device, empty where nobody said.</param>
/// <param name="To">The terminal its core goes to; empty for a device.</param>
/// <param name="Facts">Size, protection, voltage; empty when nothing is known.</param>
/// <param name="OuterDiameterMm">Of the cable it goes round, in mm; null for a device or when nobody said.</param>
/// <param name="IsCableEnd">It goes round a cable.</param>
public sealed record WorkLabel(string Key, string Name, string From, string To, Sentence Facts, double? OuterDiameterMm, bool IsCableEnd)
{
    /// <summary>What it is for is recorded as built, so that it was made with it.</summary>
    public bool IsMade { get; init; }
}
