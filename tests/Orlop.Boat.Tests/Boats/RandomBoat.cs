using Orlop.Boat.Alterations;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Boat.Tests.Boats;

/// <summary>Boats with things of every kind, every field filled or left out by chance, that obey every rule.</summary>
internal sealed class RandomBoat
{
    private static readonly string[] Texts =
        ["winch", "port side, aft", "he said \"tight\"", "two\nlines", "a\r\nb", "tab\there", " space before", "=1+1", "Ω 200 µm²", "½ 🔧 kit", "semi;colon", "\\slash/", "'", "null", "12"];

    private static readonly Type[] OneOfAKind = [typeof(Particulars), typeof(PracticeChoice), typeof(HullLines), typeof(BareBoat), typeof(StabilityBasis), typeof(WayPreferences)];

    private readonly Random _random;
    private readonly List<(string Id, Type Kind)> _ids = [];
    private readonly Dictionary<string, Thing> _made = [];

    private RandomBoat(int seed) => _random = new Random(seed);

    public static BoatModel Of(int seed) => new RandomBoat(seed).Make();

    private BoatModel Make()
    {
        foreach ((string kind, Type type) in ThingKinds.ByName.OrderBy(kind => kind.Key, StringComparer.Ordinal))
        {
            int count = OneOfAKind.Contains(type) ? 1 : _random.Next(1, 4);
            for (int i = 0; i < count; i++)
            {
                _ids.Add(($"{kind}-{i}", type));
            }
        }

        // Parts and cables first: terminals and readings name them.
        foreach ((string id, Type kind) in _ids.OrderBy(entry => entry.Kind.IsSubclassOf(typeof(Part)) ? 0 : entry.Kind == typeof(Cable) ? 1 : entry.Kind == typeof(Alteration) ? 3 : 2))
        {
            _made.Add(id, Obeying((Thing)Record(RecordSchema.Of(kind), id)));
        }

        return new BoatModel { Things = _ids.Select(entry => _made[entry.Id]).ToValueList() };
    }

    private object Record(RecordSchema schema, string id)
    {
        object?[] values = new object?[schema.Fields.Count];
        bool[] isSet = new bool[values.Length];
        for (int i = 0; i < values.Length; i++)
        {
            FieldSchema field = schema.Fields[i];
            isSet[i] = field.IsRequired || _random.Next(3) > 0;
            values[i] = !isSet[i] ? null
                : field.Type == FieldType.Id ? id
                : field.Type == FieldType.List ? field.List([.. Enumerable.Range(0, _random.Next(4)).Select(index => Value(field, field.ItemType!.Value, $"item-{index}"))])
                : Value(field, field.Type, id);
            isSet[i] = values[i] is not null;
        }

        return schema.Create(values, isSet);
    }

    private object? Value(FieldSchema field, FieldType type, string id) => type switch
    {
        FieldType.Quantity => new Quantity(
            Number(field),
            (Knowledge)_random.Next(5),
            Maybe(_random.NextDouble()),
            _random.Next(2) == 0 ? null : Day(),
            _random.Next(2) == 0 ? null : Words(),
            _random.Next(2) == 0 ? null : Words()),
        FieldType.Number => Number(field),
        FieldType.Count => (int)Math.Floor(Number(field)),
        FieldType.Text => Words(),
        FieldType.Flag => _random.Next(2) == 0,
        FieldType.Choice => Enum.GetValues(field.ValueType).GetValue(_random.Next(field.Choices.Count)),
        FieldType.Reference => Pick(_ids.Where(entry => entry.Kind.IsAssignableTo(field.RefersTo == typeof(Thing) ? typeof(Part) : field.RefersTo)).Select(entry => entry.Id)),
        FieldType.Terminal => AnyTerminal(),
        FieldType.Date => Day(),
        FieldType.Thing => null,
        _ => Record(field.Record!, id),
    };

    private double Number(FieldSchema field)
    {
        (double least, double most) = field.Allowed is null ? (-1e9, 1e9) : (field.Allowed.Least, field.Allowed.Most);
        return _random.Next(8) switch
        {
            0 => least,
            1 => most,
            2 => Math.Clamp(Math.Round(least + (_random.NextDouble() * (most - least)), MidpointRounding.ToEven), least, most),
            _ => least + (_random.NextDouble() * (most - least)),
        };
    }

    private double? Maybe(double value) => _random.Next(2) == 0 ? null : value;

    private DateOnly Day() => new DateOnly(2000, 1, 1).AddDays(_random.Next(20_000));

    private string Words() => Texts[_random.Next(Texts.Length)];

    private T Pick<T>(IEnumerable<T> all)
    {
        T[] choices = [.. all];
        return choices[_random.Next(choices.Length)];
    }

    private Terminal AnyTerminal()
    {
        Part part = Pick(_made.Values.OfType<Part>());
        return part.At(Pick(part.TerminalNames));
    }

    private Thing Obeying(Thing thing)
    {
        Thing obeying = ObeyingItsKind(thing);
        return obeying is Part part ? part with { Studs = part.Studs.Zip(part.TerminalNames, (stud, terminal) => stud with { Terminal = terminal }).ToValueList() } : obeying;
    }

    private Thing ObeyingItsKind(Thing thing) => thing switch
    {
        ElectricLoad load => _random.Next(2) == 0 ? load with { RunningW = null } : load with { RunningA = null },
        BatteryBank bank => bank with { OpenCircuit = _random.Next(2) == 0 ? [] : [new ChargePoint(0, 10), new ChargePoint(_random.NextDouble() * 0.9 + 0.05, 12), new ChargePoint(1, 13)] },
        Cable cable => cable with { Run = cable.Run.Select(leg => leg with { Space = leg.Way is null ? leg.Space : null }).ToValueList() },
        Space space => space with { From = new Place(-1, -2, 0), To = new Place(_random.NextDouble(), 2, 1.5) },
        Tank tank => tank with { From = new Place(-1, -2, 0), To = new Place(_random.NextDouble(), 2, 1.5) },
        Way way => way with { Holes = way.Holes.Select(hole => hole with { LeastClampedMm = hole.LeastClampedMm?.Value > hole.BoreMm?.Value ? hole.BoreMm : hole.LeastClampedMm }).ToValueList() },
        RollingTest test => test with { Decay = test.Decay.Select((extreme, index) => extreme with { TimeS = index + 0.5 }).ToValueList() },
        Photograph photograph => photograph with { Sha256 = string.Concat(Enumerable.Range(0, 64).Select(_ => "0123456789abcdef"[_random.Next(16)])), MediaType = "image/png" },
        Reading reading => _random.Next(2) == 0
            ? reading with { VoltageV = 12, CurrentA = null, Through = null, Plus = AnyTerminal(), Minus = AnyTerminal() }
            : reading with { VoltageV = null, CurrentA = -3.25, Through = Pick(_made.Values.OfType<BatteryBank>()).Id, Plus = null, Minus = null },
        Alteration alteration => alteration with { Edits = Edits() },
        _ => thing,
    };

    private ValueList<Edit> Edits()
    {
        Gear was = Pick(_made.Values.OfType<Gear>());
        return
        [
            BoatEdits.Replace(was, was with { Name = Words(), MassKg = new Quantity(_random.NextDouble(), Knowledge.Estimated) }),
            BoatEdits.Add(new StockItem { Id = "added-item", Use = StockUse.Label, PieceCount = _random.Next(9) }) with { BuiltOn = _random.Next(2) == 0 ? null : Day() },
        ];
    }
}
