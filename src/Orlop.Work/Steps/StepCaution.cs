using System.Collections.Immutable;

namespace Orlop.Work.Steps;

/// <summary>What a step says of one kind of caution.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Texts">What is said; the same at the step named by <paramref name="AsInStep"/>.</param>
/// <param name="AsInStep">Number of the step, from 1, that said the same in full before; null where it is said in full here.</param>
public sealed record StepCaution(CautionKind Kind, ImmutableArray<string> Texts, int? AsInStep)
{
    /// <summary>What the caution is about, in a word or two.</summary>
    public string Title => TitleOf(Kind);

    /// <summary>What a kind of caution is about, in a word or two.</summary>
    public static string TitleOf(CautionKind kind) => kind switch
    {
        CautionKind.Battery => "Battery",
        CautionKind.Mains => "Mains voltage",
        CautionKind.StoredCharge => "Stored charge",
        CautionKind.HotSurface => "Hot surfaces",
        CautionKind.Drilling => "Drilling",
        CautionKind.HotWork => "Lining burns",
        CautionKind.Lifting => "Heavy",
        CautionKind.StaysLive => "Stays live",
        CautionKind.NotDead => "Cannot be made dead",
        CautionKind.Running => "While it runs",
        _ => "Stability",
    };

    /// <summary>The cautions of each step, by kind: what may kill is said in full each time, the rest in full once and then by the step that said it.</summary>
    public static ImmutableArray<ImmutableArray<StepCaution>> Of(IReadOnlyList<WorkStep> steps)
    {
        Dictionary<(CautionKind Kind, string Texts), int> firstSaid = [];
        return [.. steps.Select((step, index) => step.Cautions.GroupBy(caution => caution.Kind, caution => caution.Text)
            .Select(kind => Once(kind.Key, [.. kind.Distinct(StringComparer.Ordinal)], index + 1, firstSaid)).ToImmutableArray())];
    }

    private static StepCaution Once(CautionKind kind, ImmutableArray<string> texts, int number, Dictionary<(CautionKind Kind, string Texts), int> firstSaid)
    {
        (CautionKind, string) said = (kind, string.Join('\n', texts));
        bool isNew = firstSaid.TryAdd(said, number);
        return new StepCaution(kind, texts, isNew || IsGrave(kind) ? null : firstSaid[said]);
    }

    private static bool IsGrave(CautionKind kind) =>
        kind is CautionKind.Battery or CautionKind.Mains or CautionKind.NotDead or CautionKind.StaysLive or CautionKind.StoredCharge;
}
