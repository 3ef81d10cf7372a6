using System.Collections.Immutable;
using Orlop.Review.Findings;
using Orlop.Review.Mending;
using Xunit;
using static Orlop.Review.Tests.Mending.MendBoats;

namespace Orlop.Review.Tests.Mending;

/// <summary>What is given up where no set clears everything and no finding alone is hopeless.</summary>
public sealed class MendTargetsTests
{
    private static readonly Finding First = Of("voltage-drop", "lamp"), Second = Of("breaking-capacity", "fuse"), Trouble = Of("fault-clears", "cable.plus");

    private static Finding Of(string check, string subject) => new() { CheckId = check, SubjectId = subject, Verdict = Verdict.Fails, Headline = Sentence.Of($"{check}") };

    private static ImmutableArray<Objection> Against(params Finding[] findings) => [.. findings.Select(finding => new Objection(finding))];

    private static MendTargets Targets() => new([First, Second], Request(Lamp(3, 2.5, 5, 10, 1000), []), _ => true);

    [Fact]
    public void GiveUp_TakesWhatStandsAgainstMostSets_AndTellsWhatItsRemediesBring()
    {
        MendTargets targets = Targets();
        MendConflict conflict = targets.GiveUp([Against(First), Against(First, Second), Against(Second, Trouble), Against(First, Trouble)]);

        Assert.Equal(First, conflict.Finding);
        Assert.Equal(Trouble.CheckId, targets.GiveUp([Against(Second), Against(Trouble)]).Against!.CheckId);
        Assert.Equal([First, Second], targets.Beyond);
        Assert.False(targets.Any);
    }

    [Fact]
    public void GiveUp_WhereNoSetClearsIt_NamesNothingInTheWay() => Assert.Null(Targets().GiveUp([Against(First), Against(First, Trouble)]).Against);

    // The same for the same sets, whatever their order.
    [Fact]
    public void GiveUp_DoesNotGoByTheOrderOfTheSets()
    {
        ImmutableArray<Objection>[] sets = [Against(Second), Against(First), Against(Second, Trouble), Against(First, Trouble)];
        Assert.Equal(Targets().GiveUp(sets).Finding, Targets().GiveUp([.. sets.Reverse()]).Finding);
    }
}
