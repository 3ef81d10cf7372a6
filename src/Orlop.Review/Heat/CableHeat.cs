using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Conductors;
using Orlop.Review.Electrics;
using Orlop.Review.Energy;
using Orlop.Review.Networks;

namespace Orlop.Review.Heat;

/// <summary>
/// What cables lose where they run: I² R by the share of the run in each space, copper as hot as its insulation bears. How warm a space is is not asked, so that nothing goes round in a circle, and cables that hold lose no more: the temperature that comes of it is never too low for them.
/// </summary>
internal sealed class CableHeat
{
    // The most that cables of a boat are usually rated for, where a cable does not say (common practice, no source).
    private const double HottestUsualC = 105;

    private readonly ElectricsView _view;
    private readonly CableCurrents _currents;
    private readonly Dictionary<string, List<HeatPart>> _bySpace = new(StringComparer.Ordinal);

    public CableHeat(ElectricsView view, CableCurrents currents)
    {
        (_view, _currents) = (view, currents);
        foreach (Cable cable in view.Boat.All<Cable>())
        {
            if (Whole(cable) is not { } whole)
            {
                continue;
            }

            foreach ((string space, double share) in Shares(cable).Where(part => part.Value > 0))
            {
                (_bySpace.TryGetValue(space, out List<HeatPart>? parts) ? parts : _bySpace[space] = []).Add(whole with { MostW = share * whole.MostW, MeanW = share * whole.MeanW });
            }
        }
    }

    /// <summary>What each cable loses in a space; a stretch whose space nobody told counts in each space in which an end of its cable stands.</summary>
    public IEnumerable<HeatPart> In(Space space) => _bySpace.GetValueOrDefault(space.Id, []);

    // Along its whole length; null where nothing is known to flow.
    private HeatPart? Whole(Cable cable)
    {
        string[] cores = [.. cable.Cores.Select(core => ElementIds.Core(cable, core))];
        if (cores.All(id => _currents.DrawnThrough(id).Count == 0 && _currents.ChargingThroughA(id) == 0))
        {
            return null;
        }

        PlanGaps gaps = new();
        if (cable.InsulationC is null)
        {
            gaps.Assume(FormattableString.Invariant($"{cable.Title}: copper at {HottestUsualC} °C, for its insulation is not given"));
        }

        double ohmPerM = OhmPerM(cable), most = 0, mean = 0;
        foreach ((Core core, string id) in cable.Cores.Zip(cores))
        {
            (double mostA2, double meanA2) = Squares(id, gaps);
            double? length = core.LengthM?.Value ?? cable.LengthM?.Value ?? (cable.Run.Count > 0 ? cable.Run.Sum(leg => leg.LengthM) : null);
            gaps.Need(mostA2 > 0 && length is null ? null : cable, cable.Id, "lengthM");
            most += mostA2 * ohmPerM * (length ?? 0);
            mean += meanA2 * ohmPerM * (length ?? 0);
        }

        return new HeatPart(cable.Id, most, mean, gaps.Missing, gaps.Assumed);
    }

    // What is charged and what is drawn run against each other on what they share: the greater counts. Mean of the square; loads are on independently of each other.
    private (double MostA2, double MeanA2) Squares(string elementId, PlanGaps gaps)
    {
        double all = 0, usual = 0, spread = 0, charging = _currents.ChargingThroughA(elementId);
        foreach (CableCurrents.Drawn drawn in _currents.DrawnThrough(elementId))
        {
            gaps.Need(drawn.CurrentA, drawn.ThingId, "runningW");
            double current = drawn.CurrentA ?? 0;
            all += current;
            usual += drawn.DutyFraction * current;
            spread += drawn.DutyFraction * (1 - drawn.DutyFraction) * current * current;
        }

        return (Math.Max(all, charging) * Math.Max(all, charging), Math.Max((usual * usual) + spread, charging * charging));
    }

    private static double OhmPerM(Cable cable) => ConductorResistance.Calculate(new ConductorResistanceInput
    {
        Subject = $"cable '{cable.Id}'",
        AreaMm2 = cable.AreaMm2.Value,
        LengthM = 1,
        Strand = ConductorElements.StrandOf(cable),
        IsTinned = ConductorElements.IsTinned(cable),
        ConductorC = cable.InsulationC?.Value ?? HottestUsualC,
    }).ResistanceOhm;

    private Dictionary<string, double> Shares(Cable cable)
    {
        Dictionary<string, double> shares = new(StringComparer.Ordinal);
        double whole = cable.Run.Sum(leg => leg.LengthM);
        foreach ((double share, string? told) in whole > 0
            ? cable.Run.Select(leg => (leg.LengthM / whole, leg.Space ?? (leg.Way is null ? null : _view.Boat.Find<Way>(leg.Way)?.Space))) : [(1.0, null)])
        {
            foreach (string id in told is not null && _view.Boat.Find<Space>(told) is not null ? [told] : EndSpaces(cable))
            {
                shares[id] = shares.GetValueOrDefault(id) + share;
            }
        }

        return shares;
    }

    private IEnumerable<string> EndSpaces(Cable cable) =>
        cable.Cores.SelectMany(core => new[] { core.From.Part, core.To.Part }).Select(id => _view.Boat.Find<Part>(id)?.Space).OfType<string>().Distinct(StringComparer.Ordinal);
}
