using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Review.Tests.Electrics;

/// <summary>A steel boat with a kettle behind breaker, residual-current device and change-over, fed by the shore or an inverter; everything given.</summary>
internal static class AcBoat
{
    /// <summary>Shore loop 0.8 ohm; live 3 + 3 m, earth 3 + 3 m of 1.5 and 2.5 mm².</summary>
    public static BoatModel Whole() => SmallBoat.OneLamp().With(
        new Particulars { Id = "particulars", Name = "Boat", Material = HullMaterial.Steel },
        new Condition { Id = "in-use", Name = "In use", ChargeFraction = 0.8, LowestChargeFraction = 0.4 },
        new Condition { Id = "ashore", Name = "Ashore", OnShore = true, ChargeFraction = 0.8, LowestChargeFraction = 0.4 },
        new ShoreInlet { Id = "shore", SupplyV = 230, RatedA = 16, SourceOhm = 0.8, NeutralBond = NeutralBond.Always, EarthIsolation = EarthIsolation.GalvanicIsolator, ShowsPolarity = false },
        new Inverter { Id = "inverter", RatedW = 1300, OutputV = 230, NeutralBond = NeutralBond.WhileFeeding, ShortCircuitA = 12 },
        new Changeover
        {
            Id = "changeover",
            RatedA = 25,
            IsInterlocked = true,
            ResistanceOhm = 0.003,
            Positions = [new ChangeoverUse("in-use", ChangeoverPosition.B), new ChangeoverUse("ashore", ChangeoverPosition.A)],
        },
        Breaker("shore-breaker", 16) with { Gates = "breaker-c" },
        Breaker("residual", 16) with { Gates = "breaker-c", ResidualA = 0.03, ResidualType = ResidualType.A },
        Breaker("kettle-breaker", 10),
        new Busbar { Id = "earth", IsBonded = true },
        new ElectricLoad { Id = "kettle", IsAc = true, Behaviour = LoadBehaviour.Power, NominalV = 230, RunningW = 1000, StartRatio = 1, Uses = [new LoadUse("in-use", 0.1), new LoadUse("ashore", 0.1)] },
        Cable("shore-cable", 2.5, 3, ("live", "shore.l", "shore-breaker.in"), ("neutral", "shore.n", "shore-breaker.in2"), ("earth", "shore.pe", "earth.bar")),
        Cable("shore-tail", 2.5, 0, ("live", "shore-breaker.out", "changeover.a"), ("neutral", "shore-breaker.out2", "changeover.a2")),
        Cable("inverter-cable", 2.5, 3, ("live", "inverter.l", "changeover.b"), ("neutral", "inverter.n", "changeover.b2"), ("earth", "inverter.pe", "earth.bar")),
        Cable("tail", 2.5, 0, ("live", "changeover.out", "residual.in"), ("neutral", "changeover.out2", "residual.in2")),
        Cable("branch", 2.5, 0, ("live", "residual.out", "kettle-breaker.in"), ("neutral", "residual.out2", "kettle-breaker.in2")),
        Cable("kettle-cable", 1.5, 3, ("live", "kettle-breaker.out", "kettle.l"), ("neutral", "kettle-breaker.out2", "kettle.n"), ("earth", "earth.bar", "kettle.pe")));

    public static Protection Breaker(string id, double ratedA) => new()
    {
        Id = id,
        Means = ProtectionMeans.Breaker,
        RatedA = ratedA,
        RatedV = 240,
        BreakingA = 6000,
        Gates = "breaker-b",
        IsTwoPole = true,
        ResistanceOhm = 0.005,
    };

    /// <summary>Insulation of 70 °C, joints of no resistance.</summary>
    public static Cable Cable(string id, double areaMm2, double lengthM, params (string Id, string From, string To)[] cores) => new()
    {
        Id = id,
        AreaMm2 = areaMm2,
        InsulationC = 70,
        LengthM = lengthM,
        IsSheathed = true,
        Strands = StrandClass.Flexible5,
        Cores = [.. cores.Select(core => new Core
        {
            Id = core.Id, From = Terminal.Parse(core.From), To = Terminal.Parse(core.To),
            FromEnd = new Termination(TerminationMeans.Ferrule, null, 0), ToEnd = new Termination(TerminationMeans.Ferrule, null, 0),
        })],
        Run = [new RunLeg { Space = "cabin", LengthM = lengthM }],
    };
}
