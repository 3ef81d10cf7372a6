using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Presentation.Words;
using Orlop.Review.Electrics;
using Orlop.Review.Findings;
using Orlop.Review.Networks;

namespace Orlop.Presentation.Views;

/// <summary>A missing input in the middle of a sentence.</summary>
public static class MissingWords
{
    /// <summary>All of them with their verb: "length of Feed and internal resistance of House bank are".</summary>
    public static string Of(IEnumerable<FindingInput> inputs, BoatModel boat)
    {
        string[] all = [.. inputs.Select(input => Of(input, boat)).Distinct()];
        return $"{SentenceText.Listed(all)} {(all.Length == 1 ? "is" : "are")}";
    }

    /// <summary>"internal resistance of House bank".</summary>
    public static string Of(FindingInput input, BoatModel boat)
    {
        Thing? thing = boat.Find(input.ThingId);
        if (thing is null && input is { ThingId: "deadweight", Field: "aboard" })
        {
            return "who is aboard";
        }

        if (thing is null && ThingKinds.ByName.ContainsKey(input.ThingId) && ThingSchema.Of(input.ThingId).Field(input.Field) is { } absent)
        {
            return $"{FieldLabels.InSentence(absent)} of the {Wording.KindOf(input.ThingId)}";
        }

        return $"{Field(input, boat)} of {thing?.Title ?? input.ThingId}";
    }

    /// <summary>The field alone, where its thing is named beside it: "outer diameter".</summary>
    public static string Field(FindingInput input, BoatModel boat)
    {
        Thing? thing = boat.Find(input.ThingId);
        FieldSchema? field = thing is null ? null : ThingSchema.Of(thing.GetType()).Field(input.Field.Split('/', '.')[0]);
        string label = field is null ? InputWords.Of(input.Field) : LabelOf(thing!, field, input.Field);
        return $"{char.ToLowerInvariant(label[0])}{label[1..]}";
    }

    /// <summary>
    /// What is missing of a field: its label, "Way or space of run 1" for where a stretch of a run lies, "Open-circuit curve (the
    /// it begins at 50 %; 30 % is needed)" for a charge outside a battery's curve.
    /// "Operating time at 60 A (its kind has one only at 50 A and 63 A)" for a rating that a kind of times does not cover, "Kind of operating times (those given are of a fuse)" for those of a fuse on a breaker.
    /// </summary>
    /// <param name="path">The field as the finding names it.</param>
    public static string LabelOf(Thing thing, FieldSchema field, string path) =>
        path.Split('/') is ["own", var limit] ? LimitWords.Of(limit)
        : path.Split('/') is ["run", var stretch] ? $"Way or space of run {stretch}"
        : path.Split('/') is ["cores", var core, ("fromEnd" or "toEnd") and var end, var value] && field.Record?.Field(end)?.Record?.Field(value) is { } ofEnd
            ? $"{FieldLabels.Of(ofEnd)} ({core}, {(end == "fromEnd" ? "first" : "other")} end)"
        : path.Split('/') is ["cores", var ofCore, ("fromEnd" or "toEnd") and var madeOff] ? $"Kind of end of core {ofCore}, {(madeOff == "fromEnd" ? "first" : "other")} end"
        : CurveGap.ChargeFraction(path) is { } charge && thing is BatteryBank { OpenCircuit.Count: > 0 } battery ? $"{FieldLabels.Of(field)} ({OutsideCurve(battery, charge)})"
        : GatesGap.OtherKind(path) is { } other ? $"{FieldLabels.Of(field)} (those given are of {other})"
        : GatesGap.Of(path) is { } gap ? $"Operating time {gap.At} (its kind has one {gap.Only})"
        : FieldLabels.Of(field);

    private static string OutsideCurve(BatteryBank battery, double chargeFraction)
    {
        double first = battery.OpenCircuit[0].ChargeFraction, last = battery.OpenCircuit[^1].ChargeFraction;
        return chargeFraction < first ? $"it begins at {Percent(first)}; {Percent(chargeFraction)} is needed" : $"it ends at {Percent(last)}; {Percent(chargeFraction)} is needed";
    }

    private static string Percent(double fraction) => FormattableString.Invariant($"{fraction * 100:0.#}\u00A0%");
}
