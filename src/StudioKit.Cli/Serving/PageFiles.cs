using System.Collections.Frozen;
using Microsoft.AspNetCore.Http;

namespace StudioKit.Cli.Serving;

/// <summary>The page's files by the addresses they are asked for under; all names are read once, so that no address can lead out of the folder.</summary>
internal sealed class PageFiles
{
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
        [".dat"] = "application/octet-stream",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private readonly FrozenDictionary<string, string> _files;

    /// <param name="folder">Folder of the published page.</param>
    public PageFiles(string folder) => _files = Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
        .ToFrozenDictionary(file => "/" + Path.GetRelativePath(folder, file).Replace('\\', '/'), StringComparer.Ordinal);

    /// <summary>Answers one request.</summary>
    public async Task AnswerAsync(HttpContext context)
    {
        var (request, response) = (context.Request, context.Response);
        if (!HttpMethods.IsGet(request.Method) && !HttpMethods.IsHead(request.Method))
        {
            response.StatusCode = StatusCodes.Status405MethodNotAllowed;
            return;
        }

        var address = request.Path.Value is null or "" or "/" ? "/index.html" : request.Path.Value;
        if (!_files.TryGetValue(address, out var file))
        {
            response.StatusCode = StatusCodes.Status404NotFound;
            return;
        }

        Describe(response, Path.GetExtension(file));
        if (request.Headers.AcceptEncoding.ToString().Contains("br", StringComparison.Ordinal) && _files.TryGetValue(address + ".br", out var packed))
        {
            response.Headers.ContentEncoding = "br";
            file = packed;
        }

        response.ContentLength = new FileInfo(file).Length;
        if (HttpMethods.IsGet(request.Method))
        {
            await response.SendFileAsync(file, context.RequestAborted);
        }
    }

    private static void Describe(HttpResponse response, string ending)
    {
        var headers = response.Headers;
        headers.ContentType = Kinds.GetValueOrDefault(ending, "application/octet-stream");
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers.CacheControl = "no-cache";
        headers.Vary = "Accept-Encoding";
    }
}
