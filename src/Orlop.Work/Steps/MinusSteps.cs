using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Work.Scope;

namespace Orlop.Work.Steps;

/// <summary>The steps that take a battery's minus leads off first and put them on last, where <see cref="WorkIsolation.MinusFirst"/> has it.</summary>
internal static class MinusSteps
{
    /// <summary>What is said of an end on a minus post that is bare while the rest is connected.</summary>
    public const string NotYet = "not on its post yet. Cap it and tie it back: it goes on with the minus leads, last";

    /// <summary>Off, after everything that opens and before the first plus lead.</summary>
    public static WorkStep First(PackScope scope, BatteryBank bank) => new()
    {
        Key = $"isolate:minus:{bank.Id}",
        Kind = StepKind.Isolate,
        Text = Sentence.Of($"{IsolationWords.MinusFirst(scope.Words, bank)}"),
        Details =
        [
            .. Named(scope.WiringBefore, bank) is { Length: > 0 } named ? new[] { Sentence.Of($"On that post: {named}. Mark each before it comes off.") } : [],
            Sentence.Of($"{IsolationWords.MinusFirstDetail}"),
        ],
        Cautions = [Cautions.Battery],
        About = [bank.Id],
    };

    /// <summary>On again, after the last plus lead and before anything is closed that was opened before the minus came off.</summary>
    public static WorkStep Last(PackScope scope, WorkIsolation isolation, BatteryBank bank) => new()
    {
        Key = $"restore:minus:{bank.Id}",
        Kind = StepKind.Energise,
        Text = Sentence.Of($"{IsolationWords.MinusLast(scope.Words, bank)}"),
        Details =
        [
            .. Named(scope.AlteredWiring, bank) is { Length: > 0 } named
                ? new[] { Sentence.Of($"On that post: {named}. Faces bright and flat; the maker's torque goes first, the make-up list tells it for what is new.") }
                : [],
            .. LiveNearby.AtPosts(scope, isolation, [bank.Id]),
        ],
        Cautions = [Cautions.Battery],
        About = [bank.Id],
    };

    private static string Named(Wiring wiring, BatteryBank bank) =>
        string.Join("; ", wiring.At(Poles.Giving(bank)!.Minus).Select(edge => edge.Owner).Where(owner => owner is Cable or Link).Select(owner => owner.Title).Distinct(StringComparer.Ordinal));
}
