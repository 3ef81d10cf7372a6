using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Isolation;

namespace Orlop.Review.Isolation;

/// <summary>What makes the wiring live, and how it is stopped.</summary>
internal static class IsolationSources
{
    /// <summary>Why a solar controller stays live.</summary>
    public const string Light = "light falls on the panels";

    public static IsolationSource? Of(Part part) => part switch
    {
        BatteryBank => Source(part, SourceKind.Battery, null, "its posts are always live"),
        Charger { Drive: ChargerDrive.Engine } => Source(part, SourceKind.Charging, "stop the engine and take its key out", "it is live while the engine runs"),
        Charger { Drive: ChargerDrive.Sun } => Source(part, SourceKind.Charging, null, Light),
        ShoreInlet => Source(part, SourceKind.AlternatingCurrent, "switch off what it feeds, then pull the shore lead out, ashore first, and tag the inlet (common practice, no source)", "it is live while the shore lead is plugged in"),
        _ => null,
    };

    /// <summary>What makes its output live when its input is.</summary>
    public static ImmutableArray<ConverterFeed> FeedsOf(Part part)
    {
        if (Poles.Taking(part) is not { } taking || Poles.Giving(part) is not { } giving)
        {
            return [];
        }

        return
        [
            new ConverterFeed(part.Id, taking.Plus, giving.Plus),
            new ConverterFeed($"{part.Id}.2", taking.Plus, giving.Minus),
        ];
    }

    private static IsolationSource Source(Part part, SourceKind kind, string? stopHow, string liveBecause)
    {
        PolePair poles = Poles.Giving(part)!;
        return new IsolationSource(part.Id, kind, [poles.Plus, poles.Minus], stopHow is null ? null : new SourceStop(stopHow, OpeningCosts.StopSource), liveBecause);
    }
}
