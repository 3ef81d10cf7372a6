using Orlop.Boat;
using Orlop.Boat.Things;

namespace Orlop.Review.Ways;

/// <summary>What the owner prefers when a cable looks for its way, every blank filled with what is common practice (no source).</summary>
public sealed record RouteRules
{
    /// <summary>A metre in the bilge in dry metres.</summary>
    public double BilgeFactor { get; init; } = 10;

    /// <summary>A metre in a wet space in dry metres.</summary>
    public double WetFactor { get; init; } = 2;

    /// <summary>A metre in an engine space in dry metres.</summary>
    public double EngineFactor { get; init; } = 4;

    /// <summary>A metre on the open deck in dry metres.</summary>
    public double OutsideFactor { get; init; } = 3;

    /// <summary>A metre beside the other kind of current in metres apart from it.</summary>
    public double BesideAcFactor { get; init; } = 2;

    /// <summary>A metre loose in a space in metres along a way.</summary>
    public double LooseFactor { get; init; } = 3;

    /// <summary>A low metre in high ones.</summary>
    public double LowFactor { get; init; } = 2;

    /// <summary>Height below which a run is low; null where none is.</summary>
    public double? LowBelowM { get; init; }

    /// <summary>A hole to be made, in metres.</summary>
    public double NewHoleM { get; init; } = 4;

    /// <summary>A hole that is there, in metres.</summary>
    public double MadeHoleM { get; init; } = 0.3;

    /// <summary>Something to be opened, in metres.</summary>
    public double OpeningM { get; init; } = 0.5;

    /// <summary>At each end of a cable, to strip, make off and make off again twice; the need for it is in FAA AC 43.13-1B 11-118, the length is not.</summary>
    public double TailM { get; init; } = 0.15;

    /// <summary>A loop in each cable.</summary>
    public double LoopM { get; init; } = 0.2;

    /// <summary>What a cable is longer than its line.</summary>
    public double SlackFraction { get; init; } = 0.05;

    /// <summary>Ways as near as this are joined.</summary>
    public double JoinM { get; init; } = 0.15;

    /// <summary>Longest loose stretch from way to way.</summary>
    public double MostLooseM { get; init; } = 1;

    /// <summary>The factor of a use of space.</summary>
    public double FactorOf(SpaceUse? use) => use switch
    {
        SpaceUse.Dry => 1,
        SpaceUse.Wet => WetFactor,
        SpaceUse.Bilge => BilgeFactor,
        SpaceUse.Engine => EngineFactor,
        SpaceUse.OpenDeck => OutsideFactor,
        _ => Math.Max(Math.Max(WetFactor, BilgeFactor), Math.Max(EngineFactor, OutsideFactor)),
    };

    /// <summary>The rules of a boat.</summary>
    public static RouteRules Of(BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        RouteRules usual = new();
        return boat.All<WayPreferences>().FirstOrDefault() is not { } own ? usual : usual with
        {
            BilgeFactor = own.BilgeFactor ?? usual.BilgeFactor,
            WetFactor = own.WetFactor ?? usual.WetFactor,
            EngineFactor = own.EngineFactor ?? usual.EngineFactor,
            OutsideFactor = own.OutsideFactor ?? usual.OutsideFactor,
            BesideAcFactor = own.BesideAcFactor ?? usual.BesideAcFactor,
            LooseFactor = own.LooseFactor ?? usual.LooseFactor,
            LowFactor = own.LowFactor ?? usual.LowFactor,
            LowBelowM = own.LowBelowM,
            NewHoleM = own.NewHoleM ?? usual.NewHoleM,
            MadeHoleM = own.MadeHoleM ?? usual.MadeHoleM,
            OpeningM = own.OpeningM ?? usual.OpeningM,
            TailM = own.TailM ?? usual.TailM,
            LoopM = own.LoopM ?? usual.LoopM,
            SlackFraction = own.SlackFraction ?? usual.SlackFraction,
            JoinM = own.JoinM ?? usual.JoinM,
            MostLooseM = own.MostLooseM ?? usual.MostLooseM,
        };
    }
}
