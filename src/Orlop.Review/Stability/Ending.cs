using Orlop.Hull.Floating;
using Orlop.Review.Findings;
using static Orlop.Review.Stability.StabilityLines;

namespace Orlop.Review.Stability;

/// <summary>How a boat ends that does not come to rest upright, in words, and what that is held against. A loading in which she ends so has one finding of it: that of <c>floats-at-rest</c>.</summary>
internal static class Ending
{
    /// <summary>Further from upright, in degrees, she has capsized, wherever she comes to rest.</summary>
    public const double MostHeelDeg = 90;

    /// <summary>What the limit rests on.</summary>
    public const string Source = "common practice, no source";

    /// <summary>She capsizes or goes under: no list, trim, GM or freeboard is left to be held against anything.</summary>
    public static bool IsLost(FloatingResult rest) => rest.Status is FloatingStatus.Capsizes or FloatingStatus.Sinks or FloatingStatus.DoesNotFloat;

    /// <summary>"to port", "to one side or the other".</summary>
    public static string SideOf(FloatingResult rest) => rest.CapsizedSide is { } side and not 0 ? Levers.Name(side) : "to one side or the other";

    /// <summary>How she ends, after "she": "capsizes to port and comes to rest 170° from upright".</summary>
    public static Sentence Of(FloatingResult rest) => rest switch
    {
        { Status: FloatingStatus.Capsizes, Position: { } over } => Sentence.Of($"capsizes {SideOf(rest)} and comes to rest {Deg(Math.Abs(over.Attitude.HeelDeg))} from upright"),
        { Status: FloatingStatus.Sinks } => Sentence.Of($"sinks: {Kg(rest.MassKg)} is more than she can push aside with that space open to the sea"),
        { Status: FloatingStatus.DoesNotFloat } => Sentence.Of($"goes under: {Kg(rest.MassKg)} is more than she can push aside"),
        { Status: FloatingStatus.NotConverged } => Sentence.Of($"comes to no position of rest that was found"),
        { Position: { IsLoll: true } at } => Sentence.Of($"is not stable upright and lies over at {Deg(Math.Abs(at.Attitude.HeelDeg))} to one side or the other"),
        _ => Sentence.Of($"does not lie steady"),
    };

    /// <summary>The same where it is told in full elsewhere: "capsizes to port".</summary>
    public static Sentence Briefly(FloatingResult rest) => rest.Status == FloatingStatus.Capsizes ? Sentence.Of($"capsizes {SideOf(rest)}") : Of(rest);

    /// <summary>Limit and source as lines of working.</summary>
    public static IEnumerable<WorkingLine> Asked(FloatingResult rest)
    {
        yield return new WorkingLine("Asked", "she comes to rest afloat and steady, at most so far from upright", Deg(MostHeelDeg), Source);
        if (rest is { Status: FloatingStatus.Capsizes, Position: { } over })
        {
            yield return new WorkingLine("Comes to rest", $"{SideOf(rest)}, from upright", Deg(Math.Abs(over.Attitude.HeelDeg)), "hydrostatics, free in draught, trim and heel");
        }
    }

    /// <summary>What a loading has beside what its condition lists, after the condition: " with Sampler on the hook and 4 people aboard"; empty where there is nothing.</summary>
    public static string With(IEnumerable<HungWeight> hung, string people)
    {
        string[] all = [.. hung.Select(weight => $"{weight.Deadweight.Title} on the hook"), .. people.Length > 0 ? new[] { people } : []];
        return all.Length == 0 ? "" : $" with {string.Join(" and ", all)}";
    }
}
