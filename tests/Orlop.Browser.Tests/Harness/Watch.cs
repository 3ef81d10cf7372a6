using System.Collections.Concurrent;
using Microsoft.Playwright;

namespace Orlop.Browser.Tests.Harness;

/// <summary>Notes what no page may do: ask anything beyond this computer, print an error, or answer one.</summary>
internal sealed class Watch
{
    private const string Here = "127.0.0.1";
    private readonly ConcurrentQueue<string> _seen = new();

    /// <summary>What was seen that may not be.</summary>
    public IReadOnlyCollection<string> Seen => _seen;

    public void Over(IBrowserContext context)
    {
        context.Request += (_, request) => NoteAddress(request.Url);
        context.Response += (_, response) =>
        {
            if (response.Status >= 400)
            {
                _seen.Enqueue($"{response.Status} for {response.Url}");
            }
        };
        context.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
            {
                _seen.Enqueue($"console {message.Type}: {message.Text}");
            }
        };
        context.WebError += (_, fault) => _seen.Enqueue($"script error: {fault.Error}");
        context.Page += (_, page) => page.WebSocket += (_, socket) => NoteAddress(socket.Url);
    }

    private void NoteAddress(string address)
    {
        Uri uri = new(address);
        if (uri.Scheme is not ("data" or "blob" or "about") && uri.Host != Here)
        {
            _seen.Enqueue($"asked {address}, which is not this computer");
        }
    }
}
