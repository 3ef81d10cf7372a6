using System.Collections.Immutable;

namespace Orlop.Electrics.Networks;

/// <summary>Faults in one network under one set of conditions.</summary>
internal sealed class FaultStudy
{
    // What round-off leaves of no share, and takes off the whole.
    private const double LeastShareFraction = 1e-7;

    private readonly Wiring _wiring;
    private readonly FaultConditions _conditions;
    private readonly LinearNetwork _batteriesOnly;
    private readonly Lazy<LinearNetwork> _everySource;
    private readonly double[] _limitA;
    private readonly double[] _conductanceS;
    private readonly Lazy<Dictionary<string, int>> _branchOf;

    public FaultStudy(Wiring wiring, FaultConditions conditions)
    {
        _wiring = wiring;
        _conditions = conditions;
        _limitA = [.. wiring.LimitedSources.Select(s => s.LimitA), .. wiring.Converters.Select(c => c.RatedW / c.OutputV)];
        var (conductanceS, emfV) = Elements();
        _conductanceS = conductanceS;
        _branchOf = new Lazy<Dictionary<string, int>>(BranchOf);
        var firstLimited = wiring.Start(BranchKind.LimitedSource);
        _batteriesOnly = new LinearNetwork(wiring, conductanceS[..firstLimited], emfV[..firstLimited]);
        _everySource = new Lazy<LinearNetwork>(() => new LinearNetwork(wiring, conductanceS, emfV));
    }

    /// <summary>The fault between two junctions; null when they are one.</summary>
    public FaultCurrentResult? Between(int plus, int minus)
    {
        if (plus == minus)
        {
            return null;
        }

        return _batteriesOnly.AreJoined(plus, minus) ? FedByBatteries(plus, minus)
            : _conditions.CountsLimitedSources && _everySource.Value.AreJoined(plus, minus) ? FedByLimits(plus, minus)
            : new FaultCurrentResult(0, 0, double.PositiveInfinity, 0, IsFedByBatteries: false);
    }

    /// <summary>
    /// The fault between two junctions that batteries alone feed, with the current of each conductor and contact, positive from its first end; null where they are one, or no battery
    /// feeds the fault.
    /// </summary>
    public FaultFlow? FlowBetween(int plus, int minus)
    {
        if (plus == minus || !_batteriesOnly.AreJoined(plus, minus))
        {
            return null;
        }

        var response = _batteriesOnly.UnitResponse(plus, minus);
        var (sourceOhm, openV) = (response[plus] - response[minus], _batteriesOnly.OpenV[plus] - _batteriesOnly.OpenV[minus]);
        var currentA = openV / sourceOhm;
        var branchA = new double[_wiring.Start(BranchKind.Battery)];
        for (var k = 0; k < branchA.Length; k++)
        {
            var (a, b) = (_wiring.Branches[k].A, _wiring.Branches[k].B);
            branchA[k] = a == b ? 0 : (_batteriesOnly.OpenV[a] - _batteriesOnly.OpenV[b] - (currentA * (response[a] - response[b]))) * _conductanceS[k];
        }

        return new FaultFlow(new FaultCurrentResult(currentA, openV, sourceOhm, 0, IsFedByBatteries: true), _branchOf.Value, branchA);
    }

    /// <summary>The elements that make up the resistance between two junctions that batteries alone feed; none where they are one, or no battery joins them.</summary>
    public ImmutableArray<FaultPiece> PiecesBetween(int plus, int minus)
    {
        if (plus == minus || !_batteriesOnly.AreJoined(plus, minus))
        {
            return [];
        }

        var response = _batteriesOnly.UnitResponse(plus, minus);
        var pieces = ImmutableArray.CreateBuilder<FaultPiece>();
        for (var k = 0; k < _wiring.Start(BranchKind.LimitedSource); k++)
        {
            var branch = _wiring.Branches[k];
            var share = branch.A == branch.B ? 0 : Math.Abs(response[branch.A] - response[branch.B]) * _conductanceS[k];
            if (share > LeastShareFraction)
            {
                pieces.Add(new FaultPiece(_wiring.IdOf(branch), 1 / _conductanceS[k], Math.Abs(share - 1) < LeastShareFraction ? 1 : share));
            }
        }

        return pieces.ToImmutable();
    }

    private Dictionary<string, int> BranchOf() => _wiring.Conductors.Select(conductor => conductor.Id).Concat(_wiring.Contacts.Select(contact => contact.Id))
        .Select((id, branch) => (id, branch))
        .Where(item => _wiring.Branches[item.branch].A != _wiring.Branches[item.branch].B)
        .ToDictionary(item => item.id, item => item.branch, StringComparer.Ordinal);

    private FaultCurrentResult FedByBatteries(int plus, int minus)
    {
        var response = _batteriesOnly.UnitResponse(plus, minus);
        var sourceOhm = response[plus] - response[minus];
        var openV = _batteriesOnly.OpenV[plus] - _batteriesOnly.OpenV[minus];
        var limitedA = 0.0;
        if (_conditions.CountsLimitedSources)
        {
            // By reciprocity, a current between two nodes raises the fault's voltage as the unit response differs between them.
            for (var k = 0; k < _limitA.Length; k++)
            {
                var source = LimitedBranch(k);
                if (_batteriesOnly.AreJoined(source.A, source.B) && _batteriesOnly.AreJoined(source.A, plus))
                {
                    limitedA += _limitA[k] * (response[source.A] - response[source.B]) / sourceOhm;
                }
            }
        }

        return new FaultCurrentResult((openV / sourceOhm) + limitedA, openV, sourceOhm, limitedA, IsFedByBatteries: true);
    }

    /// <summary>Where no battery feeds, the sources hold their voltage until the sum of their limits is reached.</summary>
    private FaultCurrentResult FedByLimits(int plus, int minus)
    {
        var network = _everySource.Value;
        var response = network.UnitResponse(plus, minus);
        var sourceOhm = response[plus] - response[minus];
        var openV = network.OpenV[plus] - network.OpenV[minus];
        var mostA = 0.0;
        for (var k = 0; k < _limitA.Length; k++)
        {
            if (network.AreJoined(LimitedBranch(k).A, plus))
            {
                mostA += _limitA[k];
            }
        }

        var currentA = Math.CopySign(Math.Min(Math.Abs(openV) / sourceOhm, mostA), openV);
        return new FaultCurrentResult(currentA, openV, sourceOhm, currentA, IsFedByBatteries: false);
    }

    private Branch LimitedBranch(int limited) => _wiring.Branches[_wiring.Start(BranchKind.LimitedSource) + limited];

    private (double[] ConductanceS, double[] EmfV) Elements()
    {
        var laws = new BranchLaws(_wiring);
        var firstSource = _wiring.Start(BranchKind.Battery);
        var conductanceS = new double[_wiring.Start(BranchKind.Load)];
        var emfV = new double[conductanceS.Length];
        for (var k = 0; k < _wiring.Conductors.Length; k++)
        {
            var ratedC = _conditions.IsHot ? _wiring.Conductors[k].Heating?.RatedC : null;
            conductanceS[k] = 1 / (_wiring.Conductors[k].ResistanceAt20Ohm * BranchLaws.ResistanceFactor(ratedC ?? 20));
        }

        laws.ContactS.CopyTo(conductanceS, _wiring.Conductors.Length);
        laws.SourceS.CopyTo(conductanceS, firstSource);
        laws.SourceV.CopyTo(emfV, firstSource);
        return (conductanceS, emfV);
    }
}
