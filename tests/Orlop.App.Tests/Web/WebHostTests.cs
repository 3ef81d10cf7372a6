using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Orlop.App.Tests.Sessions;
using Orlop.App.Web;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Store;
using Xunit;

namespace Orlop.App.Tests.Web;

public sealed class WebHostTests : IAsyncLifetime
{
    private static readonly byte[] OnePixelPng = Convert.FromBase64String(
        "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");

    private readonly OpenedBoat _opened = new(BoatJson.Read(File.ReadAllText(Repository.At("examples", "sandgrouse.json"))).Boat!);
    private readonly HttpClient _browser = new();
    private WebApplication _app = null!;

    public async ValueTask InitializeAsync()
    {
        _app = WebHost.Build(_opened.Session, 0);
        await _app.StartAsync();
        _browser.BaseAddress = new Uri(_app.Urls.Single());
        // Reviews of many tests go on beside each other, on a slow machine for minutes.
        _browser.Timeout = TimeSpan.FromMinutes(10);
    }

    [Theory]
    [InlineData("")]
    [InlineData("electrics")]
    [InlineData("electrics?view=diagram")]
    [InlineData("electrics?new=circuit")]
    [InlineData("electrics?view=faults")]
    [InlineData("electrical")]
    [InlineData("alterations")]
    [InlineData("record")]
    [InlineData("record?part=readings")]
    [InlineData("record?part=photographs")]
    [InlineData("record?part=history")]
    [InlineData("?thing=winch")]
    public async Task Page_IsThereAndAsksNothingOutside(string path)
    {
        using HttpResponseMessage page = await Get(path);
        string html = await page.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.OK, page.StatusCode);
        Assert.Contains("<h1", html, StringComparison.Ordinal);
        Assert.DoesNotContain("src=\"http", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<link rel=\"stylesheet\" href=\"http", html, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(page.Headers.GetValues("Content-Security-Policy"), policy => policy.Contains("default-src 'self'", StringComparison.Ordinal));
    }

    [Fact]
    public void Server_ListensOnLoopbackOnly() => Assert.All(_app.Urls, url => Assert.Equal("127.0.0.1", new Uri(url).Host));

    [Fact]
    public async Task HostName_OfAnotherSite_IsTurnedAway()
    {
        using HttpRequestMessage request = new(HttpMethod.Get, "");
        request.Headers.Host = "boat.example";
        using HttpResponseMessage response = await _browser.SendAsync(request, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
    }

    [Theory]
    [InlineData("https://boat.example")]
    [InlineData("null")]
    public async Task Origin_OfAnotherSite_IsTurnedAway(string origin)
    {
        using HttpRequestMessage request = new(HttpMethod.Post, "_blazor/negotiate");
        request.Headers.Add("Origin", origin);
        using HttpResponseMessage response = await _browser.SendAsync(request, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.Forbidden, response.StatusCode);
    }

    [Fact]
    public async Task Page_WithATokenFromBeforeARestart_IsAnsweredAndNothingIsLogged()
    {
        await using WebApplication earlier = WebHost.Build(_opened.Session, 0);
        await earlier.StartAsync(TestContext.Current.CancellationToken);
        using HttpResponseMessage before = await _browser.GetAsync(earlier.Urls.Single(), TestContext.Current.CancellationToken);
        string token = Assert.Single(before.Headers.GetValues("Set-Cookie"), cookie => cookie.Contains("Antiforgery", StringComparison.Ordinal)).Split(';')[0];
        using HttpRequestMessage request = new(HttpMethod.Get, "");
        request.Headers.Add("Cookie", token);
        using HttpResponseMessage after = await _browser.SendAsync(request, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.OK, after.StatusCode);
        Assert.False(_app.Services.GetRequiredService<ILoggerFactory>().CreateLogger("Microsoft.AspNetCore.Antiforgery.DefaultAntiforgery").IsEnabled(LogLevel.Critical));
    }

    [Theory]
    [InlineData("nothing")]
    [InlineData("photographs/abc")]
    [InlineData("photographs/0000000000000000000000000000000000000000000000000000000000000000")]
    [InlineData("photographs/..%2f..%2fetc%2fpasswd")]
    [InlineData("packs/nothing")]
    [InlineData("stability?alteration=nothing")]
    [InlineData("tables/nothing.csv")]
    [InlineData("tables/gz.xml")]
    public async Task Address_OfNothing_IsNotFound(string path)
    {
        using HttpResponseMessage response = await Get(path);

        Assert.Equal(HttpStatusCode.NotFound, response.StatusCode);
    }

    [Fact]
    public async Task Photograph_Kept_IsServedWithItsTypeOnly()
    {
        Attachment kept = Assert.IsType<AttachmentKept>(_opened.Store.Attachments.Add(OnePixelPng, "image/png")).Attachment;
        using HttpResponseMessage response = await Get($"photographs/{kept.Sha256}");

        Assert.Equal("image/png", response.Content.Headers.ContentType!.MediaType);
        Assert.Equal("nosniff", response.Headers.GetValues("X-Content-Type-Options").Single());
        Assert.Equal(OnePixelPng, await response.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
    }

    [Theory]
    [InlineData("tables/hydrostatics.csv", "text/csv", "draught_m,")]
    [InlineData("tables/kn.json", "application/json", "\"table\": \"kn\"")]
    public async Task Table_IsHandedOut(string path, string mediaType, string holds)
    {
        using HttpResponseMessage response = await Get(path);

        Assert.Equal(mediaType, response.Content.Headers.ContentType!.MediaType);
        Assert.Contains(holds, await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pack_OfAnAlteration_IsAPageThatPrints()
    {
        Assert.NotNull(_opened.Session.Now.AsBuilt.Find<Alteration>("sampling-winch"));
        using HttpResponseMessage response = await Get("packs/sampling-winch");

        Assert.Equal("text/html", response.Content.Headers.ContentType!.MediaType);
        Assert.Contains("Work pack: Sampling winch", await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    public async ValueTask DisposeAsync()
    {
        _browser.Dispose();
        await _app.DisposeAsync();
        _opened.Dispose();
    }

    private Task<HttpResponseMessage> Get(string path) => _browser.GetAsync(path, TestContext.Current.CancellationToken);
}
