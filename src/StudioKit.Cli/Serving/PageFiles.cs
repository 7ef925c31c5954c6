using System.Collections.Frozen;
using Microsoft.AspNetCore.Http;
using Microsoft.Net.Http.Headers;

namespace StudioKit.Cli.Serving;

/// <summary>The page's files by the addresses they are asked for under; all names are read once, so that no address can lead out of the folder.</summary>
internal sealed class PageFiles
{
    private const string Packed = ".br";

    private static readonly FrozenDictionary<string, string> Kinds = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        [".html"] = "text/html; charset=utf-8",
        [".js"] = "text/javascript; charset=utf-8",
        [".css"] = "text/css; charset=utf-8",
        [".json"] = "application/json",
        [".wasm"] = "application/wasm",
        [".svg"] = "image/svg+xml",
        [".png"] = "image/png",
        [".yaml"] = "text/plain; charset=utf-8",
        [".txt"] = "text/plain; charset=utf-8",
        [".webmanifest"] = "application/manifest+json",
        [".woff2"] = "font/woff2",
        [".ttf"] = "font/ttf",
        [".dat"] = "application/octet-stream",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private readonly FrozenDictionary<string, string> _files;

    /// <param name="folder">Folder of the published page.</param>
    public PageFiles(string folder) => _files = Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
        .ToFrozenDictionary(file => "/" + Path.GetRelativePath(folder, file).Replace('\\', '/'), StringComparer.Ordinal);

    /// <summary>Answers one request.</summary>
    public Task AnswerAsync(HttpContext context)
    {
        var (request, response) = (context.Request, context.Response);
        if (!HttpMethods.IsGet(request.Method) && !HttpMethods.IsHead(request.Method))
        {
            response.StatusCode = StatusCodes.Status405MethodNotAllowed;
            response.Headers.Allow = "GET, HEAD";
            return Task.CompletedTask;
        }

        var address = request.Path.Value is null or "" or "/" ? "/index.html" : request.Path.Value;
        return _files.TryGetValue(address, out var file) ? SendAsync(context, address, file) : MissAsync(response);
    }

    private static Task MissAsync(HttpResponse response)
    {
        response.StatusCode = StatusCodes.Status404NotFound;
        return Task.CompletedTask;
    }

    private async Task SendAsync(HttpContext context, string address, string file)
    {
        var response = context.Response;
        response.Headers.ContentType = Kinds.GetValueOrDefault(Path.GetExtension(file), "application/octet-stream");
        response.Headers.CacheControl = "no-cache";
        response.Headers.Vary = "Accept-Encoding";
        if (TakesPacked(context.Request) && _files.TryGetValue(address + Packed, out var packed))
        {
            response.Headers.ContentEncoding = "br";
            file = packed;
        }

        // Who changes the folder while it is served gets an answer, too.
        if (new FileInfo(file) is not { Exists: true } entry)
        {
            await MissAsync(response);
            return;
        }

        var mark = new EntityTagHeaderValue(FormattableString.Invariant($"\"{entry.LastWriteTimeUtc.Ticks:x}-{entry.Length:x}-{Path.GetExtension(file).TrimStart('.')}\""));
        response.Headers.ETag = mark.ToString();
        if (context.Request.GetTypedHeaders().IfNoneMatch.Any(known => known.Compare(mark, useStrongComparison: false) || known.Equals(EntityTagHeaderValue.Any)))
        {
            response.StatusCode = StatusCodes.Status304NotModified;
            return;
        }

        response.ContentLength = entry.Length;
        if (HttpMethods.IsGet(context.Request.Method))
        {
            await response.SendFileAsync(file, context.RequestAborted);
        }
    }

    private static bool TakesPacked(HttpRequest request) => request.GetTypedHeaders().AcceptEncoding.Any(way => way.Value == "br" && way.Quality is not 0);
}
