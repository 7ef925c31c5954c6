using System.Net;
using Microsoft.AspNetCore.Http;

namespace StudioKit.Cli.Serving;

/// <summary>Who is answered at all, and what every answer says about itself.</summary>
/// <param name="policy">What the page lets itself do. Sent with every file, as a worker's script goes by its own answer and not by the page's head.</param>
internal sealed class VisitorRules(string policy)
{
    private const string PlainName = "localhost";

    // A frame of somebody else's page must not show ours; the page's own head cannot say that.
    private readonly string _policy = $"{policy}; frame-ancestors 'none'";

    /// <summary>Puts the rules on an answer, and says whether it is to be given.</summary>
    public bool Admit(HttpContext context)
    {
        var (host, headers) = (context.Request.Host, context.Response.Headers);
        headers.ContentSecurityPolicy = _policy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        if (IsThisServer(host, context.Connection.LocalPort))
        {
            return true;
        }

        if (host.Host.Equals(PlainName, StringComparison.OrdinalIgnoreCase) && host.Port == context.Connection.LocalPort)
        {
            // A browser keeps kits by the address, so there must be one address only.
            context.Response.Redirect($"http://{Own(context.Connection.LocalPort)}{context.Request.Path.ToUriComponent()}{context.Request.QueryString.ToUriComponent()}", permanent: false, preserveMethod: true);
            return false;
        }

        // A foreign name that was made to lead to this machine would let a foreign page read ours.
        context.Response.StatusCode = StatusCodes.Status421MisdirectedRequest;
        return false;
    }

    private static bool IsThisServer(HostString host, int port) => host.Value == Own(port) || (port == 80 && host.Value == IPAddress.Loopback.ToString());

    private static string Own(int port) => FormattableString.Invariant($"{IPAddress.Loopback}:{port}");
}
