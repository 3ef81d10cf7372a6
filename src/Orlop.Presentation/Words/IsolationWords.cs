using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Isolation;
using Orlop.Review.Isolation;

namespace Orlop.Presentation.Words;

/// <summary>The words in which work is made dead and switched on again: the same on page, paper and command line.</summary>
public static class IsolationWords
{
    /// <summary>How many parts a source still feeds are named; the rest are counted.</summary>
    private const int MostNamed = 6;

    /// <summary>Before anything is opened.</summary>
    public const string LoadsOff = "Switch off everything that runs, the engine too, and tell everyone on board that you are working on the wiring.";

    /// <summary>The step before the first opening, where panels give to what is opened.</summary>
    public static string Cover(PartWords words, ImmutableArray<Charger> solar) => $"First cover or disconnect the solar panels that feed {Named(words, solar)}.";

    /// <summary>Why, and how.</summary>
    public static ImmutableArray<string> CoverDetails { get; } =
    [
        "Before any fuse, breaker or battery lead is opened: a controller must not lose its battery while its panels give. How it is done, the controller's own sheet says; it goes first.",
        "Cover them so that no light falls on them and the wind cannot lift it. Then see that no charging current is left; a covered panel may still show a voltage.",
        "Never part a plug or pull a fuse while current flows in it: a DC arc burns and does not go out by itself.",
    ];

    /// <summary>The step after everything else is closed again.</summary>
    public static string Uncover(PartWords words, ImmutableArray<Charger> solar) => $"Last, uncover or connect again the solar panels that feed {Named(words, solar)}.";

    /// <summary>When that may be done.</summary>
    public const string UncoverDetail = "Only once the battery is on its controller again; the controller's own sheet goes first.";

    /// <summary>The step before a plus lead comes off a battery whose minus is still on.</summary>
    public static string MinusFirst(PartWords words, BatteryBank bank)
    {
        ArgumentNullException.ThrowIfNull(words);
        ArgumentNullException.ThrowIfNull(bank);
        return $"Engine stopped and shore lead out, minus first: take every lead off the minus post of {words.Located(bank.Id)}. Cap them and tie them back. What this battery alone feeds is off with it; the hull is then joined to none of its posts.";
    }

    /// <summary>Why.</summary>
    public const string MinusFirstDetail = "With the minus on, a spanner from the plus post to the hull or to an earthed part is a short that nothing opens. Insulated tools all the same, and the other post covered.";

    /// <summary>The step after the plus leads are back.</summary>
    public static string MinusLast(PartWords words, BatteryBank bank)
    {
        ArgumentNullException.ThrowIfNull(words);
        ArgumentNullException.ThrowIfNull(bank);
        return $"Minus last: put the leads back on the minus post of {words.Located(bank.Id)}. A small spark is the charge of capacitors; a large one is a fault: stop.";
    }

    /// <summary>Stopping a source that stays joined to the work; null for one that cannot be stopped.</summary>
    public static string? Stop(PartWords words, Part source)
    {
        ArgumentNullException.ThrowIfNull(words);
        ArgumentNullException.ThrowIfNull(source);
        return IsolationPlans.HowStopped(source) is { } how ? $"{words.Located(source.Id)}: {how}." : null;
    }

    /// <summary>Opening or stopping one thing.</summary>
    public static string Open(PartWords words, Opening opening)
    {
        ArgumentNullException.ThrowIfNull(words);
        ArgumentNullException.ThrowIfNull(opening);
        string where = words.Located(opening.Id);
        return opening.Means switch
        {
            null => $"{where}: {opening.StopHow}.",
            OpeningMeans.Isolator => $"Open {where}. Lock it or tag it.",
            OpeningMeans.Breaker => $"Switch off {where}. Lock it or tag it.",
            OpeningMeans.Unplug => $"Pull {where} apart, only with its load off. Cap the live side; take the lead away.",
            OpeningMeans.PullFuse => $"Pull the fuse, only with its load off: {where}. Keep it in your pocket.",
            _ => $"Take {words.Element(opening.Id)} off its post. Cap it and tie it back.",
        };
    }

    /// <summary>Closing it, or letting it run, again.</summary>
    /// <param name="words">The names of the boat.</param>
    /// <param name="opening">What was opened or stopped.</param>
    /// <param name="thing">The thing that it is, where it is one.</param>
    public static string Close(PartWords words, Opening opening, Thing? thing)
    {
        ArgumentNullException.ThrowIfNull(words);
        ArgumentNullException.ThrowIfNull(opening);
        string where = words.Located(opening.Id);
        return opening.Means switch
        {
            null when thing is ShoreInlet => $"{where}: plug the shore lead in again, on board first, then ashore.",
            null => $"{where} may run again.",
            OpeningMeans.LiftBatteryLead => $"Put {words.Element(opening.Id)} back on its post. Plus first, minus last. A small spark is the charge of capacitors; a large one is a fault: stop.",
            OpeningMeans.PullFuse => $"With its load still off, put the fuse back: {where}.",
            OpeningMeans.Unplug => $"Plug {where} in again.",
            _ => $"Take the lock or tag off and close {where}.",
        };
    }

    /// <summary>What stays live, why, where nearest to the work, and what it still feeds past what was opened.</summary>
    public static IEnumerable<string> StaysLive(PartWords words, IEnumerable<(StaysLive Live, ImmutableArray<Part> Fed)> sources) => sources.Select(source =>
    {
        (StaysLive live, ImmutableArray<Part> fed) = source;
        bool isLit = IsolationPlans.IsLitByPanels(live);
        string text = $"{words.Title(live.SourceId)}: {(isLit ? "live if light reaches the panels" : live.Because)}. Nearest live point: {words.Node(live.NearestNode)}.";
        string more = fed.Length > MostNamed ? $" and {fed.Length - MostNamed} more" : "";
        return fed.IsEmpty ? text : $"{text} {(isLit ? "If light reaches the panels, it feeds" : "It still feeds")}: {string.Join("; ", fed.Take(MostNamed).Select(part => part.Title))}{more}.";
    });

    private static string Named(PartWords words, ImmutableArray<Charger> solar) => string.Join(" and ", solar.Select(charger => words.Located(charger.Id)));
}
