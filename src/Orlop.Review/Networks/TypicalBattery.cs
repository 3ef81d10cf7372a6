using System.Collections.Immutable;
using System.Globalization;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Review.Networks;

/// <summary>
/// What a battery of a chemistry is usually like, from <c>typical-batteries.csv</c>: to begin with where nothing was measured and its sheet is not at hand. What it fills in is a guess and says so;
/// any one battery may differ, an old one much.
/// </summary>
public static class TypicalBattery
{
    /// <summary>Share of a typical internal resistance by which a sound battery may differ, one standard deviation: the sources differ by a factor of two and more (from memory).</summary>
    public const double ResistanceDeviationFraction = 0.5;

    private const string TableName = "Orlop.Review.Networks.typical-batteries.csv";
    private const double BlockV = 12;
    private const double Whole = 0.01;

    private static readonly ImmutableArray<Row> Rows = Read();

    private sealed record Row(BatteryChemistry Chemistry, string What, double At, double Value, string Source);

    /// <summary>How many cells stand one on another in it, by its nominal voltage: 2 V each of lead-acid, 3 V (12 V of 4) or 3.2 V of lithium iron phosphate. Null where that is no whole number.</summary>
    public static int? CellCount(BatteryBank battery)
    {
        ArgumentNullException.ThrowIfNull(battery);
        double[] each = battery.Chemistry == BatteryChemistry.LithiumIronPhosphate ? [3, 3.2] : [2];
        return each.Select(cellV => battery.NominalV.Value / cellV)
            .Where(count => count > 1 - Whole && Math.Abs(count - Math.Round(count)) < Whole).Select(count => (int?)Math.Round(count)).FirstOrDefault();
    }

    /// <summary>Where the curve comes from and that it is nobody's own: "typical of gel, not measured (…)".</summary>
    public static string CurveMethod(BatteryChemistry chemistry) => Method(Of(chemistry, "open-circuit")[0]);

    /// <summary>The battery with the open-circuit voltages typical of its chemistry, known as a guess; null where its cells cannot be counted.</summary>
    public static BatteryBank? WithCurve(BatteryBank battery)
    {
        ArgumentNullException.ThrowIfNull(battery);
        return CellCount(battery) is not { } cells ? null : battery with
        {
            OpenCircuit = Of(battery.Chemistry, "open-circuit").Select(row => new ChargePoint(row.At, Math.Round(row.Value * cells / BlockCells(battery.Chemistry), 3))).ToValueList(),
            OpenCircuitKnown = Knowledge.Guessed,
            OpenCircuitMethod = CurveMethod(battery.Chemistry),
        };
    }

    /// <summary>The internal resistance in ohm typical of a good battery of its chemistry, cells and capacity, known as a guess; null where one of these is not known.</summary>
    public static Quantity? ResistanceOhm(BatteryBank battery)
    {
        ArgumentNullException.ThrowIfNull(battery);
        if (CellCount(battery) is not { } cells || battery.CapacityAh is not { Value: > 0 } capacity)
        {
            return null;
        }

        Row row = Of(battery.Chemistry, "resistance")[0];
        double ohm = Figures(row.Value * cells / BlockCells(battery.Chemistry) * row.At / capacity.Value);
        return new Quantity(ohm, Knowledge.Guessed, Figures(ohm * ResistanceDeviationFraction), Method: Method(row));
    }

    /// <summary>The battery with that internal resistance; null where there is none.</summary>
    public static BatteryBank? WithResistance(BatteryBank battery) => ResistanceOhm(battery) is { } ohm ? battery with { InternalResistanceOhm = ohm } : null;

    // Two figures: no more is known of it.
    private static double Figures(double value) => double.Parse(value.ToString("G2", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static string Method(Row row) => $"typical of {Name(row.Chemistry)}, not measured ({row.Source})";

    private static string Name(BatteryChemistry chemistry) => chemistry switch
    {
        BatteryChemistry.FloodedLeadAcid => "flooded lead-acid",
        BatteryChemistry.AbsorbedGlassMat => "absorbed glass mat (AGM)",
        BatteryChemistry.Gel => "gel",
        _ => "lithium iron phosphate",
    };

    private static double BlockCells(BatteryChemistry chemistry) => BlockV / (chemistry == BatteryChemistry.LithiumIronPhosphate ? 3 : 2);

    private static ImmutableArray<Row> Of(BatteryChemistry chemistry, string what) => [.. Rows.Where(row => row.Chemistry == chemistry && row.What == what).OrderBy(row => row.At)];

    private static ImmutableArray<Row> Read()
    {
        using Stream stream = typeof(TypicalBattery).Assembly.GetManifestResourceStream(TableName)!;
        using StreamReader reader = new(stream);
        return
        [
            .. reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Where(line => !line.StartsWith('#')).Skip(1)
                .Select(line => line.Split(',', 5))
                .Select(cells => new Row(Chemistry(cells[0]), cells[1], Number(cells[2]), Number(cells[3]), cells[4])),
        ];
    }

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    private static BatteryChemistry Chemistry(string word) => Enum.GetValues<BatteryChemistry>().First(chemistry => FieldNames.Kebab(chemistry.ToString()) == word);
}
