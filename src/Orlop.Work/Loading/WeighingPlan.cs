using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Views.Floating;
using Orlop.Presentation.Words;
using Orlop.Review;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using Orlop.Review.Stability;
using Orlop.Work.Scope;

namespace Orlop.Work.Loading;

/// <summary>What an alteration does to the boat's weight: what to weigh before it goes aboard, and where to read the freeboards afterwards.</summary>
public sealed class WeighingPlan
{
    // Less sinks or heels a small boat by less than a freeboard can be read to (common practice, no source).
    private const double LeastMassKg = 10;

    // A tape from a mark to still water, one standard deviation (common practice, no source).
    private const double TapeDeviationM = 0.005;

    // Less need not be weighed: it is felt neither in trim nor in heel (common practice, no source).
    private const double LeastWeighedKg = 1;

    private readonly BoatModel _asAltered;

    private WeighingPlan(PackScope scope)
    {
        _asAltered = scope.AsAltered;
        Survey = MarkFreeboard.SurveyOf(scope.AsBuilt);
        MeasuringLoading? loading = MeasuringLoading.Of(scope.AsAltered, Survey);
        (Condition, WhyLoaded) = (loading?.Condition, loading?.Why);
        Weigh = [.. scope.Edits.Where(edit => edit.Becomes is not null).DistinctBy(edit => edit.Id).Select(Line).OfType<WeighLine>()];
        MovedKg = Condition is null ? 0 : Moved(scope.Before, scope.AsAltered, Condition);
        HasHull = scope.AsAltered.All<HullLines>().Any();
        // Nothing of weight came, went or moved: it has not drifted by this work.
        Incline = HasHull && MovedKg > 0 ? InclineAnew.Of(scope.AsAltered, scope.Alteration, Condition) : null;
        Pressed = Incline is not null && Condition is not null ? PressedTanks.Of(scope.AsAltered, Condition) : null;
    }

    /// <summary>What is weighed before it goes aboard: its mass is not known, or only estimated.</summary>
    public ImmutableArray<WeighLine> Weigh { get; }

    /// <summary>The condition in which the freeboards are read; null for a boat without conditions.</summary>
    public Condition? Condition { get; }

    /// <summary>Why that condition, a whole sentence; null for a boat without conditions.</summary>
    public Sentence? WhyLoaded { get; }

    /// <summary>She is to be inclined anew when the work is done; null where she is not.</summary>
    public InclineAnew? Incline { get; }

    /// <summary>How her tanks are at freeboards and inclining alike, where she is inclined; null where she is not, and they are as the condition has them.</summary>
    public PressedTanks? Pressed { get; }

    /// <summary>How her tanks are at the freeboards, in words.</summary>
    public string TankWords => Pressed?.Words ?? "tanks as written there";

    /// <summary>Mass put aboard, taken off and moved, together, in that condition.</summary>
    public double MovedKg { get; }

    /// <summary>The survey whose marks are read again; null where none is kept.</summary>
    public FreeboardSurvey? Survey { get; }

    /// <summary>The boat's lines are given, so that she can be floated.</summary>
    public bool HasHull { get; }

    /// <summary>Enough is put aboard, taken off or moved, or may be, to be read off the water, or she is inclined, which takes her displacement.</summary>
    public bool IsFelt => HasHull && (MovedKg >= LeastMassKg || Incline is not null || Weigh.Any(line => line.MassKg is null));

    /// <summary>Who and what is aboard in that condition beyond the boat's own gear, and where.</summary>
    public IReadOnlyList<Deadweight> Carried => Condition is null ? []
        : [.. _asAltered.All<Deadweight>().Where(deadweight => deadweight.Aboard.Any(count => count.Condition == Condition.Id && count.PieceCount > 0))];

    /// <summary>How many people are aboard in that condition.</summary>
    public int PeopleAboardCount => Condition is null ? 0 : MeasuringLoading.People(_asAltered, Condition);

    /// <summary>The freeboards expected at the marks of the survey, with tanks pressed where she is inclined too; none where they cannot be told. Solves for where she floats.</summary>
    public IReadOnlyList<PredictedFreeboard> Freeboards()
    {
        return Condition is null || !IsFelt ? [] : FreeboardsIn(Pressed?.Boat ?? _asAltered, Condition, new Memo());
    }

    /// <summary>The same where she is loaded as in another condition, for each condition but that in which they are read; none where they cannot be told in it.</summary>
    public IReadOnlyList<(Condition Condition, IReadOnlyList<PredictedFreeboard> Marks)> FreeboardsElsewhere(Memo memo) =>
        [.. _asAltered.All<Condition>().Where(condition => condition.Id != Condition?.Id).Select(condition => (condition, FreeboardsIn(_asAltered, condition, memo)))];

    private static IReadOnlyList<PredictedFreeboard> FreeboardsIn(BoatModel boat, Condition condition, Memo memo)
    {
        StabilityView view = new(boat, Practice.Of(boat, memo), memo);
        // What is not given would move the waterline by nobody knows how much.
        return view.LoadedIn(condition).Missing.IsEmpty ? [.. MarkFreeboard.Of(view, condition).Where(mark => double.IsFinite(mark.DeviationM)).Select(Banded)] : [];
    }

    internal static WeighingPlan Of(PackScope scope) => new(scope);

    private static PredictedFreeboard Banded(MarkFreeboard mark)
    {
        double half = FloatingWords.BandFactor * Math.Sqrt((mark.DeviationM * mark.DeviationM) + (TapeDeviationM * TapeDeviationM));
        return new PredictedFreeboard(mark.Name, mark.Mark, mark.HeightM, mark.HeightM - half, mark.HeightM + half);
    }

    private static WeighLine? Line(Edit edit)
    {
        Thing thing = edit.Becomes!;
        (bool isWeighed, Quantity? mass) = thing switch
        {
            Gear gear => (true, gear.MassKg),
            Deadweight deadweight => (true, deadweight.MassKg),
            BatteryBank or Inverter or ElectricLoad or Charger => (true, ((Part)thing).MassKg),
            // A small part is weighed where a mass is what the draft typed in.
            Part part => (edit.Was is Part was && was.MassKg?.Value != part.MassKg?.Value, part.MassKg),
            _ => (false, null),
        };
        return !isWeighed || mass is { Known: Knowledge.Measured or Knowledge.Sheet } || (mass?.Value < LeastWeighedKg && thing is not Deadweight) ? null
            : new WeighLine(thing.Id, thing.Title, mass?.Value, mass switch
            {
                null => Sentence.Of($"nobody has said what it weighs"),
                { Known: Knowledge.Exact } => Sentence.Of($"taken as {new Amount(mass.Value, "Kg")}, and nobody has said how that is known"),
                _ => Sentence.Of($"taken as {new Amount(mass.Value, "Kg")}, {Wording.Of(mass.Known)}"),
            });
    }

    private static double Moved(BoatModel was, BoatModel now, Condition condition)
    {
        Dictionary<string, WeightRow> Rows(BoatModel boat) => WeightLedger.Of(boat, condition).Rows.DistinctBy(row => row.ThingId).ToDictionary(row => row.ThingId, StringComparer.Ordinal);
        Dictionary<string, WeightRow> before = Rows(was), after = Rows(now);
        return before.Keys.Union(after.Keys, StringComparer.Ordinal).Sum(id => (before.GetValueOrDefault(id), after.GetValueOrDefault(id)) switch
        {
            ({ } old, null) => old.MassKg,
            (null, { } fresh) => fresh.MassKg,
            ({ } old, { } fresh) when old.Place != fresh.Place => Math.Max(old.MassKg, fresh.MassKg),
            ({ } old, { } fresh) => Math.Abs(fresh.MassKg - old.MassKg),
            _ => 0,
        });
    }
}
