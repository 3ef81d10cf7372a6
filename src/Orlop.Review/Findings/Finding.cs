using System.Collections.Immutable;

namespace Orlop.Review.Findings;

/// <summary>A line of working: what is found, how, and by which source.</summary>
/// <param name="What">Plain words: "Starting current".</param>
/// <param name="Expression">The formula with its numbers: "5 × 60 A".</param>
/// <param name="Value">The number found; null for a line that states something.</param>
/// <param name="Source">Document, clause and table; "common practice, no source"; or empty for arithmetic on lines above.</param>
/// <param name="IsFromMemory">The source was not seen when the figure was written down.</param>
public sealed record WorkingLine(string What, string Expression, Amount? Value, string Source, bool IsFromMemory = false)
{
    private readonly string _expression = MinusSign.In(Expression);

    /// <summary>The formula with its numbers, or words; its minus signs are −, whoever wrote it.</summary>
    public string Expression
    {
        get => _expression;
        init => _expression = MinusSign.In(value);
    }
}

/// <summary>An input a finding rests on: the thing, the field where it is typed, and how it reads.</summary>
/// <param name="ThingId">Id of the thing.</param>
/// <param name="Field">Name of its field, as in the file; <c>run/2</c> for where the second stretch of a cable's run lies, <c>openCircuit/0.3</c> for a charge outside a battery's curve, <c>gates/60/50/63</c> for a rating of 60 A of which a kind of operating times has none, with the nearest that it has.</param>
/// <param name="IsGuess">Guessed or estimated.</param>
/// <param name="IsMissing">Not given.</param>
public sealed record FindingInput(string ThingId, string Field, bool IsGuess = false, bool IsMissing = false);

/// <summary>One check on one thing in one condition.</summary>
public sealed record Finding
{
    /// <summary>Id of the check: <c>conductor-ampacity</c>.</summary>
    public required string CheckId { get; init; }

    /// <summary>Id of the thing or element it is about.</summary>
    public required string SubjectId { get; init; }

    /// <summary>The other thing of a finding about a pair; null for a finding about one thing.</summary>
    public string? OtherSubjectId { get; init; }

    /// <summary>The condition, or null where the check is the same in all.</summary>
    public string? ConditionId { get; init; }

    public required Verdict Verdict { get; init; }

    /// <summary>What is asked over what is allowed; null when unknown or when there is no such ratio.</summary>
    public double? UseFraction { get; init; }

    /// <summary>How grave its number is beside that of another condition, the graver the greater, where there is no use: a freeboard with its sign turned round, the use that an unsure number would have. A number only to be compared, within one check and thing. Null where nothing is.</summary>
    public double? GravityRatio { get; init; }

    /// <summary>Water comes in where she lies: graver than any number beside it, and never better than the same check with the opening dry.</summary>
    public bool IsFlooding { get; init; }

    /// <summary>What a boat owner reads, with a number.</summary>
    public required Sentence Headline { get; init; }

    private readonly LinesWhenAsked _working = LinesWhenAsked.None;

    /// <summary>Formula, numbers, assumptions and sources.</summary>
    public ImmutableArray<WorkingLine> Working
    {
        get => _working.Lines;
        init => _working = new LinesWhenAsked(value);
    }

    /// <summary>The working, written out when it is first read: of thousands of findings few are looked into. It must give the same whenever that is.</summary>
    public Func<ImmutableArray<WorkingLine>> WorkingWhenAsked
    {
        init => _working = new LinesWhenAsked(value);
    }

    /// <summary>The inputs it rests on.</summary>
    public ImmutableArray<FindingInput> Inputs { get; init; } = [];

    /// <summary>A caution that belongs to it: batteries, 230 V.</summary>
    public string? Caution { get; init; }
}
