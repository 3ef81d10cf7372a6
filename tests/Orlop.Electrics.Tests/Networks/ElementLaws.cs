using Orlop.Electrics.Networks;
using Xunit;

namespace Orlop.Electrics.Tests.Networks;

/// <summary>An operating point held against each element's own law and the balance at each node, worked out apart from the engine.</summary>
internal static class ElementLaws
{
    // Annealed copper: zero resistance at −234.5 °C.
    private const double CopperOffsetC = 234.5;

    public static void Confirm(Network network, OperatingPoint point, string at)
    {
        double[] numbers =
        [
            .. point.NodeV.Values, .. point.BranchA.Values, .. point.ConductorC.Values, .. point.SourceA.Values, .. point.LoadA.Values, .. point.LoadV.Values, .. point.ConverterOutputW.Values,
            point.SourcePowerW, point.LoadPowerW, point.LossPowerW,
        ];
        Assert.All(numbers, number => Assert.True(double.IsFinite(number), at));
        double scaleA = 1 + point.SourceA.Values.Concat(point.LoadA.Values).Max(Math.Abs);
        double Across(string a, string b) => point.NodeV[a] - point.NodeV[b];
        void Same(double expected, double actual, double scale, string what) => Assert.True(Math.Abs(expected - actual) <= 1e-6 * scale, $"{at}, {what}: {expected} and {actual}");
        foreach (Conductor wire in network.Conductors)
        {
            double ohm = wire.ResistanceAt20Ohm;
            if (wire.Heating is not null)
            {
                ohm *= (CopperOffsetC + point.ConductorC[wire.Id]) / (CopperOffsetC + 20);
            }

            Same(Across(wire.A, wire.B), point.BranchA[wire.Id] * ohm, 1 + (scaleA * ohm), wire.Id);
        }

        foreach (Battery battery in network.Batteries)
        {
            Same(battery.OpenCircuitV - (battery.InternalOhm * point.SourceA[battery.Id]), Across(battery.Plus, battery.Minus), battery.OpenCircuitV, battery.Id);
        }

        foreach (LimitedSource source in network.LimitedSources)
        {
            double currentA = point.SourceA[source.Id], wantedA = (source.SetpointV - Across(source.Plus, source.Minus)) / source.SourceOhm;
            Same(Math.Clamp(wantedA, 0, source.LimitA), currentA, scaleA, source.Id);
        }

        foreach (Load load in network.Loads)
        {
            double volts = Across(load.Plus, load.Minus), expectedA = load.Kind switch
            {
                LoadKind.Power => load.Amount / volts,
                LoadKind.Resistance => volts / load.Amount,
                _ => load.Amount,
            };
            Same(expectedA, point.LoadA[load.Id], scaleA, load.Id);
        }

        foreach (Converter converter in network.Converters)
        {
            double outW = point.SourceA[converter.Id] * Across(converter.OutPlus, converter.OutMinus);
            double inW = outW + converter.IdleW + (converter.ProportionalLossFraction * outW) + (converter.OhmicLossPerW * outW * outW);
            Same(inW, point.LoadA[converter.Id] * Across(converter.InPlus, converter.InMinus), 1 + Math.Abs(inW), converter.Id);
        }

        Same(point.SourcePowerW, point.LoadPowerW + point.LossPowerW, 1 + Math.Abs(point.SourcePowerW), "power");
        Balance(network, point, scaleA, at);
    }

    private static void Balance(Network network, OperatingPoint point, double scaleA, string at)
    {
        Dictionary<string, double> outA = point.NodeV.Keys.ToDictionary(node => node, _ => 0.0, StringComparer.Ordinal);
        void Carry(string from, string to, double currentA)
        {
            outA[from] += currentA;
            outA[to] -= currentA;
        }

        foreach (Conductor wire in network.Conductors)
        {
            Carry(wire.A, wire.B, point.BranchA[wire.Id]);
        }

        // Two contacts of no resistance side by side share in a way that nothing fixes: their nodes are taken together.
        foreach (Contact contact in network.Contacts.Where(contact => point.BranchA.ContainsKey(contact.Id)))
        {
            Carry(contact.A, contact.B, point.BranchA[contact.Id]);
        }

        foreach ((string plus, string minus, double currentA) in network.Batteries.Select(battery => (battery.Plus, battery.Minus, point.SourceA[battery.Id]))
            .Concat(network.LimitedSources.Select(source => (source.Plus, source.Minus, point.SourceA[source.Id])))
            .Concat(network.Converters.Select(converter => (converter.OutPlus, converter.OutMinus, point.SourceA[converter.Id]))))
        {
            Carry(minus, plus, currentA);
        }

        foreach (Load load in network.Loads)
        {
            Carry(load.Plus, load.Minus, point.LoadA[load.Id]);
        }

        foreach (Converter converter in network.Converters)
        {
            Carry(converter.InPlus, converter.InMinus, point.LoadA[converter.Id]);
        }

        foreach (Converter converter in network.Converters.Where(converter => converter.IsSharedMinus))
        {
            outA[converter.InMinus] += outA[converter.OutMinus];
            outA[converter.OutMinus] = 0;
        }

        Assert.All(outA, node => Assert.True(Math.Abs(node.Value) <= 1e-6 * scaleA, $"{at}, {node.Key}: {node.Value} A left over"));
    }
}
