using System.Collections.Frozen;
using static Orlop.Presentation.Quantities.UnitStep;

namespace Orlop.Presentation.Quantities;

/// <summary>
/// The closed table of unit suffixes, the units that may be typed for each, and those it is shown in. Factors are exact unless
/// said otherwise: SI Brochure (9th edition) and NIST SP 811 (2008), appendix B.
/// </summary>
public static class Units
{
    private const decimal Pi = 3.1415926535897932384626433833m;
    private const decimal PoundKg = 0.45359237m;
    private const decimal PoundForceN = PoundKg * 9.80665m;

    private static readonly Unit Inch = new("in", 0.0254m, symbols: "\"", words: "in inch inches");
    private static readonly Unit Foot = new("ft", 0.3048m, symbols: "'", words: "ft foot feet", then: Inch);
    private static readonly Unit Metre = new("m", 1, words: "metre metres meter meters");
    private static readonly Unit Millimetre = new("mm", 0.001m, words: "mm millimetre millimetres millimeter millimeters");
    private static readonly Unit[] Lengths =
    [
        Metre, Millimetre, Inch, Foot,
        new("cm", 0.01m, words: "cm centimetre centimetres centimeter centimeters"),
        new("km", 1000, words: "km"), new("yd", 0.9144m, words: "yd yard yards"), new("nmi", 1852, words: "nmi"),
    ];

    private static readonly Unit Ounce = new("oz", PoundKg, 16, words: "oz ounce ounces");
    private static readonly Unit Pound = new("lb", PoundKg, words: "lb lbs pound pounds", then: Ounce);
    private static readonly Unit Kilogram = new("kg", 1, words: "kg kilo kilos kilogram kilograms");

    private static readonly Unit SquareMillimetre = new("mm²", 1, symbols: "mm2 mm^2", words: "sqmm");
    private static readonly Unit Newton = new("N", 1, words: "newton newtons");
    private static readonly Unit PoundForce = new("lbf", PoundForceN, words: "lbf");
    private static readonly Unit Minute = new("min", 60, words: "min minute minutes");
    private static readonly Unit Second = new("s", 1, words: "s sec second seconds");
    private static readonly Unit Watt = new("W", 1, words: "w watt watts");
    private static readonly Unit Kilowatt = new("kW", 1000, words: "kw");
    private static readonly Unit Ohm = new("Ω", 1, words: "ohm ohms");
    private static readonly Unit Milliohm = new("mΩ", 0.001m, symbols: "mohm mohms mOhm mOhms", words: "milliohm milliohms");
    private static readonly Unit Microohm = new("µΩ", 0.000001m, symbols: "µohm uohm uΩ µOhm uOhm", words: "microohm microohms");
    private static readonly Unit Volt = new("V", 1, words: "v volt volts");
    private static readonly Unit Ampere = new("A", 1, words: "a amp amps ampere amperes");
    private static readonly Unit Kiloampere = new("kA", 1000, words: "ka");
    private static readonly Unit Farad = new("F", 1, words: "farad farads");
    private static readonly Unit Microfarad = new("µF", 0.000001m, symbols: "uF");
    private static readonly Unit Celsius = new("°C", 1, words: "c °c degc celsius");
    private static readonly Unit Fahrenheit = new("°F", 1, 1.8m, -32, words: "f °f degf fahrenheit");
    private static readonly Unit Kelvin = new("K", 1);
    private static readonly Unit FahrenheitDifference = new("°F", 1, 1.8m, words: "f °f");
    private static readonly Unit Percent = new("%", 0.01m, words: "percent");
    private static readonly Unit One = new("", 1);
    private static readonly Unit KilogramPerMetre = new("kg/m", 1, words: "kg/m");
    private static readonly Unit PoundPerFoot = new("lb/ft", PoundKg, 0.3048m, words: "lb/ft lbs/ft");
    private static readonly Unit KilogramPerCubicMetre = new("kg/m³", 1, symbols: "kg/m3");
    private static readonly Unit PoundPerCubicFoot = new("lb/ft³", PoundKg, 0.3048m * 0.3048m * 0.3048m, symbols: "lb/ft3");
    private static readonly Unit NewtonMetre = new("N·m", 1, symbols: "Nm");
    private static readonly Unit PoundFoot = new("lbf·ft", PoundForceN * 0.3048m, words: "lbf·ft ft-lb ft·lbf ft-lbf lb-ft lbf-ft");
    private static readonly Unit Pascal = new("Pa", 1, words: "pascal");
    private static readonly Unit Megapascal = new("MPa", 1_000_000);
    private static readonly Unit PoundPerSquareInch = new("psi", PoundForceN, 0.0254m * 0.0254m, words: "psi");
    private static readonly Unit Amperehour = new("Ah", 1, words: "ah");
    private static readonly Unit Watthour = new("Wh", 1, words: "wh");
    private static readonly Unit Kilowatthour = new("kWh", 1000, words: "kwh");
    private static readonly Unit Microtesla = new("µT", 1, symbols: "uT", words: "microtesla");
    private static readonly Unit Degree = new("°", 1, words: "deg degree degrees");
    private static readonly Unit SquareMetre = new("m²", 1, symbols: "m2 m^2");
    private static readonly Unit SquareFoot = new("ft²", 0.3048m * 0.3048m, symbols: "ft2 ft^2");
    private static readonly Unit CubicMetre = new("m³", 1, symbols: "m3 m^3");
    private static readonly Unit CubicFoot = new("ft³", 0.3048m * 0.3048m * 0.3048m, symbols: "ft3 ft^3");
    private static readonly Unit AmpereSquaredSecond = new("A²s", 1, symbols: "A2s");
    private static readonly Unit MetreRadian = new("m·rad", 1);
    private static readonly Unit FootRadian = new("ft·rad", 0.3048m);
    private static readonly Unit KilogramPerCentimetre = new("kg/cm", 1);
    private static readonly Unit PoundPerInch = new("lb/in", PoundKg, 2.54m);
    private static readonly Unit KilogramMetre = new("kg·m", 1);
    private static readonly Unit MassPoundFoot = new("lb·ft", PoundKg * 0.3048m);
    private static readonly Unit KilogramMetrePerCentimetre = new("kg·m/cm", 1);
    private static readonly Unit PoundFootPerInch = new("lb·ft/in", PoundKg * 0.3048m, 2.54m);
    private static readonly Unit PerWatt = new("1/W", 1, symbols: "/W");

    /// <summary>Every dimension, by the suffix of the model's properties.</summary>
    public static FrozenDictionary<string, Dimension> BySuffix { get; } = All().ToFrozenDictionary(dimension => dimension.Suffix, StringComparer.Ordinal);

    /// <summary>The dimension of a suffix; throws for a suffix that is not in the table.</summary>
    public static Dimension ForSuffix(string suffix) => BySuffix.TryGetValue(suffix, out Dimension? dimension)
        ? dimension
        : throw new ArgumentOutOfRangeException(nameof(suffix), suffix, $"Not a unit suffix; allowed: {string.Join(", ", BySuffix.Keys.Order(StringComparer.Ordinal))}.");

    private static IEnumerable<Dimension> All()
    {
        Unit[] lengthsInMm = [.. Lengths.Select(unit => unit.InSmaller(1000))];
        Unit[] masses = [Kilogram, Pound, Ounce, new("g", 0.001m, words: "g gram grams"), new("t", 1000, words: "t tonne tonnes"), new("short ton", 2000 * PoundKg, words: "shortton")];
        yield return new("M", "a length", "1.2 m, 120 cm, 3 ft 6 in or 42 in", Lengths, new(4, Metre), new(4, Foot));
        yield return new("Mm", "a length", "16 mm, 1.6 cm or 5/8 in", lengthsInMm, new(4, lengthsInMm[1]), new(3, lengthsInMm[2]));
        yield return Plain("M2", "an area", "1.2 m² or 12 ft²", 3, SquareMetre, SquareFoot);
        yield return Plain("Cm2", "a free area", "40 cm² or 6 in²", 3, new Unit("cm²", 1, symbols: "cm2 cm^2"), new Unit("in²", 6.4516m, symbols: "in2 in^2"), new Unit("mm²", 0.01m, symbols: "mm2 mm^2"));
        yield return Plain("M3PerH", "a flow of air", "20 m³/h or 12 cfm", 3, new Unit("m³/h", 1, symbols: "m3/h"), new Unit("cfm", 60 * 0.3048m * 0.3048m * 0.3048m));
        yield return Plain("M3", "a volume", "0.2 m³, 200 L or 53 gal", 3, CubicMetre, CubicFoot, new("L", 0.001m, words: "l litre litres liter liters"), new("gal", 0.003785411784m, words: "gal gallon gallons"));
        yield return Plain("Mm2", "a conductor's cross-section", "16 mm² or 10 AWG", 3, SquareMillimetre, SquareMillimetre,
            new Unit("kcmil", Pi / 4 * 0.645160m, words: "kcmil mcm"));
        yield return new("Kg", "a mass", "36 kg, 450 g or 80 lb", masses, new(3, Kilogram), new(3, Pound));
        yield return Plain("KgPerM", "a mass per length", "0.36 kg/m or 0.24 lb/ft", 3, KilogramPerMetre, PoundPerFoot, new Unit("g/m", 0.001m), new Unit("kg/km", 0.001m));
        yield return Plain("KgPerM3", "a density", "1025 kg/m³ or 64 lb/ft³", 4, KilogramPerCubicMetre, PoundPerCubicFoot, new Unit("t/m³", 1000, symbols: "t/m3"));
        yield return Plain("N", "a force", "250 N, 2.5 kN or 56 lbf", 3, Newton, PoundForce, new Unit("kN", 1000));
        yield return Plain("Nm", "a torque", "8 N·m or 6 ft-lb", 3, NewtonMetre, PoundFoot, new Unit("kN·m", 1000, symbols: "kNm"));
        yield return new("Pa", "a pressure or stress", "235 MPa or 34000 psi", [Pascal, new("kPa", 1000), Megapascal, PoundPerSquareInch, new("bar", 100_000, words: "bar")],
            new(3, Pascal, FromValue(Megapascal, 100_000)), new(3, PoundPerSquareInch));
        yield return Same("V", "a voltage", "24 V or 300 mV", [Volt, new("mV", 0.001m), new("kV", 1000)], new(3, Volt));
        yield return Same("A", "a current", "60 A or 300 mA", [Ampere, new("mA", 0.001m), Kiloampere], new(3, Ampere, FromValue(Kiloampere, 10_000)));
        yield return Same("W", "a power", "150 W, 1.5 kW or 2 hp", [Watt, new("mW", 0.001m), Kilowatt, new("hp", 746, words: "hp")], new(3, Watt, FromValue(Kilowatt, 10_000))); // 746 W: the electric horsepower, exact in NIST SP 811 B.8
        yield return Same("Ohm", "a resistance", "3 mΩ, 3 mohm or 0.003 ohm", [Ohm, Milliohm, Microohm, new("kΩ", 1000, symbols: "kohm kOhm")],
            new(3, Ohm, BelowValue(Microohm, 0.001m), BelowValue(Milliohm, 1)));
        yield return Same("Ah", "a battery capacity", "280 Ah", [Amperehour, new("mAh", 0.001m)], new(3, Amperehour));
        yield return Same("Wh", "an energy", "640 Wh or 1.2 kWh", [Watthour, Kilowatthour], new(3, Watthour, FromValue(Kilowatthour, 10_000)));
        yield return Same("WhPerM2", "light on an area", "4.2 kWh/m² or 4200 Wh/m²", [new("Wh/m²", 1, symbols: "Wh/m2"), new("kWh/m²", 1000, symbols: "kWh/m2"), new("MJ/m²", 1000, 3.6m, symbols: "MJ/m2")], new(3, new Unit("Wh/m²", 1)));
        yield return Same("WPerM2", "sun on an area", "800 W/m²", [new("W/m²", 1, symbols: "W/m2")], new(3, new Unit("W/m²", 1)));
        yield return Same("WPerM2K", "a transmittance (U)", "5.5 W/m²K", [new("W/m²K", 1, symbols: "W/m2K")], new(3, new Unit("W/m²K", 1)));
        yield return Same("WPerMK", "a conductivity", "0.13 W/mK", [new("W/mK", 1)], new(3, new Unit("W/mK", 1)));
        yield return Same("J", "an energy", "500 J", [new("J", 1)], new(3, new Unit("J", 1)));
        yield return Same("F", "a capacitance", "0.01 F or 10000 µF", [Farad, new("mF", 0.001m), Microfarad], new(3, Farad, BelowValue(Microfarad, 1)));
        yield return Same("S", "a time", "1.5 s, 90 min or 2 h", [Second, new("ms", 0.001m), Minute, new("h", 3600, words: "h hr hrs hour hours", then: Minute), new("d", 86_400, words: "d day days")], new(3, Second));
        yield return Same("Month", "a month", "4", [One], new(3, One));
        yield return Same("Hour", "an hour of the day, or hours", "18 h", [new("h", 1, words: "h hr hrs hour hours")], new(3, new Unit("h", 1)));
        yield return Same("Hz", "a frequency", "50 Hz", [new("Hz", 1, words: "hz")], new(3, new Unit("Hz", 1)));
        yield return Plain("C", "a temperature", "90 °C, 90 C or 194 F", 3, Celsius, Fahrenheit, new Unit("K", 1, 1, -273.15m));
        yield return Plain("K", "a difference of temperature", "10 K or 18 °F", 3, Kelvin, FahrenheitDifference, new Unit("°C", 1, words: "c °c"));
        yield return Same("UT", "a magnetic field", "18 µT or 180 mG", [Microtesla, new("nT", 0.001m, words: "nt"), new("mG", 0.1m, words: "mg milligauss")], new(3, Microtesla));
        yield return Same("Deg", "an angle", "12°, 12 deg or 0.2 rad", [Degree, new("rad", 180, Pi, words: "rad")], new(3, Degree));
        yield return Same("Fraction", "a share", "30 %", [Percent], new(3, Percent));
        yield return Same("Ratio", "a ratio", "5.2 or 520 %", [One, new("×", 1, words: "x times"), Percent], new(3, One));
        yield return Same("Factor", "a factor", "0.85 or 85 %", [One, Percent], new(3, One));
        yield return Same("Coefficient", "a coefficient", "0.3", [One], new(3, One));
        yield return Same("Money", "a price", "12.50", [One], new(5, One));
        yield return Same("MoneyPerM", "a price per metre", "3.20", [One], new(4, One));
        yield return Same("Count", "a number of pieces", "12", [One, new("pieces", 1, words: "pc pcs piece pieces")], new(6, One));
        yield return Plain("MRad", "an area under righting levers", "0.055 m·rad or 0.18 ft·rad", 3, MetreRadian, FootRadian);
        yield return Plain("MPerS2", "an acceleration", "2 m/s² or 6.5 ft/s²", 3, new Unit("m/s²", 1, symbols: "m/s2"), new Unit("ft/s²", 0.3048m, symbols: "ft/s2"));
        yield return Plain("KgPerCm", "a mass per centimetre of sinkage", "45 kg/cm or 250 lb/in", 3, KilogramPerCentimetre, PoundPerInch);
        yield return Plain("KgM", "a moment of a mass", "200 kg·m or 1450 lb·ft", 3, KilogramMetre, MassPoundFoot);
        yield return Plain("KgMPerCm", "a moment per centimetre of trim", "60 kg·m/cm or 1100 lb·ft/in", 3, KilogramMetrePerCentimetre, PoundFootPerInch);
        yield return Same("PerW", "a loss coefficient", "0.00002 1/W", [PerWatt], new(3, PerWatt));
        yield return Same("A2S", "a let-through (I²t)", "12000 A²s", [AmpereSquaredSecond], new(3, AmpereSquaredSecond));
    }

    private static Dimension Plain(string suffix, string name, string examples, int significantCount, Unit metric, Unit us, params Unit[] more) =>
        new(suffix, name, examples, metric == us ? [metric, .. more] : [metric, us, .. more], new(significantCount, metric), new(significantCount, us));

    private static Dimension Same(string suffix, string name, string examples, Unit[] units, UnitDisplay display) =>
        new(suffix, name, examples, units, display, display);
}
