using System.Diagnostics.CodeAnalysis;
using Orlop.Boat.Validation;

namespace Orlop.Boat.Format;

/// <summary>A boat read from text, or everything that is wrong with the text.</summary>
/// <param name="Boat">The boat; null as soon as there is a problem.</param>
/// <param name="Problems">All problems, in the order of the file.</param>
public sealed record BoatReadResult(BoatModel? Boat, IReadOnlyList<Problem> Problems)
{
    /// <summary>There is a boat and nothing is wrong with it.</summary>
    [MemberNotNullWhen(true, nameof(Boat))]
    public bool IsGood => Boat is not null;
}
