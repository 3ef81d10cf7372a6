using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Hull.Floating;
using Orlop.Review;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>How a boat floats in one condition, in the model's units: what pages, drawings and the command line tell in their own words.</summary>
public sealed record FloatingFacts
{
    private const double SameDeg = 1e-6;

    private FloatingFacts(LoadedBoat loaded) => Loaded = loaded;

    /// <summary>The condition.</summary>
    public Condition Condition => Loaded.Condition;

    /// <summary>How she is loaded in it.</summary>
    public LoadedBoat Loaded { get; private init; }

    /// <summary>How she floats; null when her weight or her hull is not known.</summary>
    public FloatingBoat? Floating { get; private init; }

    /// <summary>Where she comes to rest; null when that is not known, when she goes under, or when she capsizes: upside down nothing of it is asked.</summary>
    public FloatingPosition? Position => Capsizes ? null : Floating?.Rest.Position;

    /// <summary>The opening, or deck edge, that is under water where she comes to rest; null where none is, or she has no such place.</summary>
    public UnderAtRest? Under { get; private init; }

    /// <summary>Water comes in where she comes to rest: she has no GM, no range and no lever of her own.</summary>
    public bool Fills => Under is { Fills: true };

    /// <summary>Her GM where she comes to rest, in m; null where she has none, fills, or it is not known.</summary>
    public double? GmM => Fills ? null : Position?.MetacentricHeightM;

    /// <summary>Heel to starboard and to port at which the deck edge of a boat of which nobody said whether her deck is closed goes under; null where it is said.</summary>
    internal EdgeUnder? UntoldEdge { get; private init; }

    /// <summary>She comes to rest more than 90° from upright.</summary>
    public bool Capsizes => Floating?.Rest.Status == FloatingStatus.Capsizes;

    /// <summary>Where she ends when she capsizes, starboard positive; null where she does not.</summary>
    public double? CapsizedHeelDeg => Capsizes ? Floating!.Rest.Position?.Attitude.HeelDeg : null;

    /// <summary>The side she goes over to when she capsizes: "to port", "to one side or the other"; null where she does not.</summary>
    public string? CapsizedTo => Floating?.Rest.CapsizedSide switch { null => null, < 0 => "to port", > 0 => "to starboard", _ => "to one side or the other" };

    /// <summary>Displacement with liquids; null when it is not known.</summary>
    public double? MassKg { get; private init; }

    /// <summary>Draughts at the hull's after end, middle and forward end; empty without a position, or on her beam ends.</summary>
    public ImmutableArray<DraughtAt> Draughts { get; private init; } = [];

    /// <summary>How much deeper she lies at the after end than at the forward end; null without draughts.</summary>
    public double? TrimM => Draughts.IsEmpty ? null : Draughts[0].DraughtM - Draughts[^1].DraughtM;

    /// <summary>One standard deviation of each result; infinite where it cannot be told.</summary>
    public FloatingDeviations Deviations { get; private init; } = FloatingDeviations.Unknown;

    /// <summary>What is read from the levers to starboard; null without a curve.</summary>
    public RightingFeatures? Starboard { get; private init; }

    /// <summary>What is read from the levers to port; null without a curve.</summary>
    public RightingFeatures? Port { get; private init; }

    /// <summary>Port is the side to judge by.</summary>
    public bool IsPortWeaker { get; private init; }

    /// <summary>The range is shorter to port; the weaker side where there is nothing to choose.</summary>
    public bool IsPortShorter => Port is { } port && Starboard is { } starboard && Math.Abs(RangeText.Deg(port) - RangeText.Deg(starboard)) > SameDeg
        ? RangeText.Deg(port) < RangeText.Deg(starboard) : IsPortWeaker;

    /// <summary>What is read from the weaker side.</summary>
    public RightingFeatures? Weaker => IsPortWeaker ? Port : Starboard;

    /// <summary>The curve of the weaker side; null without one.</summary>
    public RightingCurve? WeakerCurve => IsPortWeaker ? Floating?.Port : Floating?.Starboard;

    /// <summary>The greatest lever of the weaker side before water comes in, with its heel; null where there is none, or she fills where she rests.</summary>
    public (double LeverM, double HeelDeg)? Greatest => !Fills && WeakerCurve is { } curve ? FloatingBoat.GreatestLever(curve) : null;

    /// <summary>Works them out; equal boats are worked out once.</summary>
    public static FloatingFacts Of(StabilityView view, Condition condition, Memo memo)
    {
        LoadedBoat loaded = view.LoadedIn(condition);
        if (loaded.WithoutKg is { } afloat)
        {
            return memo.Get((view.Bodies, afloat.Input), () => WithoutKg(view, loaded, afloat)) with { Loaded = loaded, Under = view.UnderAtRestIn(condition) };
        }

        if (view.FloatingIn(condition) is not { } floating || loaded.Total is not { } total)
        {
            return new FloatingFacts(loaded);
        }

        object key = (floating, total.MassDeviationKg, total.LcgDeviationM, total.TcgDeviationM, total.KgDeviationM);
        return memo.Get(key, () => Of(view, loaded, floating)) with
        {
            Loaded = loaded,
            Under = view.UnderAtRestIn(condition),
            UntoldEdge = view.Boat.Particulars?.Deck is not null ? null : memo.Get((nameof(UntoldEdge), floating, view.Bodies), () => new EdgeUnder(view.EdgeUnderDeg(floating.Starboard), view.EdgeUnderDeg(floating.Port))),
        };
    }

    private static FloatingFacts Of(StabilityView view, LoadedBoat loaded, FloatingBoat floating)
    {
        FloatingFacts facts = new(loaded) { Floating = floating, MassKg = floating.Rest.MassKg, Starboard = Read(floating.Starboard), Port = Read(floating.Port), IsPortWeaker = ReferenceEquals(floating.Weaker, floating.Port) };
        // The side she goes over to is the one to judge by.
        facts = floating.Rest.CapsizedSide is { } over and not 0 ? facts with { IsPortWeaker = over < 0 } : facts;
        return facts.Position is { } position ? facts.At(view, position, loaded) : facts;
    }

    // Draughts and trim are read from the boat with her centre at the keel; what would tell of her stability is left out.
    private static FloatingFacts WithoutKg(StabilityView view, LoadedBoat loaded, AfloatWithoutKg afloat)
    {
        FloatingResult rest = Equilibrium.Solve(afloat.Input);
        FloatingFacts facts = new(loaded) { MassKg = rest.MassKg };
        if (rest is not { Status: FloatingStatus.Floats, Position: { } position })
        {
            return facts;
        }

        FloatingFacts told = facts.At(view, position, loaded with { Total = afloat.Total, Input = afloat.Input });
        return told with { Deviations = told.Deviations with { HeelDeg = double.PositiveInfinity, GmM = double.PositiveInfinity } };
    }

    private FloatingFacts At(StabilityView view, FloatingPosition position, LoadedBoat weighed)
    {
        if (view.Bodies.Hull is not { } hull)
        {
            return this;
        }

        (double aft, double fore) = (hull.Lowest.XM, hull.Highest.XM);
        (string Where, double XM)[] places = [("aft", aft), ("amidships", (aft + fore) / 2), ("forward", fore)];
        double?[] heights = [.. places.Select(place => position.Attitude.WaterHeightM(place.XM, 0))];
        return this with
        {
            Draughts = heights.All(height => height is not null) ? [.. places.Select((place, index) => new DraughtAt(place.Where, place.XM, heights[index]!.Value))] : [],
            Deviations = FloatingDeviations.Of(weighed, position, aft, fore),
        };
    }

    private static RightingFeatures? Read(RightingCurve curve) => curve.Points.Length < 2 ? null : curve.Features;
}
