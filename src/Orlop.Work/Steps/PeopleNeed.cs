using System.Collections.Immutable;
using System.Globalization;
using Orlop.Presentation.Words;

namespace Orlop.Work.Steps;

/// <summary>How many people the steps of a pack need.</summary>
/// <param name="MostCount">The most that any step needs, 1 or more.</param>
/// <param name="Steps">Steps that need more than one, by how many, most first; their numbers count from 1.</param>
/// <param name="Untold">Numbers of the steps that lift what has no mass, and may need one more.</param>
/// <param name="ByGear">Numbers of the steps that lift what no number of people lifts by hand.</param>
public sealed record PeopleNeed(int MostCount, ImmutableArray<(int Count, ImmutableArray<int> Numbers)> Steps, ImmutableArray<int> Untold, ImmutableArray<int> ByGear)
{
    /// <summary>Of steps in their order.</summary>
    public static PeopleNeed Of(ImmutableArray<WorkStep> steps) => new(
        steps.Select(step => step.PeopleCount).DefaultIfEmpty(1).Max(),
        [
            .. steps.Index().Where(step => step.Item.PeopleCount > 1).GroupBy(step => step.Item.PeopleCount, step => step.Index + 1).OrderByDescending(group => group.Key)
                .Select(group => (group.Key, group.ToImmutableArray())),
        ],
        [.. steps.Index().Where(step => step.Item is { IsMassUntold: true, PeopleCount: 1 }).Select(step => step.Index + 1)],
        [.. steps.Index().Where(step => step.Item.IsByGear).Select(step => step.Index + 1)]);

    /// <summary>In a sentence or two, for the head of the steps.</summary>
    public string Words => (MostCount == 1 ? "No step names a second person, by the weights in the boat's file." : OfMany)
        + (Untold.IsEmpty ? "" : $" What is lifted at {At(Untold)} has no mass in the file: weigh it first, it may ask for a second person.");

    private string OfMany =>
        $"Needs {MostCount} people: {string.Join("; ", Steps.Select(Of))}. The other steps name one. Tackle marked for the load may stand in for one who lifts (common practice, no source).{(ByGear.IsEmpty ? "" : $" At {At(ByGear)} nobody lifts by hand: lifting gear marked for the load only, no number of people instead.")}";

    private static string Of((int Count, ImmutableArray<int> Numbers) step) => $"{step.Count} at {At(step.Numbers)}";

    private static string At(ImmutableArray<int> numbers) => $"{(numbers.Length == 1 ? "step" : "steps")} {SentenceText.Listed(numbers.Select(number => number.ToString(CultureInfo.InvariantCulture)))}";
}
