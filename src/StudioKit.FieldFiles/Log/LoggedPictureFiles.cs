using StudioKit.Field;
using StudioKit.Field.Log.Matching;
using StudioKit.Field.Pictures;
using StudioKit.Field.Scale;
using StudioKit.FieldFiles.Pictures;
using StudioKit.FieldFiles.Scale;

namespace StudioKit.FieldFiles.Log;

/// <summary>Reads what picture files and the sidecars of their scaled copies tell for the log.</summary>
public sealed class LoggedPictureFiles
{
    private static readonly string[] Endings = [".jpg", ".jpeg", ".png", ".tif", ".tiff"];
    private readonly Dictionary<string, Dictionary<string, RecordedScale>> _sidecars = new(StringComparer.Ordinal);
    private readonly IReadOnlyList<string> _folders;

    /// <summary>A reader.</summary>
    /// <param name="sidecarFolders">Folders with scaled copies, looked into besides the picture's own.</param>
    public LoggedPictureFiles(IReadOnlyList<string> sidecarFolders)
    {
        ArgumentNullException.ThrowIfNull(sidecarFolders);
        _folders = sidecarFolders;
    }

    /// <summary>The pictures that files and folders stand for, in order; a folder stands for the pictures right in it.</summary>
    /// <param name="paths">Files and folders.</param>
    /// <exception cref="IOException">A folder cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">A folder may not be read.</exception>
    public static IReadOnlyList<string> In(IEnumerable<string> paths)
    {
        ArgumentNullException.ThrowIfNull(paths);
        return [.. paths.SelectMany(path => Directory.Exists(path) ? Pictures(path) : [path])];
    }

    /// <summary>Reads a picture file and its sidecar.</summary>
    /// <param name="path">The file.</param>
    /// <returns>What they tell, or why the file cannot be read.</returns>
    public FieldResult<LoggedPicture> Read(string path) => FramePicture.With<LoggedPicture>(
        path, picture => new LoggedPicture(Path.GetFileName(path), picture.Settings, new PixelDimensions(picture.Width, picture.Height), ScaleOf(path)));

    private static string[] Pictures(string folder) =>
        [.. Directory.EnumerateFiles(folder).Where(file => Endings.Contains(Path.GetExtension(file), StringComparer.OrdinalIgnoreCase)).Order(StringComparer.Ordinal)];

    private RecordedScale? ScaleOf(string path)
    {
        var name = Path.GetFileName(path);
        string[] folders = [Path.GetDirectoryName(path) is { Length: > 0 } own ? own : ".", .. _folders];
        return ScaleSidecar.ReadBeside(path) ?? folders.Select(folder => In(folder).GetValueOrDefault(name)).FirstOrDefault(scale => scale is not null);
    }

    // By the name of the original and by that of the copy, which may have another ending.
    private Dictionary<string, RecordedScale> In(string folder)
    {
        if (_sidecars.TryGetValue(folder, out var known))
        {
            return known;
        }

        var scales = new Dictionary<string, RecordedScale>(StringComparer.Ordinal);
        foreach (var sidecar in Sidecars(folder))
        {
            if (ScaleSidecar.Read(sidecar) is { } scale)
            {
                scales.TryAdd(scale.Source, scale);
                scales.TryAdd(Path.GetFileNameWithoutExtension(sidecar), scale);
            }
        }

        return _sidecars[folder] = scales;
    }

    private static string[] Sidecars(string folder)
    {
        try
        {
            return [.. Directory.EnumerateFiles(folder, "*.xmp").Order(StringComparer.Ordinal)];
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }
}
