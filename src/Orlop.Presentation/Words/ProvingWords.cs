using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Isolation;
using Orlop.Review.Isolation;

namespace Orlop.Presentation.Words;

/// <summary>The words in which a meter is tried and a point is proved dead: the same on page, paper and command line.</summary>
public static class ProvingWords
{
    /// <summary>What the meter is set to: "AC volts".</summary>
    public static string Setting(bool? isAc) => isAc switch { true => "AC volts", false => "DC volts", null => "AC volts and then DC volts" };

    /// <summary>What stood there before: "24 V before"; empty where it is not known.</summary>
    public static string Before(double? nominalV) => nominalV switch
    {
        null => "",
        0 => "nothing before either",
        { } volts => $"{Volts(volts)} before",
    };

    /// <summary>How the meter is seen to read before it is believed: where, set to what, how much, and what must run for it.</summary>
    public static IEnumerable<string> TryMeter(BoatModel boat, PartWords words, IsolationResult plan, ImmutableArray<ProvingPoint> proofs)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(words);
        ArgumentNullException.ThrowIfNull(plan);
        bool? tried = null;
        if (ProvingPoints.TryMeterAt(boat, plan) is not { } live)
        {
            yield return "Try the meter, before and after, on a source that you know to be live.";
        }
        else
        {
            PointVoltage point = PointVoltage.At(boat, Wiring.Of(boat), live.Node);
            tried = point.IsAc;
            string reads = point.NominalV is { } volts ? $"about {Volts(volts)}" : "a voltage";
            yield return $"Try the meter between {words.Node(live.Node)} and {Against(words, live.OtherNode)}, before and after: on {Setting(point.IsAc)} it must read {reads}.{(point.IsAc == true ? Running(words, plan, point) : "")}";
        }

        if (tried != true && proofs.Any(proof => proof.IsAc != false))
        {
            yield return "Try it on AC volts too, at an outlet or a tester that you see to be live: a meter that reads DC may still be blind to AC.";
        }

        if (tried == true && proofs.Any(proof => proof.IsAc != true))
        {
            yield return "Try it on DC volts too, between a battery's posts.";
        }
    }

    /// <summary>A reading that must be nothing.</summary>
    /// <param name="before">What was read there before; empty where nobody knows.</param>
    public static string Proof(PartWords words, ProvingPoint proof, string before)
    {
        ArgumentNullException.ThrowIfNull(words);
        ArgumentNullException.ThrowIfNull(proof);
        ArgumentNullException.ThrowIfNull(before);
        return $"On {Setting(proof.IsAc)}: 0\u00A0V between {words.Node(proof.Node)} and {Against(words, proof.OtherNode)}{(before.Length > 0 ? $" ({before})" : "")}.{Reach(words, proof)}{StandsFor(words, proof)}";
    }

    /// <summary>" A long lead is needed: …" where the two points are far apart; else nothing.</summary>
    public static string Reach(PartWords words, ProvingPoint proof)
    {
        ArgumentNullException.ThrowIfNull(words);
        ArgumentNullException.ThrowIfNull(proof);
        return proof.OtherNode is { } other ? words.LongLead(proof.Node, other) : "";
    }

    /// <summary>" It proves … too." where a reading stands for other points; else nothing.</summary>
    public static string StandsFor(PartWords words, ProvingPoint proof)
    {
        ArgumentNullException.ThrowIfNull(words);
        ArgumentNullException.ThrowIfNull(proof);
        return proof.StandsFor.IsEmpty ? "" : $" It proves too, joined by metal: {string.Join("; ", proof.StandsFor.Select(words.Node))}.";
    }

    /// <summary>Where the probes go: "Main switch, out to Main minus".</summary>
    public static string Between(PartWords words, ProvingPoint proof)
    {
        ArgumentNullException.ThrowIfNull(words);
        ArgumentNullException.ThrowIfNull(proof);
        return $"{words.Node(proof.Node)} to {Against(words, proof.OtherNode)}";
    }

    private static string Against(PartWords words, string? node) => node is null ? "the hull's bond" : words.Node(node);

    // With everything switched off an AC point is dead whether the meter works or not.
    private static string Running(PartWords words, IsolationResult plan, PointVoltage point)
    {
        string[] inverters = [.. point.Sources.OfType<Inverter>().Select(inverter => words.Title(inverter.Id))];
        bool isShoreIn = point.Sources.OfType<ShoreInlet>().Any(inlet => plan.Openings.All(opening => opening.Id != inlet.Id));
        return inverters.Length > 0 ? $" With everything off it is dead anyway: start {string.Join(" or ", inverters)} first to see the meter read, then stop it again."
            : isShoreIn ? " It reads only while the shore lead is in." : "";
    }

    private static string Volts(double volts) => string.Create(CultureInfo.InvariantCulture, $"{volts:0.#}\u00A0V");
}
