using Orlop.Boat.Things;
using Orlop.Electrics.Conductors;

namespace Orlop.Review.Electrics;

/// <summary>A cable's conductor as it stands before a fault: at its insulation's rated temperature, where it lies.</summary>
internal static class FaultedConductor
{
    /// <summary>
    /// The hottest that the insulation may get in a fault of at most 5 s: thermoplastic up to 300 mm², the lowest of IEC 60364-4-43 table 43A (from memory). A cable does not say of what its
    /// insulation is made, so the lowest is taken for all.
    /// </summary>
    public const double FinalC = 160;

    /// <summary>Where that comes from.</summary>
    public const string FinalSource = "IEC 60364-4-43, table 43A, thermoplastic: the lowest of the table";

    /// <summary>The conductor with a current in it; null where the practice's table does not reach it, or its insulation is rated as hot as it may get.</summary>
    public static (HeatedWithstandInput Conductor, double AmpacityA)? Of(ElectricsView view, Cable cable, Condition condition, double currentA)
    {
        AmpacityOfCable where = view.AmpacityOf(cable, condition);
        if (where.Missing.Length > 0 || where.Result is not { IsTooHot: false, GroupedTableCurrentA: { } rated, CurrentA: { } ampacity }
            || cable.InsulationC is not { } insulation || insulation.Value >= FinalC || view.Practice is not { } practice
            || practice.Ampacities.Lookup(cable.AreaMm2.Value, insulation.Value).Row is not { } row)
        {
            return null;
        }

        return (new HeatedWithstandInput
        {
            Subject = $"cable '{cable.Id}'",
            AreaMm2 = cable.AreaMm2.Value,
            AmbientC = where.AmbientC,
            InitialC = insulation.Value,
            FinalC = FinalC,
            CurrentA = currentA,
            RatedCurrentA = rated,
            RatedC = row.InsulationC,
            TableAmbientC = practice.Ampacities.AmbientC,
        }, ampacity);
    }
}
