using Orlop.Boat;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Review.Practices;

namespace Orlop.Review.Tests;

/// <summary>Edits that an owner could make by accident: things gone, values left out or at the ends of their range, loads twice, terminals swapped.</summary>
internal static class RandomEdit
{
    // Stands for the greatest value of a field whose range has no upper end.
    private const double Huge = 1e9;

    public static BoatModel Of(BoatModel boat, Random random)
    {
        Thing[] things = [.. boat.Things.Where(thing => thing is Part or Cable or Link or Space or Way or Condition or PracticeChoice)];
        Thing thing = things[random.Next(things.Length)];
        return random.Next(9) switch
        {
            0 => boat.WithThings(boat.Things.Where(other => other != thing)),
            1 when Any<ElectricLoad>(boat, random) is { } load => Twice(boat, load),
            2 when Any<Cable>(boat, random) is { Cores.Count: > 0 } cable => With(boat, Swapped(boat, cable, random)),
            8 when boat.All<PracticeChoice>().FirstOrDefault() is { } practice => With(boat, WithOwnLimit(practice, random)),
            3 or 4 => With(boat, WithField(thing, random, (_, field) => field is { IsNullable: true, IsRequired: false }, (_, _) => null)),
            _ => With(boat, WithField(thing, random, (_, field) => field is { Allowed: not null, Type: FieldType.Quantity or FieldType.Number }, Extreme)),
        };
    }

    private static BoatModel With(BoatModel boat, Thing thing) => boat.WithThings(boat.Things.Select(other => other.Id == thing.Id ? thing : other));

    private static T? Any<T>(BoatModel boat, Random random)
        where T : Thing => boat.All<T>().ToArray() is { Length: > 0 } all ? all[random.Next(all.Length)] : null;

    private static BoatModel Twice(BoatModel boat, ElectricLoad load)
    {
        string id = $"{load.Id}-again";
        IEnumerable<Thing> feeds = boat.All<Cable>().Where(cable => cable.Cores.Any(core => core.To.Part == load.Id)).Select(cable => cable with
        {
            Id = $"{cable.Id}-again",
            Cores = cable.Cores.Select(core => core.To.Part == load.Id ? core with { To = core.To with { Part = id } } : core).ToValueList(),
        });
        return boat.Find(id) is null ? boat.WithThings([.. boat.Things, load with { Id = id }, .. feeds]) : boat;
    }

    private static PracticeChoice WithOwnLimit(PracticeChoice practice, Random random)
    {
        double[] values = [0, 1, Huge];
        return practice with { Own = [.. practice.Own, new OwnLimit(LimitIds.All[random.Next(LimitIds.All.Count)], values[random.Next(values.Length)], "tried")] };
    }

    private static Cable Swapped(BoatModel boat, Cable cable, Random random)
    {
        Core[] cores = [.. cable.Cores];
        int at = random.Next(cores.Length);
        Core[] all = [.. boat.All<Cable>().SelectMany(other => other.Cores)];
        cores[at] = random.Next(2) == 0
            ? cores[at] with { From = cores[at].To, To = cores[at].From }
            : cores[at] with { To = all[random.Next(all.Length)].To };
        return cable with { Cores = cores.ToValueList() };
    }

    private static Thing WithField(Thing thing, Random random, Func<Thing, FieldSchema, bool> fits, Func<FieldSchema, Random, object?> value)
    {
        FieldSchema[] fields = [.. ThingSchema.Of(thing.GetType()).Fields.Where(field => fits(thing, field))];
        if (fields.Length == 0)
        {
            return thing;
        }

        FieldSchema field = fields[random.Next(fields.Length)];
        return ThingSchema.With(thing, field, value(field, random));
    }

    private static object Extreme(FieldSchema field, Random random)
    {
        double end = random.Next(2) == 0 ? field.Allowed!.Least : Math.Min(field.Allowed!.Most, Huge);
        return field.Type == FieldType.Quantity ? new Quantity(end) : end;
    }
}
