using System.ComponentModel;
using System.Diagnostics;

namespace Orlop.Browser.Tests.Harness;

/// <summary>The text of a PDF, by the usual command-line tool where it is installed.</summary>
internal static class PdfText
{
    /// <summary>The text; null where the tool is not installed.</summary>
    public static async Task<string?> OfAsync(string file)
    {
        try
        {
            using Process tool = Process.Start(new ProcessStartInfo("pdftotext", [file, "-"]) { RedirectStandardOutput = true, UseShellExecute = false })!;
            string text = await tool.StandardOutput.ReadToEndAsync();
            await tool.WaitForExitAsync();
            return text;
        }
        catch (Win32Exception)
        {
            return null;
        }
    }
}
