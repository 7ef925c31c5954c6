using System.Text.RegularExpressions;
using StudioKit.Cli.Files;

namespace StudioKit.Cli.Serving;

/// <summary>A folder that holds the published page.</summary>
/// <param name="Path">The folder that holds <c>index.html</c>.</param>
/// <param name="Policy">What the page lets itself do, as its own head says.</param>
internal sealed partial record PageFolder(string Path, string Policy)
{
    private const string Opening = "index.html";

    // A page without its program is the page's source, not the page.
    private const string Programme = "_framework";

    /// <summary>Where the page lies when the command was published with it.</summary>
    public static string BesideCommand => System.IO.Path.Combine(AppContext.BaseDirectory, "page");

    /// <summary>Finds the page in a folder, or in the <c>wwwroot</c> of it where the publishing program puts it.</summary>
    /// <param name="folder">The folder.</param>
    /// <exception cref="FileTroubleException">There is no published page in it.</exception>
    public static PageFolder In(string folder)
    {
        if (!Directory.Exists(folder))
        {
            throw new FileTroubleException($"{folder} is no folder. {Remedy}");
        }

        foreach (var candidate in new[] { folder, System.IO.Path.Combine(folder, "wwwroot") })
        {
            if (File.Exists(System.IO.Path.Combine(candidate, Opening)) && Directory.Exists(System.IO.Path.Combine(candidate, Programme)))
            {
                return new PageFolder(System.IO.Path.GetFullPath(candidate), PolicyOf(System.IO.Path.Combine(candidate, Opening)));
            }
        }

        throw new FileTroubleException(File.Exists(System.IO.Path.Combine(folder, Opening))
            ? $"{folder} holds {Opening} but no folder {Programme}: it is the page's source, or was copied in part. {Remedy}"
            : $"{folder} holds no {Opening}, so the page is not in it. {Remedy}");
    }

    /// <summary>Finds the page that lies beside the command.</summary>
    /// <exception cref="FileTroubleException">It is not there.</exception>
    public static PageFolder Installed() => Directory.Exists(BesideCommand)
        ? In(BesideCommand)
        : throw new FileTroubleException($"the page does not lie beside this command ({BesideCommand}). {Remedy}");

    private static string Remedy =>
        "'dotnet publish src/StudioKit.Cli' makes a command with its page; 'dotnet publish src/StudioKit.Web --output out/web' makes the page alone, to be named with --page out/web.";

    private static string PolicyOf(string opening) => InputFile.Read(opening, File.ReadAllText) is var text && PolicyLine().Match(text) is { Success: true } found
        ? found.Groups["policy"].Value
        : throw new FileTroubleException($"{opening} does not say what the page may do (Content-Security-Policy), so it is not StudioKit's page. {Remedy}");

    [GeneratedRegex("<meta http-equiv=\"Content-Security-Policy\" content=\"(?<policy>[^\"\r\n]+)\"", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex PolicyLine();
}
