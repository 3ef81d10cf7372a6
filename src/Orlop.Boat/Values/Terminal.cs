using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Orlop.Boat.Values;

/// <summary>A terminal of a part, written <c>part.terminal</c>: <c>bank.+</c>, <c>winch-fuse.out</c>.</summary>
[JsonConverter(typeof(TerminalJson))]
public readonly record struct Terminal(string Part, string Name)
{
    public override string ToString() => $"{Part}.{Name}";

    /// <summary>Reads <c>part.terminal</c>; false when there is no dot or an end is empty.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out Terminal terminal)
    {
        int dot = text?.IndexOf('.', StringComparison.Ordinal) ?? -1;
        bool isGood = text is not null && dot > 0 && dot < text.Length - 1;
        terminal = isGood ? new Terminal(text![..dot], text[(dot + 1)..]) : default;
        return isGood;
    }

    /// <summary>Reads <c>part.terminal</c> or throws <see cref="FormatException"/> with what was found.</summary>
    public static Terminal Parse(string text) => TryParse(text, out Terminal terminal)
        ? terminal
        : throw new FormatException($"'{text}' is not a terminal; write it as part.terminal, for example bank.+");
}

internal sealed class TerminalJson : JsonConverter<Terminal>
{
    public override Terminal Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Terminal.TryParse(reader.GetString(), out Terminal terminal)
            ? terminal
            : throw new JsonException("a terminal is written part.terminal");

    public override void Write(Utf8JsonWriter writer, Terminal value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.ToString());
}
