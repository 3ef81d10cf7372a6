using System.Collections;
using System.Globalization;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Boat.Validation;

/// <summary>The rules of single values: present, finite, inside its range, an id that can be typed, words that can be kept.</summary>
internal static class RecordRules
{
    /// <summary>Longest id.</summary>
    public const int MostIdLetters = 64;

    /// <summary>Checks a thing and what is inside it. Only one that is whole can be asked whether its values agree.</summary>
    public static bool CheckThing(Thing thing, Spot spot, bool isWhole, ProblemList problems)
    {
        bool isComplete = Check(thing, spot, problems);
        if (thing is Alteration alteration)
        {
            AlterationRules.CheckEdits(alteration, spot, isWhole && isComplete, problems);
        }

        if (isWhole && isComplete)
        {
            ThingRules.Check(thing, spot, problems);
        }

        return isComplete;
    }

    /// <summary>Checks each value; false where one is missing.</summary>
    private static bool Check(object record, Spot spot, ProblemList problems)
    {
        bool isComplete = true;
        foreach (FieldSchema field in RecordSchema.Of(record.GetType()).Fields)
        {
            object? value = field.Get(record);
            Spot at = spot.At(field.Name);
            if (field.Type == FieldType.List)
            {
                int index = 0;
                foreach (object? item in (IEnumerable)value!)
                {
                    isComplete &= CheckValue(field, field.ItemType!.Value, item, at.At(index++), problems);
                }
            }
            else if (value is not null || field.IsRequired)
            {
                isComplete &= CheckValue(field, field.Type, value, at, problems);
            }
        }

        return isComplete;
    }

    public static bool IsId(string id) =>
        id.Length is > 0 and <= MostIdLetters && char.IsAsciiLetterLower(id[0]) && id.All(letter => char.IsAsciiLetterLower(letter) || char.IsAsciiDigit(letter) || letter == '-');

    private static bool CheckValue(FieldSchema field, FieldType type, object? value, Spot spot, ProblemList problems)
    {
        switch (value)
        {
            case null or Terminal { Part: null }:
                problems.Add(spot, "nothing", AllowedWords.Of(field, type), $"{field.Label} is missing.");
                return false;
            case double number:
                CheckNumber(field, number, spot, problems);
                break;
            case int count:
                CheckNumber(field, count, spot, problems);
                break;
            case Quantity quantity:
                CheckQuantity(field, quantity, spot, problems);
                break;
            case string id when type == FieldType.Id && !IsId(id):
                problems.Add(spot, Quoted(id), $"{AllowedWords.Of(field, type)}, at most {MostIdLetters}", "This is not an id.");
                break;
            case Terminal terminal:
                CheckText(field, terminal.ToString(), spot, problems);
                break;
            case string text:
                CheckText(field, text, spot, problems);
                break;
            case Enum choice when !Enum.IsDefined(field.ValueType, choice):
                problems.Add(spot, choice.ToString(), AllowedWords.Of(field, type), $"{field.Label} is none of its choices.");
                break;
            case Thing thing:
                return CheckThing(thing, spot, true, problems);
            case not null when type is FieldType.Place or FieldType.Box or FieldType.Record:
                return Check(value, spot, problems);
        }

        return true;
    }

    private static void CheckQuantity(FieldSchema field, Quantity quantity, Spot spot, ProblemList problems)
    {
        CheckNumber(field, quantity.Value, spot, problems);
        foreach (FieldSchema part in field.Record!.Fields.Where(part => part.Name != "value"))
        {
            if (part.Get(quantity) is object value)
            {
                CheckValue(part, part.Type, value, spot.At(part.Name), problems);
            }
        }
    }

    private static void CheckNumber(FieldSchema field, double number, Spot spot, ProblemList problems)
    {
        string found = $"{Text(number)} {field.Unit?.Text}".TrimEnd();
        if (!double.IsFinite(number))
        {
            problems.Add(spot, found, AllowedWords.Of(field, FieldType.Number), $"{field.Label} is not a finite number.");
        }
        else if (field.Allowed is AllowedAttribute allowed && !(number >= allowed.Least && number <= allowed.Most))
        {
            problems.Add(spot, found, field.AllowedText!, $"{field.Label} is outside its range.");
        }
    }

    private static void CheckText(FieldSchema field, string text, Spot spot, ProblemList problems)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            problems.Add(spot, Quoted(text), "words, or the field left out", $"{field.Label} is blank.");
        }
        else if (text.Any(letter => char.IsControl(letter) && letter is not ('\t' or '\n' or '\r')) || !IsWellFormed(text))
        {
            problems.Add(spot, "signs that cannot be printed", "letters, signs, tabs and line ends", $"{field.Label} holds signs that cannot be kept.");
        }
    }

    private static bool IsWellFormed(string text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            if (char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
            {
                i++;
            }
            else if (char.IsSurrogate(text[i]))
            {
                return false;
            }
        }

        return true;
    }

    private static string Text(double number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Quoted(string text) => $"'{FoundJson.Short(text)}'";
}
