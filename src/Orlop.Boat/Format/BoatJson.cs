using System.Buffers;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;
using Orlop.Boat.Validation;

namespace Orlop.Boat.Format;

/// <summary>The boat file: JSON, read strictly with all problems told at once, written in one canonical form (see <c>docs/file-format.md</c>).</summary>
public static class BoatJson
{
    /// <summary>Objects and lists may stand inside each other this deep.</summary>
    public const int DeepestNesting = 32;

    /// <summary>Reads a boat from text.</summary>
    public static BoatReadResult Read(string text) => Read(Encoding.UTF8.GetBytes(text));

    /// <summary>Reads a boat from UTF-8, to the end of the stream.</summary>
    public static BoatReadResult Read(Stream utf8)
    {
        using MemoryStream whole = new();
        utf8.CopyTo(whole);
        return Read(whole.ToArray());
    }

    /// <summary>Reads a boat from UTF-8, with or without a byte order mark.</summary>
    public static BoatReadResult Read(ReadOnlyMemory<byte> utf8)
    {
        ReadOnlyMemory<byte> text = utf8.Span.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]) ? utf8[3..] : utf8;
        ProblemList problems = new();
        using JsonDocument? document = Parse(text, problems);
        BoatModel? boat = document is null ? null : new BoatReading(problems).Read(document.RootElement);
        return new BoatReadResult(problems.Count == 0 ? boat : null, problems.InOrder());
    }

    /// <summary>The canonical text of a boat, which reads back as the same boat. Numbers keep every bit.</summary>
    public static string Write(BoatModel boat)
    {
        using MemoryStream utf8 = new();
        Write(boat, utf8);
        return Encoding.UTF8.GetString(utf8.GetBuffer(), 0, (int)utf8.Length);
    }

    /// <summary>Writes the canonical text of a boat as UTF-8.</summary>
    public static void Write(BoatModel boat, Stream utf8)
    {
        using BoatWriting writing = new(utf8);
        writing.Write(boat);
    }

    private static JsonDocument? Parse(ReadOnlyMemory<byte> utf8, ProblemList problems)
    {
        if (utf8.Span.IndexOfAnyExcept(" \t\r\n"u8) < 0)
        {
            problems.Add(Spot.Boat, "nothing", "a boat file", "The file is empty.");
            return null;
        }

        if (!Utf8.IsValid(utf8.Span))
        {
            (int line, int column) = FirstThatIsNoText(utf8.Span);
            problems.Add(Spot.Boat, $"line {line}, column {column}", "UTF-8", $"The file is not UTF-8 text at line {line}, column {column}.");
            return null;
        }

        try
        {
            return JsonDocument.Parse(utf8, new JsonDocumentOptions { MaxDepth = DeepestNesting });
        }
        catch (JsonException fault)
        {
            long line = (fault.LineNumber ?? 0) + 1, column = (fault.BytePositionInLine ?? 0) + 1;
            bool isTooDeep = IsTooDeep(utf8.Span);
            problems.Add(
                Spot.Boat,
                $"line {line}, column {column}",
                isTooDeep ? $"at most {DeepestNesting} levels" : "JSON",
                isTooDeep
                    ? $"Objects or lists stand too deep inside each other at line {line}, column {column}."
                    : $"This is not JSON from line {line}, column {column} on.");
            return null;
        }
    }

    // The column counts bytes, as it does for text that is not JSON.
    private static (int Line, int Column) FirstThatIsNoText(ReadOnlySpan<byte> utf8)
    {
        int at = 0;
        while (Rune.DecodeFromUtf8(utf8[at..], out _, out int length) == OperationStatus.Done)
        {
            at += length;
        }

        return (utf8[..at].Count((byte)'\n') + 1, at - utf8[..at].LastIndexOf((byte)'\n'));
    }

    private static bool IsTooDeep(ReadOnlySpan<byte> utf8)
    {
        Utf8JsonReader reader = new(utf8, new JsonReaderOptions { MaxDepth = DeepestNesting + 1 });
        try
        {
            while (reader.Read())
            {
                if (reader.CurrentDepth >= DeepestNesting && reader.TokenType is JsonTokenType.StartArray or JsonTokenType.StartObject)
                {
                    return true;
                }
            }
        }
        catch (JsonException)
        {
            return false;
        }

        return false;
    }
}
