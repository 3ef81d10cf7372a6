namespace Orlop.Work.Steps;

/// <summary>What a reading of a step's test must be for the test to be passed, and what it may mean where it is not. A limit itself is accepted.</summary>
/// <param name="Suffix">Suffix of its values: V, Ohm, S or Kg.</param>
/// <param name="Unit">Symbol of the unit in which the field asks for it, and in which a number without a unit is taken: V, kΩ.</param>
public sealed record AcceptedReading(string Suffix, string Unit)
{
    /// <summary>Which reading it is, where a step asks for several of different limits; else null.</summary>
    public string? Name { get; init; }

    /// <summary>The two points of the wiring it is read between; null where it is read elsewhere.</summary>
    public (string Node, string OtherNode)? At { get; init; }

    /// <summary>The least that is accepted, in the unit of the suffix; null where there is no such limit.</summary>
    public double? Least { get; init; }

    /// <summary>The most that is accepted, in the unit of the suffix; null where there is no such limit.</summary>
    public double? Most { get; init; }

    /// <summary>Why nobody can tell the most that it may be, where it has one: what is not below the least cannot be judged then. Null where there is a most, or no such limit.</summary>
    public string? WhyNoMost { get; init; }

    /// <summary>The nominal voltage of what is read, in the unit of the suffix; null where it has none.</summary>
    public double? Nominal { get; init; }

    /// <summary>A reading well within what is accepted, in the unit of the suffix, to show how one is typed: the middle of the band; the nominal, or twice the least, where it has no upper end.</summary>
    public double Example => (Least, Most) switch
    {
        ({ } least, { } most) => (least + most) / 2,
        (null, { } most) => most / 2,
        ({ } least, null) => Nominal ?? 2 * least,
        _ => 1,
    };

    /// <summary>Its sign says nothing: it is AC, or has to be nothing.</summary>
    public bool IsEitherSign { get; init; }

    /// <summary>Nothing, up to this, is accepted as well, in the unit of the suffix: what feeds it may be off. Null where it is not.</summary>
    public double? NothingUpTo { get; init; }

    /// <summary>It may be left out in words, as "covered": it cannot be reached.</summary>
    public bool MayBeCovered { get; init; }

    /// <summary>What less than the least may mean, and what to do.</summary>
    public string WhenBelow { get; init; } = "";

    /// <summary>What more than the most may mean, and what to do.</summary>
    public string WhenAbove { get; init; } = "";

    /// <summary>What the other sign may mean, and what to do; null where it is a value below like any other.</summary>
    public string? WhenReversed { get; init; }

    /// <summary>It has a limit; where it has none, nobody could work one out, and the reading cannot be judged.</summary>
    public bool HasLimit => Least is not null || Most is not null;
}
