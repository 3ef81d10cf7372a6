using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Review.Mending;

/// <summary>What a device of another make-up asks of what stands around it: studs or clamps in place of those that were there, the ends of the cables on it made off for them, a place of its own.</summary>
internal static class DeviceEnds
{
    /// <summary>How the conductors at a part are made off, to be compared: "ring 8"; null where its entry does not tell.</summary>
    public static string? MadeOffAs(CataloguePart part) => part.EndMeans is { } means ? FormattableString.Invariant($"{means} {part.StudMm:0.#}").Trim() : null;

    /// <summary>Its ends are clamped, so that no conductor thicker than it takes goes in: that, in mm²; null where any is bolted on, or nobody tells.</summary>
    public static double? TakesMm2(CataloguePart part) => IsBolted(part) ? null : part.TerminalMm2?.Value;

    /// <summary>The device with the terminals of the part: studs where rings are bolted to it, and how thick a conductor it takes. Where the part does not tell, nobody knows either.</summary>
    public static Protection WithTerminals(Protection device, CataloguePart part) => device with
    {
        Studs = IsBolted(part) && part.StudMm is { } threadMm ? [.. device.TerminalNames.Select(name => new Stud(name, threadMm))] : [],
        TerminalMm2 = part.TerminalMm2,
        Note = $"{device.Note} {(device.Means == ProtectionMeans.Breaker ? "Its place in the panel is not known" : "The place of its holder is not known")}: give it.",
    };

    /// <summary>The boat with the ends of the cables at a device made off for the part that stands there. What was measured of an end that is cut off is known of the new one no more.</summary>
    public static BoatModel MadeOff(BoatModel boat, string deviceId, CataloguePart part)
    {
        if (part.EndMeans is not { } means)
        {
            return boat;
        }

        Termination? Anew(Cable cable, Terminal at, Termination? was) => at.Part != deviceId ? was
            : new Termination(means, IsBolted(part) ? part.StudMm : null, was?.ResistanceOhm is { Known: not Knowledge.Measured } ohm ? ohm : null, IsLugAsked(cable, deviceId) ? cable.AreaMm2.Value : null);
        return boat.WithThings(boat.Things.Select(thing => thing is Cable cable && EndCount(cable, deviceId) > 0
            ? cable with
            {
                Cores = cable.Cores.Select(core => core with
                {
                    FromEnd = Anew(cable, core.From, core.FromEnd),
                    ToEnd = Anew(cable, core.To, core.ToEnd),
                }).ToValueList(),
            }
            : thing));
    }

    /// <summary>What is said of it beside the change.</summary>
    public static string Words(BoatModel draft, Protection device, CataloguePart part, ProtectionMeans becomes) =>
        $"{OfEnds(draft.All<Cable>().Sum(cable => EndCount(cable, device.Id)), part)}; {OfPlace(device, becomes)}";

    private static string OfEnds(int count, CataloguePart part) => (count, part.EndMeans) switch
    {
        (0, _) => "",
        (_, null) => "; how cables are made off at it is not told",
        (_, { } means) => $"; {(count == 1 ? "1 cable end" : $"{count} cable ends")} made off anew there: {NameOf(means)}{(IsBolted(part) && part.StudMm is { } threadMm ? FormattableString.Invariant($" for M{threadMm:0.#}") : "")}",
    };

    private static string OfPlace(Protection device, ProtectionMeans becomes)
    {
        string what = becomes == ProtectionMeans.Breaker ? "its place in the panel is not known" : "where its holder goes is not known";
        return device.Place is null ? what : $"{what}, it is drawn where {(device.Means == ProtectionMeans.Fuse ? "the fuse" : "the breaker")} stands";
    }

    private static string NameOf(TerminationMeans means) => means switch
    {
        TerminationMeans.Ring => "rings",
        TerminationMeans.Fork => "forks",
        TerminationMeans.Ferrule => "ferrules",
        TerminationMeans.Butt => "butt splices",
        TerminationMeans.Blade => "push-on blades",
        TerminationMeans.Screw => "bare under a screw",
        _ => "contacts",
    };

    // One lug that is told asks for what the others of the cable are made for: where these are bolted on elsewhere and untold, nothing is told of the new ones either.
    private static bool IsLugAsked(Cable cable, string deviceId) => cable.Cores.SelectMany(core => new[] { (At: core.From, End: core.FromEnd), (At: core.To, End: core.ToEnd) })
        .All(end => end.At.Part == deviceId || end.End is not { Means: TerminationMeans.Ring or TerminationMeans.Fork, LugMm2: null });

    private static bool IsBolted(CataloguePart part) => part.EndMeans is TerminationMeans.Ring or TerminationMeans.Fork;

    private static int EndCount(Cable cable, string deviceId) => cable.Cores.Sum(core => (core.From.Part == deviceId ? 1 : 0) + (core.To.Part == deviceId ? 1 : 0));
}
