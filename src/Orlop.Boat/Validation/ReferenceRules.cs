using System.Collections;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Topology;
using Orlop.Boat.Values;

namespace Orlop.Boat.Validation;

/// <summary>The rules of what points at what: a reference names a thing of the right kind, a terminal one that its part has.</summary>
internal sealed class ReferenceRules
{
    private readonly Dictionary<string, ThingEntry> _byId = new(StringComparer.Ordinal);
    private readonly IReadOnlyDictionary<string, Spot> _edited;
    private readonly ProblemList _problems;

    private ReferenceRules(IReadOnlyList<ThingEntry> entries, IReadOnlyDictionary<string, Spot> edited, ProblemList problems)
    {
        foreach (ThingEntry entry in entries.Where(entry => entry.Id is not null))
        {
            _byId.TryAdd(entry.Id!, entry);
        }

        _edited = edited;
        _problems = problems;
    }

    /// <summary>Checks every reference. What a thing that no edit touches loses through an edit is told at the edit.</summary>
    public static void Check(IReadOnlyList<ThingEntry> entries, IReadOnlyDictionary<string, Spot> edited, ProblemList problems)
    {
        ReferenceRules rules = new(entries, edited, problems);
        foreach (ThingEntry entry in entries.Where(entry => entry.Thing is not null))
        {
            rules.CheckRecord(entry, entry.Thing!, entry.Spot);
        }
    }

    private void CheckRecord(ThingEntry from, object record, Spot spot)
    {
        foreach (FieldSchema field in RecordSchema.Of(record.GetType()).Fields)
        {
            FieldType type = field.ItemType ?? field.Type;
            if (type is not (FieldType.Reference or FieldType.Terminal or FieldType.Record) || field.Get(record) is not object value)
            {
                continue;
            }

            if (field.Type != FieldType.List)
            {
                CheckValue(from, field, value, spot.At(field.Name));
                continue;
            }

            int index = 0;
            foreach (object? item in (IEnumerable)value)
            {
                CheckValue(from, field, item, spot.At(field.Name).At(index++));
            }
        }

        if (record is Reading { Through: string through })
        {
            CheckElement(from, through, spot.At("through"));
        }
    }

    private void CheckValue(ThingEntry from, FieldSchema field, object? value, Spot spot)
    {
        switch (value)
        {
            case null:
                break;
            case string id:
                CheckReference(from, field, id, spot);
                break;
            case Terminal terminal when terminal.Part is not null:
                CheckTerminal(from, terminal, spot);
                break;
            case not (string or Terminal):
                CheckRecord(from, value, spot);
                break;
        }
    }

    private void CheckReference(ThingEntry from, FieldSchema field, string id, Spot spot)
    {
        string allowed = AllowedWords.Of(field, FieldType.Reference);
        if (!_byId.TryGetValue(id, out ThingEntry? target))
        {
            Refuse(from, id, spot, $"'{id}'", $"{allowed} in this boat{Few(field.RefersTo!)}", $"{field.Label}: there is no '{id}' in this boat.");
        }
        else if (target.Thing is not null && !field.RefersTo!.IsInstanceOfType(target.Thing))
        {
            Refuse(from, id, spot, $"'{id}', {AllowedWords.AKind(target.Thing.GetType())}", allowed, $"{field.Label}: '{id}' is {AllowedWords.AKind(target.Thing.GetType())}.");
        }
    }

    // Of conditions there are few, and their ids stand nowhere else where a table is pasted.
    private string Few(Type kind) => kind == typeof(Condition) && _byId.Values.Select(entry => entry.Thing).OfType<Condition>().Select(condition => $"{condition.Id} (“{condition.Title}”)").ToList() is { Count: > 0 } ids
        ? $": {string.Join(", ", ids)}" : "";

    private void CheckTerminal(ThingEntry from, Terminal terminal, Spot spot)
    {
        if (!_byId.TryGetValue(terminal.Part, out ThingEntry? target))
        {
            Refuse(from, terminal.Part, spot, $"'{terminal}'", "a terminal of a part in this boat", $"There is no part '{terminal.Part}' in this boat.");
        }
        else if (target is { Thing: not null, IsWhole: true } && TerminalsOf(target.Thing, from.Thing is Reading) is var names && !names.Contains(terminal.Name))
        {
            string message = names.Count == 0 ? $"'{terminal.Part}' is {AllowedWords.AKind(target.Thing.GetType())} and has no terminals." : $"'{terminal.Part}' has no terminal '{terminal.Name}'.";
            Refuse(from, terminal.Part, spot, $"'{terminal}'", names.Count == 0 ? "a terminal of a part" : string.Join(", ", names.Select(name => $"{terminal.Part}.{name}")), message);
        }
    }

    private static IReadOnlyList<string> TerminalsOf(Thing thing, bool withJoints) => thing switch
    {
        Part part => part.TerminalNames,
        Cable cable when withJoints => [.. cable.Cores.SelectMany(core => new[] { $"{core.Id}@from", $"{core.Id}@to" })],
        _ => [],
    };

    private void CheckElement(ThingEntry from, string element, Spot spot)
    {
        string id = ElementIds.ThingOf(element);
        if (!_byId.TryGetValue(id, out ThingEntry? target))
        {
            Refuse(from, id, spot, $"'{element}'", "a cable.core, or the id of a part", $"There is no '{id}' in this boat.");
        }
        else if (target is { Thing: not null, IsWhole: true } && ElementsOf(target.Thing) is var names && !names.Contains(element))
        {
            string allowed = names.Count == 0 ? "a cable.core, or the id of a part" : string.Join(", ", names);
            Refuse(from, id, spot, $"'{element}'", allowed, $"No current is taken in '{element}'.");
        }
    }

    private static IReadOnlyList<string> ElementsOf(Thing thing) => thing switch
    {
        Cable cable => [.. cable.Cores.Select(core => ElementIds.Core(cable, core))],
        Part part when part.TerminalNames.Contains(TerminalNames.Out2) => [part.Id, ElementIds.SecondPole(part)],
        Part or Link => [thing.Id],
        _ => [],
    };

    private void Refuse(ThingEntry from, string targetId, Spot spot, string found, string allowed, string message)
    {
        if (_problems.Has(spot))
        {
            return;
        }

        bool isLostByEdit = from.Id is string id && !_edited.ContainsKey(id) && _edited.ContainsKey(targetId);
        if (isLostByEdit)
        {
            _problems.Add(_edited[targetId], $"{found} at {spot}", allowed, $"After this edit '{from.Id}' points at something that is gone: {message}", about: spot.ToString());
        }
        else
        {
            _problems.Add(spot, found, allowed, message);
        }
    }
}
