using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Tests;

namespace Orlop.App.Tests.Workings;

/// <summary>
/// Small boats wired at random, the same for the same seed: batteries, chargers, a shore inlet, an inverter, a converter, bars in trees and meshes, fuses, breakers, switches, plugs, loads of every behaviour.
/// Now and then a value is left out, is odd, or the wiring is mistaken.
/// </summary>
internal sealed class RandomBoat
{
    private const double ShareLeftOut = 0.04;
    private const double ShareMistaken = 0.3;

    private static readonly double[] Areas = [0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70];
    private static readonly double[] Fuses = [1, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40, 60, 80, 100, 150, 200, 250];
    private static readonly string[] Gates = ["blade-type-c", "strip-sf30", "strip-sf51", "breaker-b", "breaker-c", "breaker-d"];

    private readonly Random _random;
    private readonly List<Thing> _things = [];
    private readonly List<string> _conditions = [];
    private readonly double _systemV;
    private int _number;

    private RandomBoat(int seed)
    {
        _random = new Random(seed);
        _systemV = _random.Next(2) == 0 ? 12 : 24;
    }

    public static BoatModel Of(int seed)
    {
        RandomBoat boat = new(seed);
        BoatModel model = boat.Build();
        for (int edits = boat._random.NextDouble() < ShareMistaken ? 1 + boat._random.Next(3) : 0; edits > 0; edits--)
        {
            model = RandomEdit.Of(model, boat._random);
        }

        return model;
    }

    private BoatModel Build()
    {
        if (!Is(0.05))
        {
            _things.Add(new PracticeChoice { Id = "practice", Basis = OneOf("us-federal", "iso-small-craft", "owner") });
        }

        for (int k = _random.Next(1, 4); k > 0; k--)
        {
            string id = $"condition-{k}";
            _conditions.Add(id);
            _things.Add(new Condition { Id = id, EngineRuns = Is(0.3), OnShore = Is(0.3), SunShines = Is(0.3), ChargeFraction = Known(Between(0.3, 1)), LowestChargeFraction = Known(Between(0.1, 0.8)) });
        }

        _things.Add(new Space { Id = "cabin", Use = SpaceUse.Dry, From = new Place(0, -1, 0), To = new Place(4, 1, 2), AmbientC = Known(Between(10, 45)) });
        _things.Add(new Space { Id = "engine", Use = SpaceUse.Engine, From = new Place(4, -1, 0), To = new Place(6, 1, 2), AmbientC = Known(30), EngineRunningC = Known(Between(40, 70)) });
        string minus = Bar("minus", isBonded: Is(0.8));
        List<string> plus = [Bar("main-plus")];
        for (int k = _random.Next(1, 4); k > 0; k--)
        {
            Source(plus[0], minus);
        }

        for (int k = _random.Next(0, 4); k > 0; k--)
        {
            string from = OneOf([.. plus]), bar = Bar($"bar-{k}");
            Join(from, bar);
            if (Is(0.3))
            {
                Join(OneOf([.. plus]), bar);
            }

            plus.Add(bar);
        }

        Takers(plus, minus, _systemV, isAc: false, _random.Next(1, 7));
        Conversions(plus, minus);
        return new BoatModel { Things = [.. _things] };
    }

    private void Source(string plus, string minus)
    {
        string id = Next("bank");
        ChargePoint[] curve = [new(0, _systemV * 0.97), new(0.5, _systemV * 1.02), new(1, _systemV * Between(1.04, 1.1))];
        _things.Add(new BatteryBank
        {
            Id = id,
            Chemistry = OneOf(Enum.GetValues<BatteryChemistry>()),
            NominalV = _systemV,
            InternalResistanceOhm = Known(Between(0.002, 0.03)),
            MostDischargeA = Known(Between(50, 800)),
            OpenCircuit = Is(ShareLeftOut) ? [] : curve.ToValueList(),
        });
        string fuse = Device();
        Link($"{id}.+", $"{fuse}.in");
        Cable($"{fuse}.out", plus, OneOf(25.0, 35, 50, 70), null, null);
        Cable($"{id}.-", minus, OneOf(25.0, 35, 50, 70), null, null);
        if (Is(0.4))
        {
            string charger = Next("charger");
            _things.Add(new Charger { Id = charger, Drive = OneOf(ChargerDrive.Engine, ChargerDrive.Sun), LimitA = Between(5, 100), SetpointV = _systemV * Between(1.1, 1.2) });
            string guard = Device();
            Cable($"{charger}.+", $"{guard}.in", OneOf(Areas), null, null);
            Cable($"{guard}.out", plus, OneOf(Areas), null, null);
            Cable($"{charger}.-", minus, OneOf(Areas), null, null);
        }
    }

    private void Conversions(List<string> plus, string minus)
    {
        if (Is(0.3))
        {
            string id = Next("converter"), bar = Bar("converted");
            _things.Add(new DcConverter { Id = id, OutputV = _systemV == 24 ? 12 : 24, RatedA = Between(2, 30), EfficiencyFraction = Known(Between(0.7, 0.97)), IdleW = Known(Between(0, 5)), LeastInputV = Known(_systemV * Between(0.75, 0.95)) });
            Feed(plus, minus, id, "in+", "in-");
            string guard = Device();
            Cable($"{id}.out+", $"{guard}.in", OneOf(Areas), null, null);
            Cable($"{guard}.out", bar, OneOf(Areas), null, null);
            Cable($"{id}.out-", minus, OneOf(Areas), null, null);
            Takers([bar], minus, _systemV == 24 ? 12 : 24, isAc: false, _random.Next(1, 3));
        }

        if (Is(0.3))
        {
            string id = Next("inverter"), live = Bar("live"), neutral = Bar("neutral");
            _things.Add(new Inverter
            {
                Id = id,
                RatedW = Between(100, 3000),
                OutputV = OneOf(115.0, 230),
                IdleW = Known(Between(0, 20)),
                ProportionalLossFraction = Known(Between(0, 0.15)),
                OhmicLossPerW = Known(Between(0, 1e-4)),
                CutOffV = Known(_systemV * Between(0.8, 0.95)),
                CutOffDelayS = Is(0.5) ? Between(0, 2) : (Quantity?)null,
                Overloads = Is(0.5) ? [new Overload(2, 5)] : [],
                InputF = Known(Between(0.001, 0.02)),
            });
            Feed(plus, minus, id, "in+", "in-");
            Cable($"{id}.l", live, OneOf(1.5, 2.5, 4), $"{id}.n", neutral);
            Takers([live], neutral, OneOf(115.0, 230), isAc: true, _random.Next(1, 3));
        }

        if (Is(0.15))
        {
            string inlet = Next("inlet"), live = Bar("shore-live"), neutral = Bar("shore-neutral");
            _things.Add(new ShoreInlet { Id = inlet, SupplyV = 230, RatedA = OneOf(10.0, 16, 32), SourceOhm = Known(Between(0.1, 1)) });
            string breaker = Device();
            Cable($"{inlet}.l", $"{breaker}.in", OneOf(1.5, 2.5, 4), null, null);
            Cable($"{breaker}.out", live, OneOf(1.5, 2.5, 4), $"{inlet}.n", neutral);
            Takers([live], neutral, 230, isAc: true, _random.Next(1, 3));
        }
    }

    private void Takers(List<string> plus, string minus, double volts, bool isAc, int count)
    {
        for (int k = 0; k < count; k++)
        {
            string id = Next("load");
            bool isByPower = Is(0.5), starts = Is(0.5);
            double amperes = Math.Pow(10, Between(-1, 1.9)) / (isAc ? 10 : 1);
            _things.Add(new ElectricLoad
            {
                Id = id,
                Behaviour = OneOf(Enum.GetValues<LoadBehaviour>()),
                NominalV = volts,
                IsAc = isAc,
                PowerFactor = isAc && Is(0.5) ? Between(0.5, 1) : (Quantity?)null,
                RunningA = isByPower ? null : Known(amperes),
                RunningW = isByPower ? Known(amperes * volts) : null,
                StartRatio = Known(starts ? Between(1.2, 8) : 1),
                StartS = starts ? Known(Between(0.05, 5)) : null,
                LeastV = Is(0.7) ? volts * Between(0.75, 0.95) : (Quantity?)null,
                Drop = OneOf(DropClass.Critical, DropClass.General),
                IsVital = Is(0.1),
                IsCrankingMotor = !isAc && Is(0.03),
                Place = new Place(Between(0, 6), Between(-1, 1), 1),
                Uses = _conditions.Where(_ => Is(0.7)).Select(condition => new LoadUse(condition, Between(0.01, 1))).ToValueList(),
            });
            Feed(plus, minus, id, isAc ? "l" : "+", isAc ? "n" : "-");
        }
    }

    // From a bar through a fuse or breaker, perhaps a switch and a plug, by cable.
    private void Feed(List<string> plus, string minus, string id, string plusTerminal, string minusTerminal)
    {
        string from = OneOf([.. plus]), device = Device();
        Link(from, $"{device}.in");
        string at = $"{device}.out";
        if (Is(0.3))
        {
            string isolator = Next("switch");
            _things.Add(new IsolatorSwitch { Id = isolator, RatedA = Known(OneOf(Fuses)), ResistanceOhm = Known(Between(0, 0.005)), OpenIn = _conditions.Where(_ => Is(0.15)).ToValueList() });
            Cable(at, $"{isolator}.in", OneOf(Areas), null, null);
            at = $"{isolator}.out";
        }

        if (Is(0.2))
        {
            string plug = Next("plug");
            _things.Add(new PlugAndSocket { Id = plug, RatedA = Known(OneOf(Fuses)), RatedV = Known(_systemV * 2), ContactOhm = Known(Between(0.0005, 0.01)), Keying = Is(0.5) ? OneOf("round", "flat") : null });
            Cable(at, $"{plug}.in", OneOf(Areas), minus, $"{plug}.in2");
            (at, minus) = ($"{plug}.out", $"{plug}.out2");
        }

        Cable(at, $"{id}.{plusTerminal}", OneOf(Areas), minus, $"{id}.{minusTerminal}");
    }

    private void Join(string from, string to)
    {
        string device = Device();
        Cable(from, $"{device}.in", OneOf(Areas), null, null);
        Cable($"{device}.out", to, OneOf(Areas), null, null);
    }

    private string Device()
    {
        string id = Next("fuse");
        _things.Add(new Protection
        {
            Id = id,
            Means = OneOf(ProtectionMeans.Fuse, ProtectionMeans.Breaker),
            RatedA = OneOf(Fuses),
            RatedV = Known(OneOf(32.0, 58, 250)),
            BreakingA = Known(OneOf(1000.0, 2000, 5000, 10_000)),
            Gates = Is(0.85) ? OneOf(Gates) : null,
            ResistanceOhm = Known(Between(0.0001, 0.01)),
            Place = Is(0.9) ? new Place(Between(0, 6), Between(-1, 1), 1) : null,
        });
        return id;
    }

    private void Cable(string from, string to, double areaMm2, string? minusFrom, string? minusTo)
    {
        double lengthM = Math.Pow(10, Between(-0.7, 1.3));
        _things.Add(new Cable
        {
            Id = Next("cable"),
            AreaMm2 = areaMm2,
            Strands = OneOf(Enum.GetValues<StrandClass>()),
            InsulationC = Known(OneOf(60.0, 75, 90, 105)),
            LengthM = Known(lengthM),
            IsSheathed = Is(0.5),
            Cores = [Core("plus", from, to), .. minusFrom is null || minusTo is null ? Array.Empty<Core>() : [Core("minus", minusFrom, minusTo)]],
            Run = Is(0.9) ? [new RunLeg { Space = Is(0.8) ? "cabin" : "engine", LengthM = lengthM }] : [],
        });
    }

    private Core Core(string id, string from, string to) => new()
    {
        Id = id,
        From = Terminal.Parse(from),
        To = Terminal.Parse(to),
        FromEnd = End(),
        ToEnd = End(),
    };

    private Termination? End() => Is(0.1) ? null : new Termination(OneOf(TerminationMeans.Ring, TerminationMeans.Blade, TerminationMeans.Screw), null, Is(0.7) ? Between(0.0001, 0.002) : (Quantity?)null);

    private void Link(string from, string to) => _things.Add(new Link
    {
        Id = Next("link"),
        From = Terminal.Parse(from),
        To = Terminal.Parse(to),
        LengthM = Between(0, 0.2),
        ResistanceOhm = Is(0.2) ? null : Between(0, 0.0005),
    });

    private string Bar(string name, bool isBonded = false)
    {
        string id = Next(name);
        _things.Add(new Busbar { Id = id, RatedA = Known(Between(30, 300)), IsBonded = isBonded });
        return $"{id}.bar";
    }

    private string Next(string name) => $"{name}-n{++_number}";

    private Quantity? Known(double value) => Is(ShareLeftOut) ? null : new Quantity(value, OneOf(Enum.GetValues<Knowledge>()));

    private bool Is(double share) => _random.NextDouble() < share;

    private double Between(double least, double most) => least + ((most - least) * _random.NextDouble());

    private T OneOf<T>(params T[] all) => all[_random.Next(all.Length)];
}
