using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Presentation.Quantities;
using Orlop.Review;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>A berth test that is being typed in: what every test asks for.</summary>
public abstract class BerthTestDraft
{
    private StabilityView _asBuilt;
    private Condition _condition;
    private ValueList<AboardItem> _listed = [];
    private bool _isListComplete;

    /// <param name="kind">Name of the kind in files.</param>
    /// <param name="name">A name to begin with.</param>
    /// <param name="on">The day.</param>
    private protected BerthTestDraft(StabilityView asBuilt, Condition condition, string kind, string name, DateOnly on, DisplayUnits units, CultureInfo culture)
    {
        (_asBuilt, _condition, Units, Culture) = (asBuilt, condition, units, culture);
        (Name, On, Schema) = (Distinct(name, asBuilt.Boat), on, ThingSchema.Of(kind));
        ListAboard();
    }

    public string Name { get; set; }

    // A second test of one day is told from the first.
    private static string Distinct(string name, BoatModel boat)
    {
        HashSet<string?> taken = [.. boat.All<BerthTest>().Select(test => test.Name)];
        return !taken.Contains(name) ? name
            : new[] { "second", "third", "fourth" }.Select(word => $"{name}, {word}").Concat(Enumerable.Range(5, taken.Count).Select(number => FormattableString.Invariant($"{name}, {number}th"))).First(one => !taken.Contains(one));
    }

    public DateOnly? On { get; set; }

    /// <summary>Density of the water, as typed.</summary>
    public string Water { get; set; } = "";

    /// <summary>Why the name cannot be used.</summary>
    public string? NameRefusal { get; private set; }

    /// <summary>Why the density cannot be used.</summary>
    public string? WaterRefusal { get; private set; }

    /// <summary>Listed things and liquids without a mass or a place: they are not in what is kept as aboard.</summary>
    public IReadOnlyList<MissingField> Missing { get; private set; } = [];

    /// <summary>Name of the condition whose loading the test is kept with.</summary>
    public string LoadedAs => _condition.Title;

    /// <summary>What is kept as aboard, in words.</summary>
    public string AboardText => IsBare ? "nothing is in the ledger, and that is what is kept" : string.Create(Culture, $"{_listed.Count} {(_listed.Count == 1 ? "thing" : "things")} of the ledger, {QuantityText.Shown(Math.Round(_listed.Sum(item => item.MassKg)), "Kg", Units, Culture)} with liquids in tanks");

    /// <summary>What hangs on a hook in that condition and is kept as aboard; null where nothing does.</summary>
    public string? HungText => TestLoading.Hung(_asBuilt.Boat, _listed, Units, Culture) is { } hung ? $"On the hook, and counted: {hung}. Is it not hanging there now, it is the wrong condition." : null;

    /// <summary>What else is aboard, for this test alone.</summary>
    public List<AboardDraft> Others { get; } = [];

    /// <summary>The fields and rows that cannot be used as they were last read, in the order of the form.</summary>
    public virtual IEnumerable<RefusedField> Refused =>
    [
        .. RefusedField.If("test-name", "Name", NameRefusal),
        .. RefusedField.If("test-water", "Density of the water", WaterRefusal),
        .. Others.SelectMany((other, index) => RefusedField.If($"aboard-{index}", other.Name.Length > 0 ? other.Name : $"Thing {index + 1} aboard", other.Refusal)),
    ];

    private protected ValueList<AboardItem> Aboard { get; private set; }

    /// <summary>Nothing is aboard, and nothing is listed of which that cannot be told.</summary>
    private protected bool IsBare => Aboard.Count == 0 && _isListComplete;

    private protected DisplayUnits Units { get; }

    private protected CultureInfo Culture { get; }

    private protected RecordSchema Schema { get; }

    /// <summary>Why tests would not count if they were kept as they are; null where they would.</summary>
    public string? WhyNotCounted(params IEnumerable<BerthTest?> kept)
    {
        BerthTest[] tests = [.. kept.OfType<BerthTest>()];
        StabilityView view = new(_asBuilt.Boat.WithThings([.. _asBuilt.Boat.Things, .. tests]), _asBuilt.Practice, new Memo());
        string[] whys = [.. view.Weight.Trouble.Where(trouble => tests.Any(test => test.Id == trouble.TestId)).Select(trouble => trouble.Message.TrimEnd('.'))];
        return whys.Length == 0 ? null : $"Kept as it is, it will not count: {string.Join("; ", whys)}.";
    }

    /// <summary>The test takes the loading of a condition of a boat as built.</summary>
    /// <returns>Whether that is another than before.</returns>
    public bool LoadAs(StabilityView asBuilt, Condition condition)
    {
        if (ReferenceEquals(asBuilt.Boat, _asBuilt.Boat) && condition == _condition)
        {
            return false;
        }

        (_asBuilt, _condition) = (asBuilt, condition);
        ListAboard();
        return true;
    }

    private void ListAboard()
    {
        LoadedBoat loaded = _asBuilt.LoadedIn(_condition);
        _listed = BerthTestGuide.Aboard(_asBuilt, _condition);
        Aboard = _listed;
        _isListComplete = loaded.Ledger.Missing.IsEmpty && Liquids.Of(_asBuilt.Boat, _condition, _asBuilt.Bodies).Missing.IsEmpty;
        Missing = MissingField.Of([.. loaded.Missing.Where(input => _asBuilt.Boat.Find(input.ThingId) is not null)], _asBuilt.Boat);
    }

    private protected static IEnumerable<RefusedField> RefusedMarks(IEnumerable<MarkDraft> marks) =>
        marks.SelectMany((mark, index) => RefusedField.If($"mark-{index}", mark.Name.Length > 0 ? mark.Name : $"Mark {index + 1}", mark.Refusal));

    private protected string NewId() => NewId(Name);

    private protected string NewId(string name) => ReadableId.Of(name, taken => _asBuilt.Boat.Find(taken) is not null);

    private protected bool ReadHead(out Quantity? water)
    {
        NameRefusal = string.IsNullOrWhiteSpace(Name) ? "Give it a name, such as “Freeboards in May”." : null;
        (water, WaterRefusal) = ReadOptional<Quantity>(Schema.Field("waterDensityKgPerM3")!, Water);
        bool areOthersGood = ReadOthers();
        return NameRefusal is null && WaterRefusal is null && areOthersGood;
    }

    private bool ReadOthers()
    {
        List<AboardItem> others = [];
        foreach (AboardDraft other in Others)
        {
            if (other.Read(Schema.Field("aboard")!.Record!, id => _asBuilt.Boat.Find(id) is not null || others.Exists(item => item.Id == id), Units, Culture) is { } item)
            {
                others.Add(item);
            }
        }

        Aboard = [.. _listed, .. others];
        return Others.TrueForAll(other => other.Refusal is null);
    }

    /// <summary>A field that may be left blank.</summary>
    private protected (T? Value, string? Refusal) ReadOptional<T>(FieldSchema field, string text)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return (default, null);
        }

        FieldReading read = FieldText.Read(field, text, Units, Culture);
        return (read.IsGood ? (T?)read.Value : default, read.Refusal);
    }
}
