namespace Orlop.Electrics.Networks;

/// <summary>Reads the operating point out of solved equations.</summary>
internal sealed class OperatingPointReport(PreparedNetwork network, NetworkEquations equations, double[] potentials)
{
    private readonly Wiring _wiring = network.Wiring;

    public OperatingPoint Build()
    {
        var nodeV = new double[_wiring.NodeNames.Length];
        for (var node = 0; node < nodeV.Length; node++)
        {
            var unknown = network.UnknownOfJunction[_wiring.JunctionOfNode[node]];
            nodeV[node] = unknown < 0 ? 0 : potentials[unknown];
        }

        var (sinkA, sinkV) = SinkValues();
        var outputW = new double[_wiring.Converters.Length];
        for (var k = 0; k < outputW.Length; k++)
        {
            outputW[k] = equations.ConverterOutputW(k, potentials);
        }

        return new OperatingPoint
        {
            NodeV = new ValuesById<double>(network.Ids.Nodes, nodeV),
            BranchA = new JoinedContacts(network, equations.CurrentA).BranchCurrents(),
            ConductorC = new ValuesById<double>(network.Ids.HeatedConductors, Temperatures()),
            SourceA = new ValuesById<double>(network.Ids.Sources, SourceCurrents()),
            LoadA = new ValuesById<double>(network.Ids.Sinks, sinkA),
            LoadV = new ValuesById<double>(network.Ids.Sinks, sinkV),
            SourceModes = new ValuesById<SourceMode>(network.Ids.LimitedSources, Modes()),
            ConverterOutputW = new ValuesById<double>(network.Ids.Converters, outputW),
            SourcePowerW = SourcePowerW(),
            LoadPowerW = LoadPowerW(),
            LossPowerW = LossPowerW(sinkA, sinkV, outputW),
        };
    }

    private double[] SourceCurrents()
    {
        var currents = new double[equations.FirstSink - equations.FirstSource];
        for (var k = 0; k < currents.Length; k++)
        {
            currents[k] = 0 - equations.CurrentA[equations.FirstSource + k];
        }

        return currents;
    }

    private (double[] CurrentA, double[] VoltageV) SinkValues()
    {
        var count = equations.CurrentA.Length - equations.FirstSink;
        var (currentA, voltageV) = (new double[count], new double[count]);
        for (var k = 0; k < count; k++)
        {
            currentA[k] = equations.CurrentA[equations.FirstSink + k];
            voltageV[k] = equations.Across(equations.FirstSink + k, potentials);
        }

        return (currentA, voltageV);
    }

    private double[] Temperatures()
    {
        var temperatures = new List<double>();
        for (var k = 0; k < _wiring.Conductors.Length; k++)
        {
            if (_wiring.Conductors[k].Heating is { } heating)
            {
                temperatures.Add(equations.ConductorC(k, heating));
            }
        }

        return [.. temperatures];
    }

    private SourceMode[] Modes()
    {
        var modes = new SourceMode[_wiring.LimitedSources.Length];
        var first = _wiring.Start(BranchKind.LimitedSource);
        for (var k = 0; k < modes.Length; k++)
        {
            var source = _wiring.LimitedSources[k];
            var wantedA = (source.SetpointV - equations.Across(first + k, potentials)) / source.SourceOhm;
            modes[k] = wantedA > source.LimitA ? SourceMode.AtLimit : wantedA < 0 ? SourceMode.Off : SourceMode.HoldingVoltage;
        }

        return modes;
    }

    private double SourcePowerW()
    {
        var power = 0.0;
        for (var k = equations.FirstSource; k < _wiring.Start(BranchKind.ConverterOutput); k++)
        {
            power += (-equations.CurrentA[k] * equations.Across(k, potentials)) + InternalLossW(k);
        }

        return power;
    }

    private double LoadPowerW()
    {
        var power = 0.0;
        for (var k = equations.FirstSink; k < _wiring.Start(BranchKind.ConverterInput); k++)
        {
            power += equations.CurrentA[k] * equations.Across(k, potentials);
        }

        return power;
    }

    private double LossPowerW(double[] sinkA, double[] sinkV, double[] outputW)
    {
        var loss = 0.0;
        for (var k = 0; k < equations.FirstSource; k++)
        {
            loss += equations.CurrentA[k] * equations.Across(k, potentials);
        }

        for (var k = equations.FirstSource; k < _wiring.Start(BranchKind.ConverterOutput); k++)
        {
            loss += InternalLossW(k);
        }

        for (var k = 0; k < outputW.Length; k++)
        {
            loss += (sinkA[_wiring.Loads.Length + k] * sinkV[_wiring.Loads.Length + k]) - outputW[k];
        }

        return loss;
    }

    private double InternalLossW(int branch) =>
        equations.CurrentA[branch] * equations.CurrentA[branch] / network.Laws.SourceS[branch - equations.FirstSource];
}
