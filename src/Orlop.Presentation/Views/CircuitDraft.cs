using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Chains;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;

namespace Orlop.Presentation.Views;

/// <summary>A new circuit as it is typed in, and the plan that becomes of it.</summary>
public sealed class CircuitDraft
{
    // What may be typed, where the usual examples of the unit would lead astray.
    private static readonly Dictionary<string, string> Examples = new(StringComparer.Ordinal)
    {
        [nameof(Draws)] = "80 W or 5 A",
        [nameof(Voltage)] = "12 V or 24 V",
        [nameof(StartRatio)] = "3 or 3.5",
        [nameof(StartTime)] = "1.5 s",
        [nameof(Duty)] = "20 %",
        [nameof(Rating)] = "10 A",
        [nameof(Feed)] = "0.3 m, or 0 where it is bolted on",
    };

    private readonly Dictionary<string, string> _refusals = new(StringComparer.Ordinal);

    // What stood in each field when it was refused.
    private readonly Dictionary<string, string> _refused = new(StringComparer.Ordinal);

    public string Name { get; set; } = "";

    public string Voltage { get; set; } = "";

    /// <summary>Power or current, with its unit.</summary>
    public string Draws { get; set; } = "";

    /// <summary>Starting over running current; empty when it starts softly.</summary>
    public string StartRatio { get; set; } = "";

    public string StartTime { get; set; } = "";

    /// <summary>Share of the time that it runs where it is on; empty for all of it.</summary>
    public string Duty { get; set; } = "";

    public bool IsCritical { get; set; }

    public HashSet<string> OnIn { get; } = new(StringComparer.Ordinal);

    /// <summary>It is on in none of the conditions, and that is meant.</summary>
    public bool IsOnInNone { get; set; }

    /// <summary>The boat has conditions to choose from.</summary>
    public bool AsksForConditions { get; set; }

    public string From { get; set; } = "";

    /// <summary>Length of the wire from there to the first device; 0 where that is bolted on, empty where it is not known.</summary>
    public string Feed { get; set; } = "";

    public string Return { get; set; } = "";

    /// <summary>Whether the minus post that it goes back to is bonded: yes, no, or empty where that is not known.</summary>
    public string MinusBonded { get; set; } = "";

    /// <summary>fuse, breaker or none.</summary>
    public string Protection { get; set; } = "fuse";

    public string Rating { get; set; } = "";

    public bool HasIsolator { get; set; }

    public bool HasPlug { get; set; }

    public string Lead { get; set; } = "";

    public string Area { get; set; } = "";

    public string Out { get; set; } = "";

    public string Back { get; set; } = "";

    public string Insulation { get; set; } = "";

    public string Way { get; set; } = "";

    /// <summary>How many fields were refused by the last <see cref="Plan"/>.</summary>
    public int RefusalCount => _refusals.Count;

    /// <summary>Why a field was refused by the last <see cref="Plan"/>, or null, also where something else was typed or chosen since. Fields by their property's name.</summary>
    public string? Refusal(string field) => _refusals.TryGetValue(field, out string? why) && _refused[field] == Typed(field) ? why : null;

    /// <summary>Terminals that can feed a circuit: bars, battery posts, converter outputs; those named for plus or live come first.</summary>
    public static IReadOnlyList<Terminal> Feeds(BoatModel boat) => [.. Ends(boat).OrderBy(end => LooksPlus(end) ? 0 : 1)];

    /// <summary>Terminals that a circuit's current can return to; those named for minus or neutral come first.</summary>
    public static IReadOnlyList<Terminal> Returns(BoatModel boat) => [.. Ends(boat).OrderBy(end => LooksPlus(end) ? 1 : 0)];

    /// <summary>A device stands at the feeding end, and so something leads to it.</summary>
    public bool AsksForFeed => Protection != "none" || HasIsolator;

    /// <summary>It is fed from a bar: what is bolted there needs no wire.</summary>
    public bool IsFedFromBar(BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        return Terminal.TryParse(From, out Terminal end) && boat.Find<Busbar>(end.Part) is not null;
    }

    /// <summary>The battery whose minus post it goes back to, where nothing says yet whether that is bonded; null where nothing is to be asked.</summary>
    public BatteryBank? AskedBattery(BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        return Terminal.TryParse(Return, out Terminal end) && end.Name == TerminalNames.Minus && boat.Find<BatteryBank>(end.Part) is { IsMinusBonded: null } battery ? battery : null;
    }

    /// <summary>That battery with the answer; null where none was asked for or given.</summary>
    public BatteryBank? AnsweredBattery(BoatModel boat) =>
        MinusBonded.Length > 0 && AskedBattery(boat) is { } battery ? battery with { IsMinusBonded = MinusBonded == "yes" } : null;

    /// <summary>Fills in a usual chain; what was typed for name and ends stays.</summary>
    public void Take(CircuitTemplate template, DisplayUnits units, CultureInfo culture)
    {
        string Show(Quantity? value, string suffix) => value is null ? "" : QuantityText.Format(value, suffix, units, culture) + (value.Known == Knowledge.Guessed ? "?" : "");
        CircuitPlan plan = template.Plan;
        Name = Name.Length == 0 ? plan.LoadName : Name;
        Voltage = Show(plan.NominalV, "V");
        Draws = plan.RunningW is null ? Show(plan.RunningA, "A") : Show(plan.RunningW, "W");
        StartRatio = Show(plan.StartRatio, "Ratio");
        StartTime = Show(plan.StartS, "S");
        IsCritical = plan.Drop == DropClass.Critical;
        Protection = plan.Protection is null ? "none" : plan.Protection == ProtectionMeans.Fuse ? "fuse" : "breaker";
        Rating = Show(plan.ProtectionA, "A");
        HasIsolator = plan.HasIsolator;
        HasPlug = plan.HasPlug;
        Lead = Show(plan.LeadM, "M");
        Area = Show(plan.AreaMm2, "Mm2");
    }

    /// <summary>The plan, or null with a refusal for each field that cannot be used.</summary>
    public CircuitPlan? Plan(BoatModel boat, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(boat);
        _refusals.Clear();
        Quantity? Read(string field, string text, string suffix, bool isNeeded)
        {
            string examples = Examples.GetValueOrDefault(field) ?? Units.ForSuffix(suffix).Examples;
            if (string.IsNullOrWhiteSpace(text))
            {
                if (isNeeded)
                {
                    _refusals[field] = $"This is needed. Type {examples}.";
                }

                return null;
            }

            QuantityReading read = QuantityText.Parse(text, suffix, units, culture, examples);
            if (read.Quantity is null || read.Quantity.Value <= 0)
            {
                _refusals[field] = read.Refusal ?? $"'{text.Trim()}' is not more than zero. Type {examples}.";
            }

            return read.Quantity;
        }

        if (string.IsNullOrWhiteSpace(Name))
        {
            _refusals[nameof(Name)] = "Give it a name: everything in the circuit is named after it.";
        }

        if (AsksForConditions && OnIn.Count == 0 != IsOnInNone)
        {
            _refusals[nameof(OnIn)] = IsOnInNone ? "Some conditions are ticked, and “none of them yet” too. Take one away." : "Tick the conditions it is on in: in any other nothing is asked of it. If it is on in none yet, tick that.";
        }

        bool isPower = !QuantityIs(Draws, "A", units, culture);
        Quantity? draws = Read(nameof(Draws), Draws, isPower ? "W" : "A", true);
        Terminal from = End(nameof(From), From), back = End(nameof(Return), Return);
        RefuseWrongPoles(boat, from, back);
        bool isBolted = string.IsNullOrWhiteSpace(Feed) ? IsFedFromBar(boat) : QuantityText.Parse(Feed, "M", units, culture).Quantity is { Value: 0 };
        Quantity? startRatio = Read(nameof(StartRatio), StartRatio, "Ratio", false);
        CircuitPlan plan = new()
        {
            LoadName = Name.Trim(),
            NominalV = Read(nameof(Voltage), Voltage, "V", true) ?? 0,
            RunningW = isPower ? draws : null,
            RunningA = isPower ? null : draws,
            StartRatio = startRatio,
            StartS = Read(nameof(StartTime), StartTime, "S", startRatio is { Value: > 1 }),
            Drop = IsCritical ? DropClass.Critical : DropClass.General,
            DutyFraction = DutyOf(Read(nameof(Duty), Duty, "Fraction", false)),
            OnIn = OnIn.Order(StringComparer.Ordinal).ToValueList(),
            From = from,
            HasFeedWire = AsksForFeed && !isBolted,
            FeedM = AsksForFeed && !isBolted ? Read(nameof(Feed), Feed, "M", false) : null,
            Return = back,
            Protection = Protection switch { "fuse" => ProtectionMeans.Fuse, "breaker" => ProtectionMeans.Breaker, _ => null },
            ProtectionA = Protection == "none" ? null : Read(nameof(Rating), Rating, "A", true),
            HasIsolator = HasIsolator,
            HasPlug = HasPlug,
            LeadM = HasPlug ? Read(nameof(Lead), Lead, "M", false) : null,
            AreaMm2 = Read(nameof(Area), Area, "Mm2", true) ?? 0,
            OutM = Read(nameof(Out), Out, "M", false),
            BackM = Read(nameof(Back), Back, "M", false),
            InsulationC = Read(nameof(Insulation), Insulation, "C", false),
            Way = Way.Length == 0 ? null : Way,
        };
        foreach (string field in _refusals.Keys)
        {
            _refused[field] = Typed(field);
        }

        return _refusals.Count == 0 ? plan : null;
    }

    private string Typed(string field) => field switch
    {
        nameof(Name) => Name,
        nameof(Draws) => Draws,
        nameof(Voltage) => Voltage,
        nameof(StartRatio) => StartRatio,
        nameof(StartTime) => StartTime,
        nameof(Duty) => Duty,
        nameof(OnIn) => string.Join(' ', OnIn.Order(StringComparer.Ordinal).Prepend($"{IsOnInNone}")),
        nameof(From) => From,
        nameof(Feed) => Feed,
        nameof(Return) => Return,
        nameof(Rating) => Rating,
        nameof(Area) => Area,
        nameof(Out) => Out,
        nameof(Back) => Back,
        nameof(Insulation) => Insulation,
        nameof(Lead) => Lead,
        _ => "",
    };

    private double DutyOf(Quantity? share)
    {
        if (share is { Value: > 1 })
        {
            _refusals[nameof(Duty)] = "More than all the time is not possible. Type a share up to 100 %.";
        }

        return share?.Value ?? 1;
    }

    // What is joined to a plus alone gives current and takes none back; the other way round it is the same.
    private void RefuseWrongPoles(BoatModel boat, Terminal from, Terminal back)
    {
        Wiring wiring = Wiring.Of(boat);
        if (_refusals.ContainsKey(nameof(From)) || _refusals.ContainsKey(nameof(Return)))
        {
            return;
        }

        if (PolesReached.From(boat, wiring, from.ToString()) is { Plus: [], Minus: [var minusOf, ..] })
        {
            _refusals[nameof(From)] = $"This is joined to the minus of {minusOf.Title}: the circuit would be the wrong way round. Choose a plus terminal or a bar that one feeds.";
        }

        if (PolesReached.From(boat, wiring, back.ToString()) is { Plus: [var plusOf, ..], Minus: [] })
        {
            _refusals[nameof(Return)] = $"This is joined to the plus of {plusOf.Title}: no current comes back that way. Choose a minus terminal or a minus bar.";
        }
    }

    private static bool QuantityIs(string text, string suffix, DisplayUnits units, CultureInfo culture) =>
        text.Any(char.IsLetter) && QuantityText.Parse(text, suffix, units, culture).Quantity is not null;

    private static bool LooksPlus(Terminal end) =>
        end.Name.EndsWith('+') || (end.Name == TerminalNames.Bar && !end.Part.Contains("minus", StringComparison.Ordinal) && !end.Part.Contains("neutral", StringComparison.Ordinal) && !end.Part.Contains("earth", StringComparison.Ordinal));

    private static IEnumerable<Terminal> Ends(BoatModel boat) => boat.All<Part>().SelectMany(part => part switch
    {
        Busbar bar => [bar.At(TerminalNames.Bar)],
        BatteryBank bank => [bank.At(TerminalNames.Plus), bank.At(TerminalNames.Minus)],
        DcConverter converter => [converter.At(TerminalNames.OutPlus), converter.At(TerminalNames.OutMinus)],
        _ => (IEnumerable<Terminal>)[],
    });

    private Terminal End(string field, string text)
    {
        if (!Terminal.TryParse(text, out Terminal end))
        {
            _refusals[field] = "Choose where.";
        }

        return end;
    }
}
