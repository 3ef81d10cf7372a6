using System.Globalization;
using System.Text;
using Orlop.Electrics.Networks;
using Orlop.Electrics.Starts;

namespace Orlop.Reference.Tests.Electrics.Spice;

/// <summary>
/// A network of conductors, contacts, batteries and loads as a deck for ngspice: a load of power P is a current source I = P / V (above 1 V, where the deck begins from nothing).
/// </summary>
internal sealed class SpiceDeck
{
    private readonly Dictionary<string, int> _numbers = new(StringComparer.Ordinal);

    public SpiceDeck(Network network, string zeroNode, int repeatCount)
    {
        var elements = Elements(network, zeroNode);
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

    /// <summary>A start: each store as a capacitor behind its resistance beside a constant current, from what it holds at the beginning.</summary>
    public SpiceDeck(StartInput start, string zeroNode)
    {
        var elements = Elements(start.Network, zeroNode);
        for (var k = 0; k < start.Stores.Length; k++)
        {
            var s = start.Stores[k];
            elements.Append(Line($"Rs{k} {Node(s.Plus)} held{k} {s.SeriesOhm:R}\nCs{k} held{k} {Node(s.Minus)} {s.CapacitanceF:R} ic={s.InitialV:R}\nIs{k} held{k} {Node(s.Minus)} DC {s.SinkA:R}\n"));
        }

        Text = "* start\n" + elements + Line($"""
            .options reltol=1e-7 abstol=1e-9 vntol=1e-9 gmin=1e-15 itl1=1000 itl4=200 method=gear
            .control
            tran {start.HorizonS / 200:R} {start.HorizonS:R} 0 {start.HorizonS / 5000:R} uic
            set wr_singlescale
            wrdata $0 {string.Join(' ', Written.Select(number => $"v({number})"))}
            .endc
            .end

            """);
    }

    private StringBuilder Elements(Network network, string zeroNode)
    {
        if (network.LimitedSources.Length + network.Converters.Length > 0 || network.Conductors.Any(c => c.Heating is not null))
        {
            throw new ArgumentException("The deck knows conductors of fixed resistance, contacts, batteries and loads only.", nameof(network));
        }

        _numbers.Add(zeroNode, 0);
        var elements = new StringBuilder();
        AddMetal(network, elements);
        AddSourcesAndLoads(network, elements);
        return elements;
    }

    public string Text { get; }

    /// <summary>The numbered nodes in the order in which a start's deck writes them, without that of zero.</summary>
    public IReadOnlyList<int> Written => [.. _numbers.Values.Where(number => number > 0)];

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
                LoadKind.Power => Line($"B{k} {plus} {minus} I={l.Amount:R}/max(v({plus},{minus}),1)\n"),
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
