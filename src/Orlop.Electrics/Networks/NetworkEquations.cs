namespace Orlop.Electrics.Networks;

/// <summary>
/// The balance of current at every junction, and its slopes, for given potentials. Scratch of one solve; not shared between threads.
/// </summary>
internal sealed class NetworkEquations(PreparedNetwork network)
{
    private const double Edge = 1e-14;
    private readonly int[] _from = network.A;
    private readonly int[] _to = network.B;
    private readonly Wiring _wiring = network.Wiring;
    private readonly BranchLaws _laws = network.Laws;
    private readonly int _firstContact = network.Wiring.Start(BranchKind.Contact);
    private readonly int _firstSource = network.Wiring.Start(BranchKind.Battery);
    private readonly int _firstConverterOutput = network.Wiring.Start(BranchKind.ConverterOutput);
    private readonly int _firstSink = network.Wiring.Start(BranchKind.Load);

    /// <summary>Current of each branch from A to B.</summary>
    public double[] CurrentA { get; } = new double[network.A.Length];

    /// <summary>dI/dV of each branch.</summary>
    public double[] SlopeS { get; } = new double[network.A.Length];

    /// <summary>Current left over at each unknown: what its branches carry away.</summary>
    public double[] ImbalanceA { get; } = new double[network.UnknownCount];

    public int FirstSource => _firstSource;

    public int FirstSink => _firstSink;

    /// <summary>Voltage across a branch.</summary>
    public double Across(int branch, double[] potentials)
    {
        var (a, b) = (_from[branch], _to[branch]);
        return (a < 0 ? 0 : potentials[a]) - (b < 0 ? 0 : potentials[b]);
    }

    /// <summary>Works out currents, slopes and imbalances at the potentials.</summary>
    public void Evaluate(double[] potentials, Sinks sinks)
    {
        EvaluateMetal(potentials);
        EvaluateSources(potentials);
        for (var k = 0; k < sinks.Kinds.Length; k++)
        {
            EvaluateSink(k, potentials, sinks);
        }

        var (from, to, currents, imbalances) = (_from, _to, CurrentA, ImbalanceA);
        Array.Clear(imbalances);
        for (var k = 0; k < currents.Length; k++)
        {
            if (from[k] >= 0)
            {
                imbalances[from[k]] += currents[k];
            }

            if (to[k] >= 0)
            {
                imbalances[to[k]] -= currents[k];
            }
        }
    }

    /// <summary>Fills the matrix of slopes.</summary>
    public void FillMatrix(double[] values)
    {
        var (from, to, slots, slopes) = (_from, _to, network.Slot, SlopeS);
        Array.Clear(values);
        for (var k = 0; k < slopes.Length; k++)
        {
            Stamp(values, from[k], to[k], slots[k], slopes[k]);
        }
    }

    /// <summary>Counts every source at a limit as if it held its voltage.</summary>
    public void HoldAll(double[] values)
    {
        for (var k = _firstSource; k < _firstSink; k++)
        {
            Hold(values, k);
        }
    }

    /// <summary>
    /// Counts sources of the part of an unknown as if they held their voltage: those that are off, which come in when the voltage falls,
    /// and in a part without a battery those at their limit, which come in when it rises. False when none is left to count.
    /// </summary>
    public bool TryHold(int unknown, double[] values)
    {
        var hasBattery = network.HasBattery(unknown);
        var isAnyHeld = false;
        for (var k = _firstSource; k < _firstSink; k++)
        {
            var mayHold = CurrentA[k] == 0 || !hasBattery;
            if (mayHold && network.IsInPartOf(unknown, k))
            {
                isAnyHeld |= Hold(values, k);
            }
        }

        return isAnyHeld;
    }

    private bool Hold(double[] values, int branch)
    {
        var missingS = _laws.SourceS[branch - _firstSource] - SlopeS[branch];
        Stamp(values, branch, missingS);
        SlopeS[branch] += missingS;
        return missingS > 0;
    }

    /// <summary>Adds one branch's slope to the matrix.</summary>
    public void Stamp(double[] values, int branch, double slopeS) =>
        Stamp(values, _from[branch], _to[branch], network.Slot[branch], slopeS);

    private static void Stamp(double[] values, int a, int b, int slot, double slopeS)
    {
        if (a == b)
        {
            return;
        }

        if (a >= 0)
        {
            values[a] += slopeS;
        }

        if (b >= 0)
        {
            values[b] += slopeS;
        }

        if (slot >= 0)
        {
            values[slot] -= slopeS;
        }
    }

    /// <summary>Power at the terminals of a converter's output.</summary>
    public double ConverterOutputW(int converter, double[] potentials) =>
        -CurrentA[_firstConverterOutput + converter] * Across(_firstConverterOutput + converter, potentials);

    /// <summary>Temperature of a conductor with heating (eq. 3 and 4): the rise with the resistance that the rise itself makes.</summary>
    public double ConductorC(int conductor, ConductorHeating heating)
    {
        var square = CurrentA[conductor] * CurrentA[conductor];
        var riseK = _laws.RisePerA2[conductor] * square * BranchLaws.ResistanceFactor(heating.AmbientC) / (1 - (_laws.RunawayPerA2[conductor] * square));
        return heating.AmbientC + riseK;
    }

    /// <summary>The first conductor hotter than melting copper, or null.</summary>
    public int? Molten()
    {
        for (var k = 0; k < _firstContact; k++)
        {
            if (_laws.RunawayPerA2[k] > 0 && !(Math.Abs(CurrentA[k]) <= _laws.MeltingA[k]))
            {
                return k;
            }
        }

        return null;
    }

    private void EvaluateMetal(double[] potentials)
    {
        var (currents, slopes, conductors, runaways, contacts) = (CurrentA, SlopeS, _laws.ConductorS, _laws.RunawayPerA2, _laws.ContactS);
        for (var k = 0; k < conductors.Length; k++)
        {
            var voltageV = Across(k, potentials);
            if (runaways[k] > 0)
            {
                (currents[k], slopes[k]) = _laws.Heated(k, voltageV);
            }
            else
            {
                slopes[k] = conductors[k];
                currents[k] = voltageV * conductors[k];
            }
        }

        for (var k = 0; k < contacts.Length; k++)
        {
            slopes[_firstContact + k] = contacts[k];
            currents[_firstContact + k] = Across(_firstContact + k, potentials) * contacts[k];
        }
    }

    private void EvaluateSources(double[] potentials)
    {
        for (var k = _firstSource; k < _firstSink; k++)
        {
            var source = k - _firstSource;
            var outA = (_laws.SourceV[source] - Across(k, potentials)) * _laws.SourceS[source];
            var allowedA = Math.Clamp(outA, _laws.LeastSourceA[source], _laws.MostSourceA[source]);
            CurrentA[k] = -allowedA;

            // A source at the very edge of its range counts as holding, or round-off would take an unloaded one out of the matrix.
            var edgeA = Edge * Math.Abs(_laws.SourceV[source]) * _laws.SourceS[source];
            SlopeS[k] = Math.Abs(outA - allowedA) <= edgeA ? _laws.SourceS[source] : 0;
        }
    }

    private void EvaluateSink(int sink, double[] potentials, Sinks sinks)
    {
        var branch = _firstSink + sink;
        var voltageV = Across(branch, potentials);
        var amount = sinks.Amounts[sink];
        switch (sinks.Kinds[sink])
        {
            case LoadKind.Resistance:
                CurrentA[branch] = voltageV / amount;
                SlopeS[branch] = 1 / amount;
                break;
            case LoadKind.Current:
                CurrentA[branch] = sinks.Signs[sink] * amount;
                SlopeS[branch] = 0;
                break;
            default:
                var powerW = amount;
                if (sinks.FollowsConverter[sink])
                {
                    var converter = sink - _wiring.Loads.Length;
                    powerW *= BranchLaws.ConverterInputW(_wiring.Converters[converter], ConverterOutputW(converter, potentials));
                }

                CurrentA[branch] = powerW > 0 ? powerW / voltageV : 0;
                SlopeS[branch] = powerW > 0 ? -powerW / (voltageV * voltageV) : 0;
                break;
        }
    }
}
