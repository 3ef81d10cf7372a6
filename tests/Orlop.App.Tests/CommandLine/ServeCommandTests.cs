using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Orlop.App.CommandLine;
using Orlop.App.Sessions;
using Orlop.App.Web;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Review;
using Orlop.Store;
using Xunit;

namespace Orlop.App.Tests.CommandLine;

public sealed class ServeCommandTests : IDisposable
{
    private const string DataHome = "XDG_DATA_HOME";

    private readonly TemporaryFolder _folder = new();
    private readonly string? _dataHome = Environment.GetEnvironmentVariable(DataHome);

    [Fact]
    public void Demo_FolderNotThere_IsMadeAndTheCopyIsToldFreshThenKept()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "XDG_DATA_HOME is of other systems.");
        Environment.SetEnvironmentVariable(DataHome, _folder.At("not/yet"));
        StringWriter first = new(), second = new();
        BoatOpening.OpenDemo(first).Dispose();
        BoatStore again = BoatOpening.OpenDemo(second);
        again.Dispose();

        Assert.StartsWith(_folder.At("not/yet"), again.Path, StringComparison.Ordinal);
        Assert.Contains("a fresh copy of the demo boat", first.ToString(), StringComparison.Ordinal);
        Assert.Contains(again.Path, first.ToString(), StringComparison.Ordinal);
        Assert.Contains($"your copy of the demo boat from {DateTime.Now.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}, not edited yet", second.ToString(), StringComparison.Ordinal);
        Assert.Contains($"To start afresh, rename or delete {again.Path}", second.ToString(), StringComparison.Ordinal);
    }

    // The program has a newer demo boat than the copy: one that nobody edited is laid aside, one with edits is kept.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Demo_CopyOfAnEarlierDemoBoat_IsLaidAsideUnlessEdited(bool isEdited)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "XDG_DATA_HOME is of other systems.");
        Environment.SetEnvironmentVariable(DataHome, _folder.At("data"));
        Directory.CreateDirectory(_folder.At("data/orlop"));
        using (BoatStore earlier = BoatStore.Create(_folder.At("data/orlop/sandgrouse.orlop"), new BoatModel { Things = [new Gear { Id = "chest" }] }, "The demo boat"))
        {
            if (isEdited)
            {
                earlier.Commit(1, [BoatEdits.Add(new Gear { Id = "mine" })], "Mine");
                earlier.Undo(2);
            }
        }

        using BoatStore opened = BoatOpening.OpenDemo(TextWriter.Null);
        Assert.Equal(isEdited, opened.Head.Boat.Things.Count == 1);
        Assert.Equal(!isEdited, File.Exists(_folder.At("data/orlop/sandgrouse.earlier.orlop")));
    }

    // Bad ports of the Fetch standard: SIP, the X Window System, IRC, a backup port; the neighbours are none.
    [Theory]
    [InlineData("5060")]
    [InlineData("5061")]
    [InlineData("6000")]
    [InlineData("6667")]
    [InlineData("10080")]
    public async Task Serve_PortThatBrowsersRefuse_IsRefusedWithOneThatTheyOpen(string port)
    {
        CommandRun run = await CommandRun.Of("serve", "--no-open", "--port", port);

        Assert.Equal(ExitCode.BadInput, run.Code);
        Assert.StartsWith($"--port {port}: browsers refuse to open this port", run.Error, StringComparison.Ordinal);
        Assert.Contains("Use --port 5170", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(80)]
    [InlineData(5059)]
    [InlineData(5170)]
    [InlineData(8080)]
    public void Ports_ThatBrowsersOpen_AreNotBlocked(int port) => Assert.False(BlockedPorts.Contains(port));

    [Fact]
    public void Demo_FolderThatCannotBeMade_IsToldWithAWayOut()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "XDG_DATA_HOME is of other systems.");
        File.WriteAllText(_folder.At("file"), "");
        Environment.SetEnvironmentVariable(DataHome, _folder.At("file"));

        CommandException refusal = Assert.Throws<CommandException>(() => BoatOpening.OpenDemo(TextWriter.Null));

        Assert.Contains(_folder.At("file"), refusal.Message, StringComparison.Ordinal);
        Assert.Contains("XDG_DATA_HOME", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Serve_UntilStopped_SaysWhereAndThatOnlyThisComputerReachesIt()
    {
        string boat = _folder.At("boat.orlop");
        await CommandRun.Of("new", boat);
        StringWriter output = new(), error = new();
        using CancellationTokenSource stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        using TextWriter said = TextWriter.Synchronized(output);
        Task<int> serving = OrlopCommand.RunAsync(["serve", boat, "--port", "0", "--no-open"], new CommandStreams(TextReader.Null, new SignalWriter(said, "Ctrl-C stops", stop), error), stop.Token);

        int code = await serving.WaitAsync(TimeSpan.FromMinutes(1), TestContext.Current.CancellationToken);

        Assert.Contains(code, new[] { ExitCode.Good, ExitCode.Stopped });
        Assert.Contains($"{boat} is open at http://127.0.0.1:", output.ToString(), StringComparison.Ordinal);
        Assert.Contains("On this computer only", output.ToString(), StringComparison.Ordinal);
        Assert.Contains("work pack, printed or copied to the phone", output.ToString(), StringComparison.Ordinal);
        Assert.Empty(error.ToString());
    }

    [Fact]
    public async Task Serve_PortInUse_IsToldInOnePlainLineAndNothingElseIsPrinted()
    {
        await CommandRun.Of("new", _folder.At("boat.orlop"));
        using TcpListener other = new(IPAddress.Loopback, 0);
        other.Start();
        int port = ((IPEndPoint)other.LocalEndpoint).Port;
        TextWriter console = Console.Out;
        using StringWriter log = new(CultureInfo.InvariantCulture);
        Console.SetOut(TextWriter.Synchronized(log));
        try
        {
            CommandRun run = await CommandRun.Of("serve", _folder.At("boat.orlop"), "--no-open", "--port", port.ToString(CultureInfo.InvariantCulture));

            Assert.Equal((ExitCode.BadInput, ""), (run.Code, run.Out));
            Assert.Equal($"Port {port} of this computer cannot be used: another program, or another orlop serve, uses it already. Choose another with --port, or --port 0 for any free one.", run.Error.TrimEnd());
        }
        finally
        {
            Console.SetOut(console);
        }

        Assert.Empty(log.ToString());
    }

    [Fact]
    public async Task Host_KeepsNoKeysOnDisk()
    {
        await CommandRun.Of("new", _folder.At("boat.orlop"));
        using BoatStore store = BoatStore.Open(_folder.At("boat.orlop"));
        using BoatSession session = new(store, WholeReview.NewEngine());
        await using var app = WebHost.Build(session, 0);

        Assert.IsType<EphemeralDataProtectionProvider>(app.Services.GetRequiredService<IDataProtectionProvider>());
        Assert.DoesNotContain(app.Services.GetServices<IHostedService>(), service => service.GetType().FullName!.Contains("DataProtection", StringComparison.Ordinal));
    }

    public void Dispose()
    {
        Environment.SetEnvironmentVariable(DataHome, _dataHome);
        _folder.Dispose();
    }

    /// <summary>Passes on what is written, and stops the program when a line says that it is up.</summary>
    private sealed class SignalWriter(TextWriter inner, string sign, CancellationTokenSource stop) : StringWriter(CultureInfo.InvariantCulture)
    {
        public override async Task WriteLineAsync(string? value)
        {
            await inner.WriteLineAsync(value);
            if (value?.Contains(sign, StringComparison.Ordinal) == true)
            {
                await stop.CancelAsync();
            }
        }
    }
}
