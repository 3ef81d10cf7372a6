using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Electrics.Conductors;
using Orlop.Review.Findings;
using Orlop.Review.Networks;
using Orlop.Review.Practices;

namespace Orlop.Review.Electrics;

/// <summary>What a cable may carry in a condition, or what is missing to say so.</summary>
/// <param name="Result">Null when something is missing or no practice is chosen; where only the insulation is missing, with the best of the table and alone: it may carry no more than that.</param>
/// <param name="AmbientC">Temperature of the hottest stretch.</param>
/// <param name="SpaceTitle">The space that sets it.</param>
internal sealed record AmpacityOfCable(AmpacityResult? Result, double AmbientC, string SpaceTitle, ImmutableArray<FindingInput> Missing)
{
    public static AmpacityOfCable Of(ElectricsView view, Cable cable, Condition condition)
    {
        Surroundings surroundings = CoreSurroundings.Of(view.Boat, view.Air, cable, condition);
        ImmutableArray<FindingInput> missing = surroundings.Missing;
        if (cable.InsulationC is null)
        {
            missing = missing.Add(new FindingInput(cable.Id, "insulationC", IsMissing: true));
        }

        string space = surroundings.SpaceId is { } id ? view.Boat.Find(id)?.Title ?? id : "";
        if (view.Practice is not { } practice || surroundings.AmbientC is not { } ambient || practice.Ampacities.Rows.IsDefaultOrEmpty)
        {
            return new AmpacityOfCable(null, surroundings.AmbientC ?? 0, space, missing);
        }

        bool isGrouped = practice.Find(LimitIds.GroupingFromV) is not { } from || NominalV(view, condition, cable) >= from.Value;
        AmpacityResult result = view.AmpacityFor(new AmpacityInput
        {
            Subject = $"cable '{cable.Id}'",
            Table = practice.Ampacities,
            AreaMm2 = cable.AreaMm2.Value,
            InsulationC = cable.InsulationC?.Value ?? practice.Ampacities.Rows.Max(row => row.InsulationC),
            AmbientC = ambient,
            LoadedCount = cable.InsulationC is null ? 1 : LoadedCurrents.TogetherCount(view, condition, cable),
            BundleFactors = isGrouped ? practice.Groupings : null,
        });
        return new AmpacityOfCable(result, ambient, space, missing);
    }

    /// <summary>The higher of the nominal voltages of what a cable feeds and of the sources that reach it; infinite when neither is known, so that the stricter rule applies.</summary>
    public static double NominalV(ElectricsView view, Condition condition, Cable cable)
    {
        SupplyPaths paths = view.PathsIn(condition);
        double[] nominal = [.. cable.Cores
            .SelectMany(core => paths.TakersBehind(ElementIds.Core(cable, core)))
            .Select(id => view.Boat.Find<ElectricLoad>(id)?.NominalV.Value)
            .Append(view.SystemV(cable))
            .OfType<double>()];
        return nominal.Length == 0 ? double.PositiveInfinity : nominal.Max();
    }
}
