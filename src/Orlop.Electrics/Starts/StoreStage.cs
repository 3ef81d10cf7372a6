using Orlop.Electrics.Networks;

namespace Orlop.Electrics.Starts;

/// <summary>One stage of an implicit step, solved: what each store holds at it, its slope, and the network then.</summary>
internal sealed record StoreStage(double[] HeldV, double[] CurrentA, double[] SlopeVPerS, double[] BehindOhm, NetworkResult Network)
{
    /// <summary>
    /// Solves E = base + w (i − sink)/C together with the network: to it a store is a voltage base − w sink/C behind R + w/C. A motor that would turn backwards stands still: it is solved again at rest.
    /// </summary>
    /// <param name="weightS">Length of the step times the scheme's diagonal; 0 for what is held already.</param>
    public static StoreStage Solve(StoreCircuit circuit, IReadOnlyList<StartingStore> stores, double[] baseV, double weightS, bool[] isOn, CancellationToken token)
    {
        var count = stores.Count;
        var isResting = new bool[count];
        var (emfV, behindOhm) = (new double[count], new double[count]);
        while (true)
        {
            for (var k = 0; k < count; k++)
            {
                var store = stores[k];
                emfV[k] = isResting[k] ? 0 : baseV[k] - (weightS * store.SinkA / store.CapacitanceF);
                behindOhm[k] = store.SeriesOhm + (isResting[k] ? 0 : weightS / store.CapacitanceF);
            }

            var result = circuit.Solve(emfV, behindOhm, isOn, token);
            var (heldV, currentA, slope) = (new double[count], new double[count], new double[count]);
            if (result.Point is not { } point)
            {
                return new StoreStage(heldV, currentA, slope, behindOhm, result);
            }

            var isAgain = false;
            for (var k = 0; k < count; k++)
            {
                var store = stores[k];
                currentA[k] = 0 - point.SourceA[store.Id];
                heldV[k] = isResting[k] ? 0 : baseV[k] + (weightS * (currentA[k] - store.SinkA) / store.CapacitanceF);
                if (heldV[k] < 0 && store.SinkA > 0)
                {
                    isResting[k] = isAgain = true;
                }

                slope[k] = weightS > 0 ? (heldV[k] - baseV[k]) / weightS : 0;
            }

            if (!isAgain)
            {
                return new StoreStage(heldV, currentA, slope, behindOhm, result);
            }
        }
    }

    /// <summary>The network as a moment of the start.</summary>
    public StartMoment At(double timeS, IReadOnlyList<StartingStore> stores) => new(timeS, Network.Point!, [.. stores.Select((store, k) =>
        new StoreState(store.Id, HeldV[k] + (store.SeriesOhm * CurrentA[k]), CurrentA[k], HeldV[k]))]);
}
