using System.Text.Encodings.Web;
using System.Text.Json;

namespace Orlop.App.CommandLine;

/// <summary>How JSON is written to a terminal or a file: signs such as ÷ and Ω stand as themselves, since it goes into no web page.</summary>
internal static class JsonOutput
{
    public static JsonSerializerOptions Options { get; } = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
}
