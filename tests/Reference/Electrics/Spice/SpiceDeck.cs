using System.Globalization;
using System.Text;
using Orlop.Electrics.Networks;

namespace Orlop.Reference.Tests.Electrics.Spice;

/// <summary>
/// A network of conductors, contacts, batteries and loads as a deck for ngspice: a load of power P is a current source I = P / V.
/// </summary>
internal sealed class SpiceDeck
{
    private readonly Dictionary<string, int> _numbers = new(StringComparer.Ordinal);

    public SpiceDeck(Network network, string zeroNode, int repeatCount)
    {
        if (network.LimitedSources.Length + network.Converters.Length > 0 || network.Conductors.Any(c => c.Heating is not null))
        {
            throw new ArgumentException("The deck knows conductors of fixed resistance, contacts, batteries and loads only.", nameof(network));
        }

        _numbers.Add(zeroNode, 0);
        var elements = new StringBuilder();
        AddMetal(network, elements);
        AddSourcesAndLoads(network, elements);
        var guess = string.Join(' ', network.Loads.Select(l => l.Plus).Distinct(StringComparer.Ordinal).Select(n => Line($"v({Node(n)})={network.Batteries[0].OpenCircuitV}")));
        Text = "* network\n" + elements + (guess.Length > 0 ? $".nodeset {guess}\n" : "") + $"""
            .options reltol=1e-9 abstol=1e-10 vntol=1e-10 gmin=1e-15 itl1=1000 klu noinit acct
            .control
            set filetype=ascii
            repeat {repeatCount - 1}
            op
            destroy all
            end
            op
            rusage totiter
            rusage everything
            write $0 all
            .endc
            .end

            """;
    }

    public string Text { get; }

    /// <summary>The number under which a node stands in the deck.</summary>
    public int this[string node] => _numbers[node];

    private void AddMetal(Network network, StringBuilder elements)
    {
        for (var k = 0; k < network.Conductors.Length; k++)
        {
            var c = network.Conductors[k];
            elements.Append(Line($"Rc{k} {Node(c.A)} {Node(c.B)} {c.ResistanceAt20Ohm:R}\n"));
        }

        for (var k = 0; k < network.Contacts.Length; k++)
        {
            var c = network.Contacts[k];
            elements.Append(Line($"Rt{k} {Node(c.A)} {Node(c.B)} {c.ResistanceOhm:R}\n"));
        }
    }

    private void AddSourcesAndLoads(Network network, StringBuilder elements)
    {
        for (var k = 0; k < network.Batteries.Length; k++)
        {
            var b = network.Batteries[k];
            elements.Append(Line($"Rb{k} {Node(b.Plus)} emf{k} {b.InternalOhm:R}\nVb{k} emf{k} {Node(b.Minus)} DC {b.OpenCircuitV:R}\n"));
        }

        for (var k = 0; k < network.Loads.Length; k++)
        {
            var l = network.Loads[k];
            var (plus, minus) = (Node(l.Plus), Node(l.Minus));
            elements.Append(l.Kind switch
            {
                LoadKind.Power => Line($"B{k} {plus} {minus} I={l.Amount:R}/v({plus},{minus})\n"),
                LoadKind.Current => Line($"I{k} {plus} {minus} DC {l.Amount:R}\n"),
                _ => Line($"Rl{k} {plus} {minus} {l.Amount:R}\n"),
            });
        }
    }

    private int Node(string name)
    {
        if (!_numbers.TryGetValue(name, out var number))
        {
            number = _numbers.Count;
            _numbers.Add(name, number);
        }

        return number;
    }

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
