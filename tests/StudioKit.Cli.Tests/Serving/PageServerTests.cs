using System.Net;
using System.Net.Sockets;
using System.Text;
using StudioKit.Cli.Serving;

namespace StudioKit.Cli.Tests.Serving;

/// <summary>What the server owes by RFC 9110 (methods, conditional requests, codings) and by the loopback-only rule of the house.</summary>
public sealed class PageServerTests : IAsyncLifetime, IDisposable
{
    private readonly SmallPage _page = new();
    private readonly HttpClient _client = new(new SocketsHttpHandler { AutomaticDecompression = DecompressionMethods.None, AllowAutoRedirect = false });
    private PageServer? _server;

    public async Task InitializeAsync() => _server = await PageServer.StartAsync(PageFolder.In(_page.Path), port: 0);

    public async Task DisposeAsync() => await _server!.DisposeAsync();

    public void Dispose()
    {
        _client.Dispose();
        _page.Dispose();
    }

    [Fact]
    public async Task The_server_is_reached_over_the_loopback_interface_and_over_no_other()
    {
        _server!.Address.Host.Should().Be("127.0.0.1");
        var others = (await Dns.GetHostAddressesAsync(Dns.GetHostName())).Where(each => !IPAddress.IsLoopback(each) && each.AddressFamily == AddressFamily.InterNetwork);
        foreach (var other in others)
        {
            using var socket = new TcpClient();
            await FluentActions.Awaiting(() => socket.ConnectAsync(other, _server.Address.Port)).Should().ThrowAsync<SocketException>();
        }
    }

    [Theory]
    [InlineData("", "text/html; charset=utf-8")]
    [InlineData("js.js", "text/javascript; charset=utf-8")]
    [InlineData("_framework/core.wasm", "application/wasm")]
    public async Task Every_file_says_its_kind_and_what_the_page_lets_itself_do(string address, string kind)
    {
        using var answer = await _client.GetAsync(new Uri(_server!.Address, address));

        answer.StatusCode.Should().Be(HttpStatusCode.OK);
        answer.Content.Headers.ContentType!.ToString().Should().Be(kind);
        answer.Headers.GetValues("X-Content-Type-Options").Should().Equal("nosniff");
        answer.Headers.GetValues("Content-Security-Policy").Should().Equal($"{SmallPage.Policy}; frame-ancestors 'none'");
        answer.Headers.CacheControl!.NoCache.Should().BeTrue("a newer page must be seen at once");
    }

    [Fact]
    public async Task A_file_that_the_browser_has_is_not_sent_again_until_it_is_another()
    {
        var address = new Uri(_server!.Address, "js.js");
        using var first = await _client.GetAsync(address);
        using var again = await Ask(address, request => request.Headers.IfNoneMatch.Add(first.Headers.ETag!));
        _page.Write("js.js", "export const other = 1;");
        using var changed = await Ask(address, request => request.Headers.IfNoneMatch.Add(first.Headers.ETag!));

        again.StatusCode.Should().Be(HttpStatusCode.NotModified);
        (await again.Content.ReadAsByteArrayAsync()).Should().BeEmpty();
        changed.StatusCode.Should().Be(HttpStatusCode.OK);
    }

    [Theory]
    [InlineData("gzip, br", true)]
    [InlineData("br;q=0, gzip", false)]
    [InlineData("abracadabra", false)]
    public async Task The_packed_file_goes_to_who_takes_it_packed(string codings, bool isPacked)
    {
        using var answer = await Ask(new Uri(_server!.Address, "js.js"), request => request.Headers.TryAddWithoutValidation("Accept-Encoding", codings));

        (await answer.Content.ReadAsStringAsync() == "packed").Should().Be(isPacked);
        answer.Content.Headers.ContentEncoding.Contains("br").Should().Be(isPacked);
        answer.Headers.Vary.Should().Equal("Accept-Encoding");
    }

    [Theory]
    [InlineData("POST")]
    [InlineData("PUT")]
    [InlineData("DELETE")]
    [InlineData("OPTIONS")]
    [InlineData("TRACE")]
    public async Task Whoever_does_more_than_read_is_refused(string method)
    {
        using var request = new HttpRequestMessage(new HttpMethod(method), _server!.Address);
        using var answer = await _client.SendAsync(request);

        answer.StatusCode.Should().Be(HttpStatusCode.MethodNotAllowed);
        answer.Content.Headers.Allow.Should().BeEquivalentTo("GET", "HEAD");
    }

    [Fact]
    public async Task Asking_for_the_head_alone_tells_the_length_and_sends_nothing()
    {
        using var request = new HttpRequestMessage(HttpMethod.Head, new Uri(_server!.Address, "_framework/core.wasm"));
        using var answer = await _client.SendAsync(request);

        answer.Content.Headers.ContentLength.Should().Be("core".Length);
        (await answer.Content.ReadAsByteArrayAsync()).Should().BeEmpty();
    }

    [Theory]
    [InlineData("moths.example")]
    [InlineData("moths.example:{0}")]
    [InlineData("127.0.0.1.moths.example:{0}")]
    [InlineData("127.0.0.1:1")]
    public async Task A_foreign_name_that_was_made_to_lead_here_is_shown_nothing(string host)
    {
        using var answer = await Ask(_server!.Address, request => request.Headers.Host = string.Format(System.Globalization.CultureInfo.InvariantCulture, host, _server.Address.Port));

        answer.StatusCode.Should().Be(HttpStatusCode.MisdirectedRequest);
        (await answer.Content.ReadAsStringAsync()).Should().BeEmpty();
    }

    [Fact]
    public async Task The_plain_name_of_this_machine_leads_to_the_one_address_by_which_kits_are_kept()
    {
        using var answer = await Ask(new Uri(_server!.Address, "js.js?a=1"), request => request.Headers.Host = FormattableString.Invariant($"localhost:{_server.Address.Port}"));

        answer.StatusCode.Should().Be(HttpStatusCode.TemporaryRedirect);
        answer.Headers.Location.Should().Be(new Uri(_server.Address, "js.js?a=1"));
    }

    [Theory]
    [InlineData("/../secret.txt")]
    [InlineData("/%2e%2e/secret.txt")]
    [InlineData("/..%2fsecret.txt")]
    [InlineData("/..%5csecret.txt")]
    [InlineData("//etc/passwd")]
    [InlineData("/_framework/../../secret.txt")]
    [InlineData("/js.js%00.txt")]
    public async Task No_address_leads_out_of_the_folder(string target)
    {
        await File.WriteAllTextAsync(Path.Combine(_page.Path, "..", "secret.txt"), "secret");

        var answer = await Raw($"GET {target} HTTP/1.1\r\nHost: 127.0.0.1:{_server!.Address.Port}\r\nConnection: close\r\n\r\n");

        answer.Should().MatchRegex("^HTTP/1\\.1 40[04] ").And.NotContainAny("secret", "root:");
    }

    [Fact]
    public async Task A_file_that_went_away_while_it_is_served_is_not_found_and_the_others_are()
    {
        File.Delete(Path.Combine(_page.Path, "_framework", "core.wasm"));

        using var gone = await _client.GetAsync(new Uri(_server!.Address, "_framework/core.wasm"));
        using var other = await _client.GetAsync(new Uri(_server.Address, "js.js"));

        gone.StatusCode.Should().Be(HttpStatusCode.NotFound);
        other.StatusCode.Should().Be(HttpStatusCode.OK);
    }

    private async Task<HttpResponseMessage> Ask(Uri address, Action<HttpRequestMessage> with)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, address);
        with(request);
        return await _client.SendAsync(request);
    }

    private async Task<string> Raw(string request)
    {
        using var socket = new TcpClient();
        await socket.ConnectAsync(IPAddress.Loopback, _server!.Address.Port);
        await using var stream = socket.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes(request));
        using var reader = new StreamReader(stream, Encoding.Latin1);
        return await reader.ReadToEndAsync();
    }
}
