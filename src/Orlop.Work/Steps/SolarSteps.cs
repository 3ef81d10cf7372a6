using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>The steps that cover the panels before the first opening and uncover them after the last, where <see cref="WorkIsolation.Solar"/> has any.</summary>
internal static class SolarSteps
{
    /// <summary>The step before the first opening; null where nothing is covered.</summary>
    public static WorkStep? Cover(PackScope scope, WorkIsolation isolation) => isolation.Solar.IsEmpty ? null : new WorkStep
    {
        Key = "isolate:panels",
        Kind = StepKind.Isolate,
        Text = Plain(IsolationWords.Cover(scope.Words, isolation.Solar)),
        Details = [.. IsolationWords.CoverDetails.Select(Plain)],
        About = Ids(isolation.Solar),
    };

    /// <summary>The step after everything else is closed again; null where nothing was covered.</summary>
    public static WorkStep? Uncover(PackScope scope, WorkIsolation isolation) => isolation.Solar.IsEmpty ? null : new WorkStep
    {
        Key = "restore:panels",
        Kind = StepKind.Energise,
        Text = Plain(IsolationWords.Uncover(scope.Words, isolation.Solar)),
        Details = [Plain(IsolationWords.UncoverDetail)],
        About = Ids(isolation.Solar),
    };

    private static Sentence Plain(string text) => Sentence.Of($"{text}");

    private static ImmutableArray<string> Ids(ImmutableArray<Charger> solar) => [.. solar.Select(charger => charger.Id)];
}
