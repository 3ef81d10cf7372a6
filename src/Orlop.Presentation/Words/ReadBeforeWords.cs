using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Isolation;

namespace Orlop.Presentation.Words;

/// <summary>The words in which points are read before anything is opened: the same on page, paper and command line.</summary>
public static class ReadBeforeWords
{
    /// <summary>What is done.</summary>
    public const string Head = "Before anything is opened, read with the meter at each point that is to be proved dead, and note it";

    /// <summary>It stands where live points are measured.</summary>
    public const string Caution =
        "These points are live, and what feeds them can weld a probe to them. Meter on DC volts, leads in its volts sockets, never in its current socket; guards on the probes, one point at a time, one hand where you can; rings and watch off. No cover comes off anything that carries mains voltage (common practice, no source).";

    /// <summary>What is on meanwhile, where something has to be: ", with these on: Main switch; Breaker of the cabin".</summary>
    /// <param name="words">The names of the boat.</param>
    /// <param name="putOn">What must be on.</param>
    public static string With(PartWords words, ImmutableArray<string> putOn)
    {
        ArgumentNullException.ThrowIfNull(words);
        return putOn.IsEmpty ? "" : $", with these on: {string.Join("; ", putOn.Select(words.Located))}";
    }

    /// <summary>How that is done; nothing where nothing has to be on.</summary>
    public static IEnumerable<string> HowPutOn(ImmutableArray<string> putOn) => putOn.IsEmpty ? [] :
    [
        "What is named as on is put on for this reading where it is off: with it off, its points read nothing though nothing is wrong. A load behind it that has no switch of its own runs meanwhile: stand clear of what moves. When all is read, switch off again what you put on; only then is anything opened (common practice, no source).",
    ];

    /// <summary>What to make of it.</summary>
    public static ImmutableArray<string> Notes { get; } =
    [
        "A point that cannot be reached before something is opened or taken off: write “covered”. What proves it then is only the meter, tried on a live point before and after.",
        "The battery's voltage of the day is what counts: all its points read alike. One that reads nothing is behind an open switch or a pulled fuse, or the probes do not touch bright metal: find out which. One that reads far otherwise: stop, the drawing is wrong.",
    ];

    /// <summary>What a point reads.</summary>
    /// <param name="between">Where the probes go.</param>
    /// <param name="mustGive">What must give for it to read anything.</param>
    /// <param name="putOn">What must be on, by its name.</param>
    /// <param name="reach">" A long lead is needed: …" where the two points are far apart; else empty.</param>
    public static Sentence Reads(string between, ProvingPoint proof, ImmutableArray<Part> mustGive, IEnumerable<string> putOn, string reach)
    {
        ArgumentNullException.ThrowIfNull(proof);
        ArgumentNullException.ThrowIfNull(reach);
        string running = mustGive.IsEmpty ? "" : $" while {SentenceText.Listed(mustGive.Select(source => source.Title))} gives, else nothing";
        string[] on = [.. putOn];
        string with = on.Length == 0 ? "" : $", with {string.Join("; ", on)} on";
        return Sentence.Of($"{between}, on {ProvingWords.Setting(proof.IsAc)}: about {new Amount(proof.NominalV!.Value, "V")}{with}{running}.{reach}");
    }

    /// <summary>A point of mains.</summary>
    public static Sentence Covered(string between) => Sentence.Of($"{between}: mains voltage behind a cover that stays on while it is live. It is not read now; a licensed person may.");

    /// <summary>What a proof says of the reading before; empty where nobody knows what stood there.</summary>
    /// <param name="isFed">Something can stand there.</param>
    /// <param name="isLive">Something stood there before anything was opened.</param>
    /// <param name="isMains">It was mains, and not read.</param>
    public static string Told(ProvingPoint proof, bool isFed, bool isLive, bool isMains)
    {
        ArgumentNullException.ThrowIfNull(proof);
        return ProvingWords.Before(proof.NominalV) switch
        {
            "" => "",
            _ when proof.NominalV > 0 && !isFed => "",
            string told when !isLive => told,
            string told when isMains => $"{told}, not read then: covered",
            string told => $"{told}: compare with what you noted before anything was opened",
        };
    }
}
