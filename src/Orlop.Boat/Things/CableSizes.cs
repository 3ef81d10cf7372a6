using System.Globalization;
using Orlop.Boat.Values;

namespace Orlop.Boat.Things;

/// <summary>
/// A cable's outer diameter and mass per metre go with its cross-section. Where that is changed and they are not, they are kept as a guess that says which cross-section they are of, until they are typed anew.
/// </summary>
public static class CableSizes
{
    private const string Before = "that of ";
    private const string After = " mm², before its cross-section was changed";

    /// <summary>The changed thing, with what is left of another cross-section marked as such; a mark is taken away where the cross-section is that one again.</summary>
    public static Thing Following(Thing was, Thing becomes)
    {
        if (was is not Cable before || becomes is not Cable after || before.AreaMm2.Value == after.AreaMm2.Value)
        {
            return becomes;
        }

        return after with
        {
            OuterDiameterMm = Marked(before.OuterDiameterMm, after.OuterDiameterMm, before, after),
            MassKgPerM = Marked(before.MassKgPerM, after.MassKgPerM, before, after),
        };
    }

    /// <summary>The cross-section in mm² that a quantity of a cable is still of; null where it is of its own.</summary>
    public static double? OtherMm2(Quantity? quantity) => quantity?.Method is { } method && method.StartsWith(Before, StringComparison.Ordinal) && method.EndsWith(After, StringComparison.Ordinal)
        && double.TryParse(method[Before.Length..^After.Length], NumberStyles.Float, CultureInfo.InvariantCulture, out double mm2) ? mm2 : null;

    private static Quantity? Marked(Quantity? was, Quantity? becomes, Cable before, Cable after)
    {
        if (becomes is null || becomes != was)
        {
            return becomes;
        }

        double ofMm2 = OtherMm2(was) ?? before.AreaMm2.Value;
        return becomes with { Known = Knowledge.Guessed, Method = ofMm2 == after.AreaMm2.Value ? null : string.Create(CultureInfo.InvariantCulture, $"{Before}{ofMm2}{After}") };
    }
}
