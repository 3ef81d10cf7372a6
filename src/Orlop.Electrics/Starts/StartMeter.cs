using System.Collections.Immutable;

namespace Orlop.Electrics.Starts;

/// <summary>Adds up where the energy of a start goes, in joules, by the same weights as the steps.</summary>
internal sealed class StartMeter(ImmutableArray<StartingStore> stores)
{
    private const double SecondsPerHour = 3600;
    private double _source, _load, _loss, _sink;

    public void Add(StoreStage stage, double weightS)
    {
        var point = stage.Network.Point!;
        var (sourceW, lossW, sinkW) = (point.SourcePowerW, point.LossPowerW, 0.0);
        for (var k = 0; k < stores.Length; k++)
        {
            // To the network a store is a battery: its power and the heat behind it are taken out, its own put in.
            var currentA = stage.CurrentA[k];
            var square = currentA * currentA;
            var terminalV = stage.HeldV[k] + (stores[k].SeriesOhm * currentA);
            sourceW += (currentA * terminalV) - (square * stage.BehindOhm[k]);
            lossW += square * (stores[k].SeriesOhm - stage.BehindOhm[k]);
            sinkW += stage.HeldV[k] * stores[k].SinkA;
        }

        _source += weightS * sourceW;
        _load += weightS * point.LoadPowerW;
        _loss += weightS * lossW;
        _sink += weightS * sinkW;
    }

    public StartEnergy Read(double[] endV)
    {
        var stored = stores.Select((store, k) => store.CapacitanceF / 2 * ((endV[k] * endV[k]) - (store.InitialV * store.InitialV))).Sum();
        return new StartEnergy(_source / SecondsPerHour, _load / SecondsPerHour, _loss / SecondsPerHour, stored / SecondsPerHour, _sink / SecondsPerHour);
    }
}
