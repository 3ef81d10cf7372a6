using System.Collections.Immutable;

namespace Orlop.Work.Steps;

/// <summary>What a meter shows in a step, to be written down with a pen.</summary>
/// <param name="Unit">Symbol of its unit: V, Ω, kΩ.</param>
/// <param name="What">Which reading it is; null where it is one at each limit that the step's details name.</param>
/// <param name="ReadingCount">How many of the step's details, from the first, name a reading; null where each does that names a number.</param>
/// <param name="Into">The berth test that it is typed into; null where it is kept with the step.</param>
public sealed record WriteDown(string Unit, string? What = null, int? ReadingCount = null, BerthTestKind? Into = null)
{
    /// <summary>
    /// What is accepted: none where nothing is tested; else one for each reading that is asked for, in the order of the step's details. Where one stands for "the highest" or "the lowest", several may be typed, and it holds for each.
    /// </summary>
    public ImmutableArray<AcceptedReading> Accepts { get; init; } = [];

    /// <summary>The same in a sentence, for a screen: "Write down: the highest, in Ω."</summary>
    public string Said => Accepts.Length > 1
        ? $"Write down all {Accepts.Length} readings, each at its point: the step stays open until each is read."
        : What is null ? $"Write down each reading, in {Unit}." : $"Write down: {char.ToLowerInvariant(What[0])}{What[1..]}, in {Unit}.";
}
