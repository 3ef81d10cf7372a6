using System.Collections.Immutable;
using System.Globalization;

namespace Orlop.Electrics.Networks;

/// <summary>Holds every value of a network against its allowed range, and every id against the others.</summary>
/// <param name="areNamesKnown">Ids and nodes were examined before, so only values are.</param>
internal sealed class ValueCheck(bool areNamesKnown = false)
{
    private const double HighestRatedC = 400;
    private readonly HashSet<string> _ids = new(StringComparer.Ordinal);
    private readonly HashSet<string> _doubled = new(StringComparer.Ordinal);

    public List<NetworkFault> Faults { get; } = [];

    /// <summary>Whether an id or the name of a node is missing, so that nothing can be said of connections.</summary>
    public bool HasUnnamed { get; private set; }

    public void Examine(Network network)
    {
        foreach (var conductor in network.Conductors)
        {
            Name("Conductor", conductor.Id, conductor.A, conductor.B);
            Joins("Conductor", conductor.Id, conductor.A, conductor.B);
            AboveZero(conductor.Id, "resistance at 20 °C", conductor.ResistanceAt20Ohm, "ohm");
            Heating(conductor.Id, conductor.Heating);
        }

        foreach (var contact in network.Contacts)
        {
            Name("Contact", contact.Id, contact.A, contact.B);
            Joins("Contact", contact.Id, contact.A, contact.B);
            NotNegative(contact.Id, "resistance", contact.ResistanceOhm, "ohm");
        }

        foreach (var battery in network.Batteries)
        {
            Name("Battery", battery.Id, battery.Plus, battery.Minus);
            AboveZero(battery.Id, "open-circuit voltage", battery.OpenCircuitV, "V");
            AboveZero(battery.Id, "internal resistance", battery.InternalOhm, "ohm");
        }

        foreach (var source in network.LimitedSources)
        {
            Name("Source", source.Id, source.Plus, source.Minus);
            AboveZero(source.Id, "setpoint", source.SetpointV, "V");
            NotNegative(source.Id, "current limit", source.LimitA, "A");
            AboveZero(source.Id, "source resistance", source.SourceOhm, "ohm");
        }

        foreach (var converter in network.Converters)
        {
            Examine(converter);
        }

        foreach (var load in network.Loads)
        {
            Examine(load);
        }

        if (network.BondedNodes.Any(string.IsNullOrEmpty))
        {
            HasUnnamed = true;
            Add(NetworkFaultKind.BadValue, [], "A bonded node has no name.");
        }
    }

    private void Examine(Converter converter)
    {
        Name("Converter", converter.Id, converter.InPlus, converter.InMinus, converter.OutPlus, converter.OutMinus);
        AboveZero(converter.Id, "output voltage", converter.OutputV, "V");
        AboveZero(converter.Id, "output resistance", converter.OutputOhm, "ohm");
        NotNegative(converter.Id, "idle power", converter.IdleW, "W");
        NotNegative(converter.Id, "proportional loss", converter.ProportionalLossFraction, "of the output");
        NotNegative(converter.Id, "ohmic loss", converter.OhmicLossPerW, "1/W");
        AboveZero(converter.Id, "rated output", converter.RatedW, "W");
        NotNegative(converter.Id, "least input voltage", converter.LeastInputV, "V");
    }

    private void Examine(Load load)
    {
        Name("Load", load.Id, load.Plus, load.Minus);
        NotNegative(load.Id, "least voltage", load.LeastV, "V");
        switch (load.Kind)
        {
            case LoadKind.Power:
                NotNegative(load.Id, "power", load.Amount, "W");
                break;
            case LoadKind.Current:
                NotNegative(load.Id, "current", load.Amount, "A");
                break;
            case LoadKind.Resistance:
                AboveZero(load.Id, "resistance", load.Amount, "ohm");
                break;
            default:
                Bad(load.Id, $"kind {(int)load.Kind}; allowed {string.Join(", ", Enum.GetNames<LoadKind>())}");
                break;
        }
    }

    private void Heating(string id, ConductorHeating? heating)
    {
        if (heating is null)
        {
            return;
        }

        Within(id, "ambient temperature", heating.AmbientC, -40, 125, "°C");
        AboveZero(id, "rated current", heating.RatedCurrentA, "A");
        var isTableKnown = Within(id, "ambient temperature of the table", heating.TableAmbientC, -40, 125, "°C");
        var isRatingKnown = Within(id, "rated temperature", heating.RatedC, -40, HighestRatedC, "°C");
        if (isTableKnown && isRatingKnown && heating.RatedC <= heating.TableAmbientC)
        {
            Bad(id, $"rated temperature {Text(heating.RatedC)} °C; allowed above the table's ambient of {Text(heating.TableAmbientC)} °C");
        }
    }

    private void Name(string what, string id, params ReadOnlySpan<string> nodes)
    {
        if (areNamesKnown)
        {
            return;
        }

        if (string.IsNullOrEmpty(id))
        {
            HasUnnamed = true;
            Add(NetworkFaultKind.BadValue, [], $"{what} between '{string.Join("' and '", nodes.ToArray())}' has no id.");
            return;
        }

        foreach (var node in nodes)
        {
            if (string.IsNullOrEmpty(node))
            {
                HasUnnamed = true;
                Add(NetworkFaultKind.BadValue, [id], $"{what} '{id}' has an end on no node; every end needs the name of one.");
            }
        }

        if (!_ids.Add(id) && _doubled.Add(id))
        {
            Add(NetworkFaultKind.DuplicateId, [id], $"More than one element is called '{id}'; every id must be unique in the network.");
        }
    }

    private void Joins(string what, string id, string a, string b)
    {
        if (!string.IsNullOrEmpty(a) && string.Equals(a, b, StringComparison.Ordinal))
        {
            Add(NetworkFaultKind.BadValue, [id], $"{what} '{id}' joins node '{a}' to itself; its ends must be two nodes.");
        }
    }

    private void AboveZero(string id, string what, double value, string unit)
    {
        if (!(value > 0 && double.IsFinite(value) && double.IsFinite(1 / value)))
        {
            Bad(id, $"{what} {Text(value)} {unit}; allowed above 0");
        }
    }

    private void NotNegative(string id, string what, double value, string unit)
    {
        if (!(value >= 0 && double.IsFinite(value) && (value == 0 || double.IsFinite(1 / value))))
        {
            Bad(id, $"{what} {Text(value)} {unit}; allowed 0 or above");
        }
    }

    private bool Within(string id, string what, double value, double least, double most, string unit)
    {
        var isWithin = value >= least && value <= most;
        if (!isWithin)
        {
            Bad(id, $"{what} {Text(value)} {unit}; allowed {Text(least)} to {Text(most)} {unit}");
        }

        return isWithin;
    }

    private void Bad(string id, string finding) => Add(NetworkFaultKind.BadValue, [id], $"'{id}': {finding}.");

    private void Add(NetworkFaultKind kind, ImmutableArray<string> ids, string message) => Faults.Add(new NetworkFault(kind, ids, message));

    private static string Text(double value) => value.ToString(CultureInfo.InvariantCulture);
}
