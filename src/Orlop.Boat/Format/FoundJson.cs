using System.Text.Json;

namespace Orlop.Boat.Format;

/// <summary>Says in a few words what stands in a JSON element, and takes text out of it without a throw.</summary>
internal static class FoundJson
{
    private const int MostLetters = 60;

    public static string Words(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => $"the text {Short(element.GetRawText())}",
        JsonValueKind.Null => "null",
        _ => Short(element.GetRawText()),
    };

    public static string Short(string text) => text.Length <= MostLetters ? text : string.Concat(text.AsSpan(0, MostLetters), "…");

    /// <summary>The text; false for half a surrogate pair, which JSON can escape and nothing can store.</summary>
    public static bool TryText(JsonElement element, out string text)
    {
        try
        {
            text = element.GetString()!;
            return true;
        }
        catch (InvalidOperationException)
        {
            text = element.GetRawText();
            return false;
        }
    }

    public static bool TryName(JsonProperty property, out string name)
    {
        try
        {
            name = property.Name;
            return true;
        }
        catch (InvalidOperationException)
        {
            name = "a name that is no text";
            return false;
        }
    }
}
