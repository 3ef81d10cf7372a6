using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Findings;

namespace Orlop.Presentation.Words;

/// <summary>The words people read for verdicts, knowledge, kinds of things and conditions.</summary>
public static class Wording
{
    /// <summary>The verdict in one word.</summary>
    public static string Of(Verdict verdict) => verdict switch
    {
        Verdict.Holds => "holds",
        Verdict.Tight => "tight",
        Verdict.Fails => "fails",
        _ => "unknown",
    };

    /// <summary>What a verdict means, for a legend.</summary>
    public static string Meaning(Verdict verdict) => verdict switch
    {
        Verdict.Holds => "within the limit by more than a tenth",
        Verdict.Tight => "within a tenth of the limit",
        Verdict.Fails => "beyond the limit",
        _ => "an input is missing, or its uncertainty straddles the limit",
    };

    /// <summary>How well a value is known, in a word or two.</summary>
    public static string Of(Knowledge known) => known switch
    {
        Knowledge.Exact => "exact",
        Knowledge.Measured => "measured",
        Knowledge.Sheet => "from its sheet",
        Knowledge.Estimated => "estimate",
        _ => "guess",
    };

    /// <summary>True for a value that must look guessed wherever it is shown.</summary>
    public static bool LooksGuessed(Quantity? quantity) => quantity?.Known is Knowledge.Guessed or Knowledge.Estimated;

    /// <summary>What kind of thing it is, in plain words: "fuse", "cable way", "shore inlet".</summary>
    public static string KindOf(Thing thing) => thing switch
    {
        Protection { Means: ProtectionMeans.Fuse } => "fuse",
        Protection => "breaker",
        IsolatorSwitch { IsIsolator: true } => "isolator",
        Charger { Drive: ChargerDrive.Engine } => "engine-driven charger",
        Charger { Drive: ChargerDrive.Shore } => "shore charger",
        Charger => "solar charger",
        _ => KindOf(ThingKinds.NameOf(thing)),
    };

    /// <summary>What a thing is called and what it is, each said once: "Winch, load", but "Winch plug" and "Fuse of the winch" alone, for these say it.</summary>
    public static string NameWithKind(Thing thing)
    {
        ArgumentNullException.ThrowIfNull(thing);
        string kind = KindOf(thing), word = kind.Split(' ', 2) is ["plug", ..] ? "plug" : kind.Split(' ')[^1];
        return thing.Title.Split(' ', ',', '(', ')').Contains(word, StringComparer.OrdinalIgnoreCase) ? thing.Title : $"{thing.Title}, {kind}";
    }

    /// <summary>The plain words for a kind's name in files; throws for a name that is no kind.</summary>
    public static string KindOf(string kindName) => kindName switch
    {
        "battery" => "battery",
        "charger" => "charger",
        "dc-converter" => "DC converter",
        "inverter" => "inverter",
        "shore-inlet" => "shore inlet",
        "busbar" => "busbar",
        "protection" => "fuse or breaker",
        "switch" => "switch",
        "changeover" => "change-over switch",
        "plug" => "plug and socket",
        "link" => "bolted link",
        "load" => "load",
        "cable" => "cable",
        "way" => "cable way",
        "way-preferences" => "way preferences",
        "compass" => "compass",
        "space" => "space",
        "gear" => "gear",
        "hull-outline" => "lines for drawing",
        "hull-lines" => "hull lines",
        "opening" => "opening",
        "tank" => "tank",
        "bare-boat" => "bare boat",
        "deadweight" => "deadweight",
        "stability-basis" => "stability rules",
        "freeboard-survey" => "freeboard survey",
        "climate" => "climate",
        "day-plan" => "day plan",
        "rolling-test" => "rolling test",
        "inclining-test" => "inclining test",
        "particulars" => "particulars",
        "practice" => "practice",
        "condition" => "condition",
        "alteration" => "alteration",
        "reading" => "reading",
        "photograph" => "photograph",
        "stock" => "stock",
        "catalogue-part" => "catalogue part",
        "tool" => "tool",
        _ => throw new ArgumentOutOfRangeException(nameof(kindName), kindName, "Not a kind of thing."),
    };

    /// <summary>A condition as a short sentence: "At anchor: engine stopped, no shore power, no sun."</summary>
    public static string Of(Condition condition) => string.Join(", ",
        $"{condition.Title}: {(condition.EngineRuns ? "engine running" : "engine stopped")}",
        condition.OnShore ? "on shore power" : "no shore power",
        condition.SunShines ? "sun" : "no sun") + ".";

    /// <summary>Listed operating-time gates in plain words: "Strip fuse SF51 (ISO 8820-5)".</summary>
    public static string OfGates(string id) => id switch
    {
        "blade-type-c" => "Blade fuse, type C (ISO 8820-3)",
        "strip-sf30" => "Strip fuse SF30 (ISO 8820-5)",
        "strip-sf51" => "Strip fuse SF51 (ISO 8820-5)",
        "link-gg" => "Fuse-link gG (IEC 60269-1)",
        "breaker-b" => "Breaker, type B (IEC 60898-1)",
        "breaker-c" => "Breaker, type C (IEC 60898-1)",
        "breaker-d" => "Breaker, type D (IEC 60898-1)",
        _ => id,
    };
}
