using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics;

/// <summary>The largest device that may protect a cable, with its working.</summary>
internal sealed record AllowedDevice(double MostA, ImmutableArray<WorkingLine> Working)
{
    // From this voltage the practices set another ratio (33 CFR 183.455(c)).
    private const double HigherVoltageV = 50;

    /// <summary>Null when an input or a limit is missing.</summary>
    public static AllowedDevice? Of(ElectricsView view, Cable cable, Condition condition)
    {
        if (view.Practice is not { } practice || cable.InsulationC is not { } insulation
            || practice.Find(LimitIds.DeviceUsesDeratedAmpacityFlag) is not { } derated)
        {
            return null;
        }

        double nominal = AmpacityOfCable.NominalV(view, condition, cable);
        string ratioId = nominal >= HigherVoltageV ? LimitIds.DeviceOverAmpacityFrom50VRatio : LimitIds.DeviceOverAmpacityBelow50VRatio;
        if (practice.Find(ratioId) is not { } ratio)
        {
            return null;
        }

        double? ampacity;
        WorkingLine line;
        if (derated.Value == 0)
        {
            var lookup = practice.Ampacities.Lookup(cable.AreaMm2.Value, insulation.Value);
            ampacity = lookup.Row?.CurrentA;
            line = Line(lookup.Working, practice.IsAmpacityFromMemory);
        }
        else
        {
            AmpacityOfCable where = view.AmpacityOf(cable, condition);
            ampacity = where.Result?.CurrentA;
            line = new WorkingLine("Ampacity where it runs", "as in the check that the cable carries its current", ampacity is { } value ? A(value) : null, practice.Ampacities.Source, practice.IsAmpacityFromMemory);
        }

        return ampacity is { } carries
            ? new AllowedDevice(ratio.Value * carries,
            [
                line,
                Line(ratio, "Device over ampacity", "Ratio"),
                new WorkingLine("Largest device", Formula.Of("{0} × {1}", v => v[0] * v[1], ratio.Value, carries), A(ratio.Value * carries), ""),
            ])
            : null;
    }
}
