namespace Orlop.Work.Steps;

/// <summary>What a meter shows in a step, to be written down with a pen.</summary>
/// <param name="Unit">Symbol of its unit: V, Ω, kΩ.</param>
/// <param name="What">Which reading it is; null where it is one at each limit that the step's details name.</param>
/// <param name="ReadingCount">How many of the step's details, from the first, name a reading; null where each does that names a number.</param>
/// <param name="IsSurvey">It goes into a freeboard survey, not with the step.</param>
/// <param name="MostV">The most that it may read, V, for the step to have proved what it is to prove; null where it proves nothing.</param>
public sealed record WriteDown(string Unit, string? What = null, int? ReadingCount = null, double? MostV = null, bool IsSurvey = false)
{
    /// <summary>The same in a sentence, for a screen: "Write down: the highest, in Ω."</summary>
    public string Said => What is null ? $"Write down each reading, in {Unit}." : $"Write down: {char.ToLowerInvariant(What[0])}{What[1..]}, in {Unit}.";
}
