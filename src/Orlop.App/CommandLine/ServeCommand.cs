using System.CommandLine;
using System.Globalization;
using Orlop.App.Web;

namespace Orlop.App.CommandLine;

/// <summary><c>orlop serve</c>: the pages, for this computer only.</summary>
internal static class ServeCommand
{
    private const int UsualPort = 5170;

    public static Command Make(CommandStreams streams)
    {
        Argument<string?> boat = new("boat")
        {
            Description = "A .orlop store, or a .json boat file to read into one. Without it: a copy of the demo boat.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        Option<int> port = new("--port") { Description = "Port on 127.0.0.1; 0 takes any free one.", DefaultValueFactory = _ => UsualPort };
        port.Validators.Add(result =>
        {
            // Without a token it is the usual port.
            if (result.Tokens is not [{ Value: { } typed }])
            {
                return;
            }

            if (!int.TryParse(typed, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int number) || number is < 0 or > 65535)
            {
                result.AddError($"--port {typed}: allowed 0 to 65535.");
            }
            else if (BlockedPorts.Contains(number))
            {
                result.AddError($"--port {number}: browsers refuse to open this port (the Fetch standard's list of bad ports). Use --port {UsualPort}, or --port 0 for any free one.");
            }
        });
        Option<bool> noOpen = new("--no-open") { Description = "Do not open a browser." };
        Command command = new("serve", "Open a boat in the browser.") { boat, port, noOpen };
        command.SetAction((parsed, token) => WebHost.RunAsync(
            parsed.GetValue(boat), parsed.GetValue(port), !parsed.GetValue(noOpen), streams, token));
        return command;
    }
}
