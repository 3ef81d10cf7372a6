using System.Collections.Immutable;

namespace Orlop.Electrics.Diagnosis;

/// <summary>
/// Chooses the likely candidate to read across, between its own two ends: of all likely candidates the one where their predictions lie furthest apart,
/// by their spread weighted with how likely each is. Both probes then stand on one pole and near each other, and a small drop is read in the meter's small range.
/// </summary>
internal static class NextReadingChoice
{
    public static NextReading? Of(DiagnosisInput input, ImmutableArray<FittedCandidate> likely, ImmutableArray<double> weights)
    {
        if (likely.Length < 2)
        {
            return null;
        }

        var taken = input.Voltages.SelectMany(reading => new[] { (reading.PlusNode, reading.MinusNode), (reading.MinusNode, reading.PlusNode) }).ToHashSet();
        var ends = input.Network.Conductors.Select(item => (item.Id, item.A, item.B)).Concat(input.Network.Contacts.Select(item => (item.Id, item.A, item.B)))
            .ToDictionary(item => item.Id, item => (item.A, item.B), StringComparer.Ordinal);
        var best = (Score: 0.0, Id: "");
        foreach (var id in likely.Select(candidate => candidate.Id).Where(id => !taken.Contains(ends[id])))
        {
            var score = Variance(likely, weights, ends[id].A, ends[id].B);
            best = score > best.Score * (1 + 1e-9) ? (score, id) : best;
        }

        return best.Score > 1e-18 ? Reading(likely, best.Id, ends[best.Id]) : null;
    }

    private static NextReading Reading(ImmutableArray<FittedCandidate> likely, string id, (string Plus, string Minus) ends)
    {
        // The way the current flows where this one is the bad one.
        if (Across(likely.First(candidate => candidate.Id == id), ends.Plus, ends.Minus) < 0)
        {
            ends = (ends.Minus, ends.Plus);
        }

        var predicted = likely.ToImmutableDictionary(candidate => candidate.Id, candidate => Across(candidate, ends.Plus, ends.Minus));
        return new NextReading(id, ends.Plus, ends.Minus, predicted.Values.Max() - predicted.Values.Min(), predicted);
    }

    private static double Variance(ImmutableArray<FittedCandidate> likely, ImmutableArray<double> weights, string plus, string minus)
    {
        double sum = 0, mean = 0, squares = 0;
        for (var i = 0; i < likely.Length; i++)
        {
            var across = Across(likely[i], plus, minus);
            sum += weights[i];
            var shift = across - mean;
            mean += shift * weights[i] / sum;
            squares += weights[i] * shift * (across - mean);
        }

        return squares / sum;
    }

    private static double Across(FittedCandidate candidate, string plus, string minus) =>
        candidate.Point.NodeV[plus] - candidate.Point.NodeV[minus];
}
