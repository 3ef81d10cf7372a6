using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Work.Tables;

namespace Orlop.Work.Steps;

/// <summary>Who and what lifts a thing: one by hand, two together, or lifting gear marked for the load and no number of people (limits: common practice, no source; local rules on lifting go first).</summary>
internal static class Lifts
{
    /// <summary>1 lb in kilograms, exact (NIST SP 811). A caution is read as it stands, whatever units the reader has chosen.</summary>
    private const double PoundKg = 0.45359237;

    /// <summary>What is asked of what nobody lifts by hand.</summary>
    public static string GearOnly { get; } =
        $"Above {Both(Allowances.LiftTogetherKg)} nobody lifts by hand, however many they are: lifting gear marked for the load only, and sling, shackles and what it hangs from marked for it too, or reckoned for it; or taken apart into pieces that may be lifted. One at the gear, one who guides it from the side, nobody under it or between it and anything (common practice, no source; local rules on lifting go first)";

    /// <summary>It is lifted with lifting gear only. False of what has no mass: its caution asks for it.</summary>
    public static bool NeedsGear(double? massKg) => massKg > Allowances.LiftTogetherKg;

    /// <summary>The same of a thing.</summary>
    public static bool NeedsGear(Thing thing) => NeedsGear(MassOf(thing)?.Value);

    /// <summary>People whom a lift needs: 2 where the mass is known and no lift for one, who lift together or, where gear lifts, of whom one works it and one guides. Of what has no mass the caution asks.</summary>
    public static int PeopleFor(double? massKg) => massKg > Allowances.LiftAloneKg ? 2 : 1;

    /// <summary>The same of a thing.</summary>
    public static int PeopleFor(Thing thing) => PeopleFor(MassOf(thing)?.Value);

    /// <summary>It is lifted and nobody has said what it weighs: a second person may be needed, which its caution says.</summary>
    public static bool IsUntold(Thing thing) => thing is Gear or BatteryBank or Inverter && MassOf(thing) is null;

    /// <summary>Caution for lifting a thing; none below the limit, and one when its mass is not known.</summary>
    public static IEnumerable<Caution> Caution(Thing thing)
    {
        Quantity? mass = MassOf(thing);
        if (IsUntold(thing))
        {
            yield return new Caution(CautionKind.Lifting,
                $"Mass of {thing.Title} not given: weigh it before it is lifted. If it is over {Both(Allowances.LiftAloneKg)}, it is not a lift for one: tackle marked for it or a second person. {GearOnly}.");
        }
        else if (NeedsGear(mass?.Value))
        {
            yield return new Caution(CautionKind.Lifting, $"{thing.Title} weighs {Weight(mass!.Value)}. {GearOnly}. Watch how she heels.");
        }
        else if (mass?.Value > Allowances.LiftAloneKg)
        {
            yield return new Caution(CautionKind.Lifting, $"{thing.Title} weighs {Weight(mass.Value)}: not a lift for one. Tackle marked for it or a second person, a hand for the boat, and watch how she heels.");
        }
    }

    /// <summary>What a thing weighs when it is lifted; null where nobody has said, 0 of what is no weight.</summary>
    public static Quantity? MassOf(Thing thing) => thing switch
    {
        Gear gear => gear.MassKg,
        Part part => part.MassKg,
        _ => 0,
    };

    private static string Both(double limitKg) => $"{limitKg} kg ({Math.Floor(limitKg / PoundKg)} lb)";

    private static string Weight(double massKg) => $"{Math.Ceiling(massKg)} kg ({Math.Ceiling(massKg / PoundKg)} lb)";
}
