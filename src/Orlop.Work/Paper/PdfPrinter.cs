using System.ComponentModel;
using System.Diagnostics;

namespace Orlop.Work.Paper;

/// <summary>Prints an HTML file to PDF with a browser that is installed, without its window.</summary>
public static class PdfPrinter
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private static readonly string[] Names =
        ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome", "microsoft-edge", "msedge"];

    private static readonly string[] UsualPlaces =
    [
        "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
        "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
        "/Applications/Chromium.app/Contents/MacOS/Chromium",
        @"C:\Program Files\Google\Chrome\Application\chrome.exe",
        @"C:\Program Files (x86)\Microsoft\Edge\Application\msedge.exe",
        @"C:\Program Files\Microsoft\Edge\Application\msedge.exe",
    ];

    /// <summary>The browser that would be used, or null.</summary>
    public static string? FindBrowser() => FindBrowser(Environment.GetEnvironmentVariable("PATH") ?? "", File.Exists);

    /// <summary>Prints an HTML file beside it or elsewhere; without a browser it says so, and how to print by hand.</summary>
    public static Task<PdfResult> PrintAsync(string htmlFile, string pdfFile, CancellationToken token = default) => PrintAsync(FindBrowser(), htmlFile, pdfFile, token);

    internal static string? FindBrowser(string path, Func<string, bool> exists)
    {
        string suffix = OperatingSystem.IsWindows() ? ".exe" : "";
        return path.Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
            .SelectMany(folder => Names.Select(name => Path.Combine(folder, name + suffix))).Concat(UsualPlaces).FirstOrDefault(exists);
    }

    internal static async Task<PdfResult> PrintAsync(string? browser, string htmlFile, string pdfFile, CancellationToken token)
    {
        if (browser is null)
        {
            return new PdfResult(null, $"No Chromium, Chrome or Edge was found, so there is no PDF. Open {Path.GetFileName(htmlFile)} in any browser and print it: no scaling, background off.");
        }

        string profile = Directory.CreateTempSubdirectory("print-").FullName;
        try
        {
            File.Delete(pdfFile);
            using CancellationTokenSource patience = CancellationTokenSource.CreateLinkedTokenSource(token);
            patience.CancelAfter(Patience);
            string? said = await RunAsync(browser, Arguments(profile, htmlFile, pdfFile), patience.Token, token).ConfigureAwait(false);
            return File.Exists(pdfFile)
                ? new PdfResult(pdfFile, null)
                : new PdfResult(null, $"{Path.GetFileName(browser)} made no PDF{(string.IsNullOrWhiteSpace(said) ? "" : $": {said.Trim()}")}. Open {Path.GetFileName(htmlFile)} and print it by hand.");
        }
        finally
        {
            Remove(profile);
        }
    }

    private static string[] Arguments(string profile, string htmlFile, string pdfFile) =>
    [
        "--headless", .. Environment.UserName == "root" ? ["--no-sandbox"] : Array.Empty<string>(), "--disable-gpu", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync", $"--user-data-dir={profile}", "--no-pdf-header-footer", $"--print-to-pdf={Path.GetFullPath(pdfFile)}", new Uri(Path.GetFullPath(htmlFile)).AbsoluteUri,
    ];

    private static async Task<string?> RunAsync(string browser, string[] arguments, CancellationToken patience, CancellationToken token)
    {
        ProcessStartInfo start = new(browser, arguments) { RedirectStandardError = true, RedirectStandardOutput = true, UseShellExecute = false };
        try
        {
            using Process process = Process.Start(start)!;
            try
            {
                Task<string> output = process.StandardOutput.ReadToEndAsync(patience);
                string said = await process.StandardError.ReadToEndAsync(patience).ConfigureAwait(false);
                await output.ConfigureAwait(false);
                await process.WaitForExitAsync(patience).ConfigureAwait(false);
                return process.ExitCode == 0 ? null : said.Split('\n', StringSplitOptions.RemoveEmptyEntries).LastOrDefault();
            }
            catch (OperationCanceledException)
            {
                process.Kill(entireProcessTree: true);
                token.ThrowIfCancellationRequested();
                return $"it took longer than {Patience.TotalSeconds:0} s";
            }
        }
        catch (Win32Exception problem)
        {
            return problem.Message;
        }
    }

    private static void Remove(string folder)
    {
        try
        {
            Directory.Delete(folder, recursive: true);
        }
        catch (IOException)
        {
            // The browser may still be closing its files; the system clears its temporary folder.
        }
    }
}
