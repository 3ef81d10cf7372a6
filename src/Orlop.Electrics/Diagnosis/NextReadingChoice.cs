using System.Collections.Immutable;

namespace Orlop.Electrics.Diagnosis;

/// <summary>Chooses the two nodes where the likely candidates' predictions lie furthest apart, by their spread weighted with how likely each is.</summary>
internal static class NextReadingChoice
{
    public static NextReading? Of(DiagnosisInput input, ImmutableArray<FittedCandidate> likely, ImmutableArray<double> weights)
    {
        if (likely.Length < 2)
        {
            return null;
        }

        var part = ConnectedParts.Of(input.Network);
        var taken = input.Voltages.SelectMany(reading => new[] { (reading.PlusNode, reading.MinusNode), (reading.MinusNode, reading.PlusNode) }).ToHashSet();
        var nodes = part.Keys.Where(node => likely.All(candidate => candidate.Point.NodeV.ContainsKey(node))).Order(StringComparer.Ordinal).ToImmutableArray();
        var best = (Score: 0.0, Plus: "", Minus: "");
        for (var i = 0; i < nodes.Length; i++)
        {
            for (var j = i + 1; j < nodes.Length; j++)
            {
                if (part[nodes[i]] == part[nodes[j]] && !taken.Contains((nodes[i], nodes[j])))
                {
                    var score = Variance(likely, weights, nodes[i], nodes[j]);
                    best = score > best.Score * (1 + 1e-9) ? (score, nodes[i], nodes[j]) : best;
                }
            }
        }

        return best.Score > 1e-18 ? Reading(likely, best.Plus, best.Minus) : null;
    }

    private static NextReading Reading(ImmutableArray<FittedCandidate> likely, string plus, string minus)
    {
        if (likely[0].Point.NodeV[plus] < likely[0].Point.NodeV[minus])
        {
            (plus, minus) = (minus, plus);
        }

        var predicted = likely.ToImmutableDictionary(candidate => candidate.Id, candidate => Across(candidate, plus, minus));
        return new NextReading(plus, minus, predicted.Values.Max() - predicted.Values.Min(), predicted);
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
