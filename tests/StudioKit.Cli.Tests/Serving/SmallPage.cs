namespace StudioKit.Cli.Tests.Serving;

/// <summary>A folder as the page is published into, with next to nothing in it.</summary>
internal sealed class SmallPage : IDisposable
{
    public const string Policy = "default-src 'none'; script-src 'self'";
    private readonly TemporaryFolder _folder = new();

    public SmallPage()
    {
        Directory.CreateDirectory(System.IO.Path.Combine(Path, "_framework"));
        Write("index.html", $"<!DOCTYPE html>\n<meta http-equiv=\"Content-Security-Policy\" content=\"{Policy}\">\n");
        Write("js.js", "export const long = 'aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa';\n");
        Write("js.js.br", "packed");
        Write("_framework/core.wasm", "core");
    }

    /// <summary>The folder.</summary>
    public string Path => _folder.File("page");

    /// <summary>Writes a file of the page.</summary>
    public void Write(string name, string text) => File.WriteAllText(System.IO.Path.Combine(Path, name), text);

    public void Dispose() => _folder.Dispose();
}
