using Orlop.Boat.Alterations;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Validation;

namespace Orlop.Boat.Tables;

/// <summary>All things of one kind as a table for a spreadsheet, and back (see <c>docs/file-format.md</c>).</summary>
public static class ThingTable
{
    /// <summary>Text with a header, one thing a row; columns of how well a quantity is known only where a row needs them.</summary>
    /// <param name="separator">What parts the cells; a tab for what is pasted into a spreadsheet.</param>
    public static string Export(BoatModel boat, string kind, char separator = ',')
    {
        RecordSchema schema = ThingSchema.Of(kind);
        Thing[] things = [.. boat.Things.Where(thing => thing.GetType() == schema.Type)];
        TableColumn[] columns = [.. TableColumn.Of(schema).Where(column => !column.IsKnowledge || things.Any(thing => column.Text(thing).Length > 0))];
        return TableText.Write([columns.Select(column => column.Name), .. things.Select(thing => columns.Select(column => column.Text(thing)))], separator);
    }

    /// <summary>
    /// What a table of one kind would add to the boat or replace in it. A column that is left out leaves its field as it is, a blank cell
    /// empties it. A row without an id is a new thing, and its id is made from its name. Commas, semicolons or tabs may part the cells; numbers have a decimal point.
    /// </summary>
    /// <param name="isTaken">Ids that the boat does not have and that none may be made of either; null where there are none.</param>
    public static TableImport Import(BoatModel boat, string kind, string csv, Func<string, bool>? isTaken = null)
    {
        RecordSchema schema = ThingSchema.Of(kind);
        ProblemList problems = new();
        TableReading reading = new(boat, schema, problems, isTaken);
        List<ThingEntry> rows = reading.Read(csv);
        Dictionary<string, ThingEntry> byId = rows.Where(row => row.Id is not null).DistinctBy(row => row.Id).ToDictionary(row => row.Id!, StringComparer.Ordinal);
        bool IsReplaced(Thing thing) => thing.GetType() == schema.Type && byId.ContainsKey(thing.Id);
        HashSet<ThingEntry> placed = [.. boat.Things.Where(IsReplaced).Select(thing => byId[thing.Id])];
        BoatValidation.Check(
            [
                .. boat.Things.Select((thing, index) => IsReplaced(thing) ? byId[thing.Id] : new ThingEntry(thing, thing.Id, Spot.Thing(index, thing.Id), true)),
                .. rows.Where(row => !placed.Contains(row)),
            ],
            problems);
        TableProblem[] told = TableProblems.Of(problems, schema, rows, problems.Count == 0 ? [] : BoatValidation.Check(boat));
        return new TableImport(told.Length > 0 ? [] : [.. Edits(boat, rows)], told.Length > 0 ? [] : [.. reading.MadeIds], told);
    }

    private static IEnumerable<Edit> Edits(BoatModel boat, List<ThingEntry> rows)
    {
        foreach (Thing becomes in rows.Select(row => row.Thing!))
        {
            Thing? was = boat.Find(becomes.Id);
            if (!Equals(was, becomes))
            {
                yield return was is null ? BoatEdits.Add(becomes) : BoatEdits.Replace(was, becomes);
            }
        }
    }
}
