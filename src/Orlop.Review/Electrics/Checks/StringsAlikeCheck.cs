using System.Collections.Immutable;
using Orlop.Boat.Things;
using Orlop.Electrics.Strings;
using Orlop.Review.Findings;
using Orlop.Review.Practices;
using static Orlop.Review.Electrics.FindingLines;

namespace Orlop.Review.Electrics.Checks;

/// <summary>Batteries in series or side by side are of one chemistry, size and age.</summary>
public sealed class StringsAlikeCheck : ICheck<ElectricsView>
{
    public CheckDescription Description { get; } = new(
        "strings-alike",
        "Batteries of a bank are alike",
        "Chemistry, what is left of the capacity, and the day of going into use of each battery that stands in series with others or beside them, against the first of them.",
        [LimitIds.StringCapacityFraction, LimitIds.StringAgeCount]);

    public IEnumerable<Finding> Run(ElectricsView view) =>
        from StringGroup stringGroup in view.Strings.InAny.Groups
        let batteries = stringGroup.Strings.SelectMany(each => StringWords.Batteries(view.Boat, each)).ToArray()
        from BatteryBank battery in batteries.Skip(1)
        select Judge(view, stringGroup, batteries[0], battery);

    private Finding Judge(ElectricsView view, StringGroup group, BatteryBank first, BatteryBank battery)
    {
        if (view.Practice?.Find(LimitIds.StringCapacityFraction) is not { } capacityLimit || view.Practice.Find(LimitIds.StringAgeCount) is not { } ageLimit)
        {
            return NoLimit(Description, battery.Id, null, battery.Title, LimitIds.StringCapacityFraction) with { OtherSubjectId = first.Id };
        }

        string both = $"{battery.Title} and {first.Title}";
        double? ownAh = StringWords.CapacityAh(battery), otherAh = StringWords.CapacityAh(first);
        double? apart = ownAh is { } own && otherAh is { } other ? Math.Abs(own - other) / Math.Max(own, other) : null;
        int? days = battery.InUseSince is { } since && first.InUseSince is { } began ? Math.Abs(since.DayNumber - began.DayNumber) : null;
        Verdict ofCapacity = apart is { } fraction ? Verdicts.Of(fraction, capacityLimit.Value) : Verdict.Unknown, ofAge = days is { } count ? Verdicts.Of(count, ageLimit.Value) : Verdict.Unknown;
        bool isMixed = battery.Chemistry != first.Chemistry;
        ImmutableArray<FindingInput> missing = [.. new[] { first, battery }.SelectMany(Missing)];
        if (!isMixed && ofCapacity != Verdict.Fails && ofAge != Verdict.Fails && missing.Length > 0)
        {
            return Unknown(Description, battery.Id, null, Sentence.Of($"{both} are one bank; whether they are of one size and age is not known"), missing) with { OtherSubjectId = first.Id };
        }

        return new Finding
        {
            CheckId = Description.Id,
            SubjectId = battery.Id,
            OtherSubjectId = first.Id,
            Verdict = isMixed ? Verdict.Fails : Verdicts.Weight(ofAge) > Verdicts.Weight(ofCapacity) && ofCapacity != Verdict.Fails ? ofAge : ofCapacity == Verdict.Unknown ? ofAge : ofCapacity,
            UseFraction = isMixed ? null : Math.Max(apart is { } share ? Verdicts.UseOf(share, capacityLimit.Value) ?? 0 : 0, days is { } between ? Verdicts.UseOf(between, ageLimit.Value) ?? 0 : 0),
            Headline = isMixed ? Sentence.Of($"{both} are one bank and of two chemistries: no charger suits both, and one drives the other")
                : ofCapacity == Verdict.Fails ? Sentence.Of($"{both} are one bank and differ by {Fraction(apart!.Value)} in capacity{(InOneString(group, first, battery) ? ": the string gives what its smallest does, and that is emptied and overcharged first" : ": what each should give differs")}")
                : ofAge == Verdict.Fails ? Sentence.Of($"{both} are one bank and went into use {days!.Value} days apart: the older pulls the younger down")
                : Sentence.Of($"{both} are one bank, of one chemistry, {Fraction(apart!.Value)} apart in capacity and {days!.Value} days in age"),
            WorkingWhenAsked = () =>
            [
                .. ownAh is { } ah && otherAh is { } beside ? new[] { new WorkingLine("Capacities", $"what is left of {battery.Title} and of {first.Title}: {N(ah)} Ah, {N(beside)} Ah", Fraction(apart!.Value), "the nameplates, less what is told as lost") } : [],
                Line(capacityLimit, "May differ by", "Fraction"),
                .. days is { } day ? new[] { new WorkingLine("Days between going into use", "", new Amount(day, "Count"), "as typed") } : [],
                Line(ageLimit, "Days apart, at most", "Count"),
            ],
            Inputs = [new FindingInput(battery.Id, "capacityAh"), new FindingInput(battery.Id, "inUseSince"), new FindingInput(first.Id, "capacityAh"), new FindingInput(first.Id, "inUseSince")],
            Caution = Cautions.Strings,
        };
    }

    private static bool InOneString(StringGroup group, BatteryBank first, BatteryBank battery) =>
        group.Strings.Any(each => each.Members.Any(member => member.Id == first.Id) && each.Members.Any(member => member.Id == battery.Id));

    private static IEnumerable<FindingInput> Missing(BatteryBank battery)
    {
        if (battery.CapacityAh is null)
        {
            yield return new FindingInput(battery.Id, "capacityAh", IsMissing: true);
        }

        if (battery.InUseSince is null)
        {
            yield return new FindingInput(battery.Id, "inUseSince", IsMissing: true);
        }
    }
}
