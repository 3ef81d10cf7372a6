using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Review.Tests;

/// <summary>The small boat with a 12 V converter behind its fuse, and a lamp behind that with a fuse of its own.</summary>
internal static class ConverterBoat
{
    public static BoatModel Of(double areaMm2, double limitA, double fuseA, double lampA) => SmallBoat.OneLamp(fuseA: 100).With(
        new DcConverter { Id = "converter", OutputV = 12, RatedA = limitA, EfficiencyFraction = 0.9, LeastInputV = 9, IsIsolated = true },
        SmallBoat.LampCable("converter-cable", "converter") with { AreaMm2 = 16, Cores = [SmallBoat.Core("plus", "fuse.out", "converter.in+"), SmallBoat.Core("minus", "minus.bar", "converter.in-")] },
        new Protection { Id = "out-fuse", Means = ProtectionMeans.Fuse, RatedA = fuseA, RatedV = 58, BreakingA = 2000, Gates = "blade-type-c", ResistanceOhm = 0.002, Place = new Place(1, 0, 1) },
        new Link { Id = "out-strap", From = new Terminal("converter", "out+"), To = new Terminal("out-fuse", "in"), LengthM = 0.05, ResistanceOhm = 0.0002 },
        SmallBoat.Lamp("small", lampA),
        SmallBoat.LampCable("small-cable", "small") with { AreaMm2 = areaMm2, Cores = [SmallBoat.Core("plus", "out-fuse.out", "small.+"), SmallBoat.Core("minus", "converter.out-", "small.-")] });
}
