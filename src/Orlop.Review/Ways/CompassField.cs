using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Electrics.Fields;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Review.Networks;

namespace Orlop.Review.Ways;

/// <summary>
/// The field of the boat's direct currents at a compass in a condition. Every current runs along its cable from part to part, each part a point, so that all
/// loops close. Of the cores of one cable it is not known which lies towards the compass: their pull is counted whichever way they lie.
/// </summary>
/// <param name="Compass">The compass.</param>
/// <param name="Condition">The condition.</param>
/// <param name="LoopsUT">Horizontal field of what is known in place: loops whose ways there and back differ.</param>
/// <param name="PairsUT">Most that cores beside each other add, whichever way they lie.</param>
/// <param name="Greatest">The cables that do most by themselves, with their horizontal field.</param>
/// <param name="Missing">What it cannot be told without.</param>
public sealed record CompassField(Compass Compass, Condition Condition, double LoopsUT, double PairsUT, ImmutableArray<(string ThingId, double OwnUT)> Greatest, ImmutableArray<FindingInput> Missing)
{
    private const int MostTold = 4;
    private static readonly ChargeCase[] Charges = [ChargeCase.Normal, ChargeCase.Lowest];

    /// <summary>Most that the horizontal field can be; null while something is missing.</summary>
    public double? OwnUT => Missing.IsEmpty && double.IsFinite(LoopsUT + PairsUT) ? LoopsUT + PairsUT : null;

    /// <summary>Deviation on the worst heading; null while something is missing.</summary>
    public double? DeviationDeg => OwnUT is { } own && Compass.EarthUT is { } earth ? CompassDeviation.GreatestDeg(own, earth.Value) : null;

    /// <summary>The field at a compass in each condition that she is steered in by it.</summary>
    public static IEnumerable<CompassField> Of(WaysView view, Compass compass)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(compass);
        return view.Boat.All<Condition>().Where(condition => compass.SteeredIn.Count == 0 || compass.SteeredIn.Contains(condition.Id)).Select(condition => Of(view, compass, condition));
    }

    private static CompassField Of(WaysView view, Compass compass, Condition condition)
    {
        if (compass.Place is not { } place)
        {
            return new CompassField(compass, condition, 0, 0, [], [new FindingInput(compass.Id, "place", IsMissing: true)]);
        }

        List<FindingInput> missing = [];
        List<CableField> fields = [];
        foreach (Cable cable in view.Boat.All<Cable>().Where(cable => view.IsAc(cable) != true))
        {
            string[] cores = [.. cable.Cores.Select(core => Boat.Topology.ElementIds.Core(cable, core))];
            ImmutableArray<FindingInput> unknown = MissingInputs.OfCurrent(view.Electrics, condition, cores);
            if (unknown.IsEmpty && !Flows(view, condition, cores))
            {
                continue;
            }

            missing.AddRange([.. unknown, .. MissingOf(view, cable)]);
            if (CableField.Of(view, cable, place) is { } field)
            {
                fields.Add(field);
            }
        }

        foreach (Link link in view.Boat.All<Link>().Where(link => Flows(view, condition, [link.Id])))
        {
            (Place? from, Place? to) = (PlaceOf(view, link.From), PlaceOf(view, link.To));
            missing.AddRange(NoPlace(view, [link.From, link.To]));
            if (from is not null && to is not null)
            {
                fields.Add(CableField.Of(link, from, to, place));
            }
        }

        // On a run itself there is no number for its field.
        if (fields.Any(field => field.Cores.Any(core => !double.IsFinite((core.Middle + core.Towards + core.Across).SizeUT))))
        {
            missing.Add(new FindingInput(compass.Id, "place"));
        }

        return Charges.Select(charge => Sum(view, compass, condition, charge, fields, missing)).MaxBy(field => double.IsNaN(field.LoopsUT + field.PairsUT) ? double.PositiveInfinity : field.LoopsUT + field.PairsUT)!;
    }

    private static CompassField Sum(WaysView view, Compass compass, Condition condition, ChargeCase charge, List<CableField> fields, List<FindingInput> missing)
    {
        SolvedNetwork solved = view.Electrics.Solve(condition, charge);
        FieldVector loops = default;
        double pairsUT = 0;
        List<(string ThingId, double OwnUT)> each = [];
        foreach (CableField field in fields)
        {
            FieldVector middle = default, towards = default, across = default;
            foreach (CoreField core in field.Cores)
            {
                double current = solved.BranchA(core.ElementId) ?? double.NaN;
                (middle, towards, across) = (middle + (core.Middle * current), towards + (core.Towards * current), across + (core.Across * current));
            }

            double pair = field.IsPair ? Math.Max((towards - middle).HorizontalUT, (across - middle).HorizontalUT) : 0;
            loops += middle;
            pairsUT += pair;
            each.Add((field.OwnerId, middle.HorizontalUT + pair));
        }

        return new CompassField(compass, condition, loops.HorizontalUT, pairsUT, [.. each.OrderByDescending(one => one.OwnUT).Take(MostTold)], [.. missing.Distinct()]);
    }

    // Something flows in it, or whether anything does cannot be told.
    private static bool Flows(WaysView view, Condition condition, IEnumerable<string> elementIds) =>
        elementIds.Any(id => Charges.Any(charge => view.Electrics.Solve(condition, charge).BranchA(id) is not 0.0));

    private static IEnumerable<FindingInput> MissingOf(WaysView view, Cable cable) =>
    [
        .. NoPlace(view, cable.Cores.SelectMany(core => new[] { core.From, core.To })),
        .. CableField.OffM(cable) is null ? new[] { new FindingInput(cable.Id, "coreSpacingMm", IsMissing: true) } : [],
    ];

    private static IEnumerable<FindingInput> NoPlace(WaysView view, IEnumerable<Terminal> ends) =>
        ends.Where(end => PlaceOf(view, end) is null).Select(end => new FindingInput(end.Part, "place", IsMissing: true));

    private static Place? PlaceOf(WaysView view, Terminal end) => view.Boat.Find<Part>(end.Part)?.Place;
}
