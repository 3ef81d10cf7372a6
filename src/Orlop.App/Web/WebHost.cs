using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Microsoft.AspNetCore.Components.Server;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.ResponseCompression;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Orlop.App.CommandLine;
using Orlop.App.Sessions;
using Orlop.Review;
using Orlop.Store;

namespace Orlop.App.Web;

/// <summary>The web server behind the pages: loopback only, no outside requests, no logins.</summary>
internal static class WebHost
{
    /// <summary>Serves a boat until it is stopped.</summary>
    public static async Task<int> RunAsync(string? boat, int port, bool opensBrowser, CommandStreams streams, CancellationToken token)
    {
        using BoatStore store = boat is null ? BoatOpening.OpenDemo(streams.Error) : BoatOpening.Open(boat, streams.Error);
        using BoatSession session = new(store, WholeReview.NewEngine());
        await using WebApplication app = Build(session, port);
        try
        {
            await app.StartAsync(token);
        }
        catch (Exception fault) when (fault is IOException or SocketException)
        {
            string why = fault.InnerException is AddressInUseException ? "another program, or another orlop serve, uses it already." : fault.Message;
            throw new CommandException($"Port {port} of this computer cannot be used: {why} Choose another with --port, or --port 0 for any free one.");
        }

        string address = app.Urls.First();
        await streams.Out.WriteLineAsync($"{store.Path} is open at {address}");
        await streams.Out.WriteLineAsync("On this computer only; no other device can reach it. At the boat, use the work pack, printed or copied to the phone (orlop pack).");
        await streams.Out.WriteLineAsync("Ctrl-C stops.");
        await streams.Out.FlushAsync(token);
        if (opensBrowser)
        {
            OpenBrowser(address);
        }

        await app.WaitForShutdownAsync(token);
        return ExitCode.Good;
    }

    /// <summary>The application, not yet started.</summary>
    public static WebApplication Build(BoatSession session, int port)
    {
        WebApplicationBuilder builder = WebApplication.CreateBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory });
        builder.Configuration["AllowedHosts"] = "localhost;127.0.0.1";
        KeepQuiet(builder.Logging);
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = BoatAttachments.MostBytes + (1 << 20);
            kestrel.Listen(IPAddress.Loopback, port);
        });
        builder.Services.AddSingleton(session);
        builder.Services.AddResponseCompression(options => options.MimeTypes = ResponseCompressionDefaults.MimeTypes.Append("image/svg+xml"));
        builder.Services.AddRazorComponents().AddInteractiveServerComponents();
        builder.Services.Configure<CircuitOptions>(options => options.DisconnectedCircuitRetentionPeriod = TimeSpan.FromMinutes(15));
        KeepNoKeys(builder.Services);

        WebApplication app = builder.Build();
        app.UseResponseCompression();
        app.UseMiddleware<SameOrigin>();
        app.UseStatusCodePagesWithReExecute("/not-found");
        app.UseAntiforgery();
        app.MapStaticAssets();
        BoatFiles.Map(app);
        app.MapRazorComponents<Shell.App>().AddInteractiveServerRenderMode();
        return app;
    }

    // What goes wrong at the start is told in one line by the command. A page from before a restart brings tokens of keys that are
    // gone: it is answered, and the page loads itself again.
    private static void KeepQuiet(ILoggingBuilder logging) => logging.SetMinimumLevel(LogLevel.Warning)
        .AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.None)
        .AddFilter("Microsoft.AspNetCore.Antiforgery", LogLevel.None);

    // Tokens live as long as the process: a key of its own in memory, and none made and kept in the user's home at the start.
    private static void KeepNoKeys(IServiceCollection services)
    {
        foreach (ServiceDescriptor keyMaker in services.Where(service => service.ServiceType == typeof(IHostedService) && service.ImplementationType?.Assembly == typeof(IDataProtectionBuilder).Assembly).ToList())
        {
            services.Remove(keyMaker);
        }

        services.Replace(ServiceDescriptor.Singleton<IDataProtectionProvider, EphemeralDataProtectionProvider>(_ => new EphemeralDataProtectionProvider()));
    }

    private static void OpenBrowser(string address)
    {
        try
        {
            using Process? browser = Process.Start(new ProcessStartInfo(address) { UseShellExecute = true });
        }
        catch (Exception fault) when (fault is InvalidOperationException or System.ComponentModel.Win32Exception)
        {
            // No browser here: the address has been printed.
        }
    }
}
