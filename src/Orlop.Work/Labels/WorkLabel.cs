using Orlop.Review.Findings;

namespace Orlop.Work.Labels;

/// <summary>One label: for a core's end or a device.</summary>
/// <param name="Key">The end's joint id, or the device's id.</param>
/// <param name="Id">What is printed large.</param>
/// <param name="Line">From → to, or the device's name.</param>
/// <param name="Facts">Size, protection, voltage; empty when nothing is known.</param>
/// <param name="OuterDiameterMm">Of the cable it goes round, in mm; null for a device or when nobody said.</param>
/// <param name="IsCableEnd">It goes round a cable.</param>
public sealed record WorkLabel(string Key, string Id, string Line, Sentence Facts, double? OuterDiameterMm, bool IsCableEnd);
