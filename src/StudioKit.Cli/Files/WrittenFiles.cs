using System.Security.Cryptography;
using StudioKit.FieldFiles;

namespace StudioKit.Cli.Files;

/// <summary>
/// Writes files whole or not at all, and replaces only what StudioKit itself wrote and nobody changed since.
/// </summary>
/// <remarks>
/// A hidden list in the folder holds the name and SHA-256 of every file written there. A file that is not in the list, or whose
/// content no longer matches, belongs to somebody else and stays unless the user says <c>--force</c>.
/// </remarks>
internal sealed class WrittenFiles
{
    private const string ListName = ".studiokit-written";

    private readonly string _folder;
    private readonly bool _force;
    private readonly SortedDictionary<string, string> _hashes;

    private WrittenFiles(string folder, bool force, SortedDictionary<string, string> hashes)
    {
        _folder = folder;
        _force = force;
        _hashes = hashes;
    }

    /// <summary>The folder that a file's path names; the current one where it names none.</summary>
    public static string FolderOf(string path) =>
        Path.GetDirectoryName(path) is { Length: > 0 } folder ? folder : ".";

    /// <summary>Opens a folder for writing, making it where it is missing.</summary>
    /// <exception cref="FileTroubleException">The folder cannot be made or read.</exception>
    public static WrittenFiles In(string folder, bool force) => Guarded(folder, "open", () =>
    {
        Directory.CreateDirectory(folder);
        var list = Path.Combine(folder, ListName);
        var hashes = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var line in File.Exists(list) ? File.ReadAllLines(list) : [])
        {
            var space = line.IndexOf(' ', StringComparison.Ordinal);
            if (space > 0)
            {
                hashes[line[(space + 1)..]] = line[..space];
            }
        }

        return new WrittenFiles(folder, force, hashes);
    });

    /// <summary>Writes a set of files; none is touched unless all may be.</summary>
    /// <returns>Their paths in order.</returns>
    /// <exception cref="FileTroubleException">A file is not ours to replace, or cannot be written.</exception>
    public IReadOnlyList<string> Write(IReadOnlyList<(string Name, ReadOnlyMemory<byte> Content)> files)
    {
        foreach (var (name, _) in files)
        {
            RefuseForeign(name);
        }

        foreach (var (name, content) in files)
        {
            var path = Path.Combine(_folder, name);
            WriteWhole(path, content);
            _hashes[name] = Hash(content.Span);
        }

        var list = Path.Combine(_folder, ListName);
        var lines = string.Concat(_hashes.Select(pair => $"{pair.Value} {pair.Key}\n"));
        WriteWhole(list, System.Text.Encoding.UTF8.GetBytes(lines));
        return [.. files.Select(file => Path.Combine(_folder, file.Name))];
    }

    private void RefuseForeign(string name)
    {
        var path = Path.Combine(_folder, name);
        if (_force || !File.Exists(path))
        {
            return;
        }

        var ours = _hashes.TryGetValue(name, out var hash)
            && Guarded(path, "read", () => Hash(File.ReadAllBytes(path))) == hash;
        if (!ours)
        {
            throw new FileTroubleException(
                $"{path} was not written by StudioKit, or was changed since; nothing was written. Use --force to replace it, or another --out.");
        }
    }

    private static void WriteWhole(string path, ReadOnlyMemory<byte> content) => Guarded(path, "write", () =>
    {
        WholeFile.Write(path, stream => stream.Write(content.Span));
        return true;
    });

    private static string Hash(ReadOnlySpan<byte> content) => Convert.ToHexStringLower(SHA256.HashData(content));

    private static T Guarded<T>(string path, string verb, Func<T> action)
    {
        try
        {
            return action();
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            throw new FileTroubleException($"cannot {verb} {path}: {error.Message}", error);
        }
    }
}
