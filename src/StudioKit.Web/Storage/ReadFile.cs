using StudioKit.Web.Results;

namespace StudioKit.Web.Storage;

/// <summary>A file that was opened and can be read as text.</summary>
/// <param name="File">The file.</param>
/// <param name="Text">Its text.</param>
/// <param name="Kind">What it is.</param>
internal sealed record ReadFile(OpenedFile File, string Text, OpenedKind Kind)
{
    private const string PartsFolder = "parts/";

    /// <summary>Folder that it lies in; for a part the one that has the folder of parts. Empty for the topmost.</summary>
    public string Folder => Place is { } place ? Before(File.Path, PartsFolder + place) : Before(File.Path, File.Name);

    /// <summary>Which part it is by where it lies, as <c>KIND/NAME</c>; none where only a kit can tell.</summary>
    public string? Place
    {
        get
        {
            var steps = File.Path.Split('/');
            return steps.Length >= 3 && steps[^3] + "/" == PartsFolder && Kind is not OpenedKind.Kit ? $"{steps[^2]}/{Stem}" : null;
        }
    }

    /// <summary>Its name without its ending.</summary>
    public string Stem => System.IO.Path.GetFileNameWithoutExtension(File.Name);

    private static string Before(string path, string end) => path.LastIndexOf(end, StringComparison.Ordinal) is > 0 and var at ? path[..at] : "";
}
