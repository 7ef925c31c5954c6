using System.Text;

namespace StudioKit.Writing;

/// <summary>The list that a folder keeps of what StudioKit wrote there: a line for every file and content, its SHA-256 and its name.</summary>
/// <remarks>
/// The list only grows. New contents are added before the files get their names, so a run that is cut off at any point leaves files whose
/// contents, old or new, are all on it, and the same command accepts its own folder again. A line cut short says nothing.
/// </remarks>
internal sealed class WrittenList
{
    /// <summary>Name of the list in its folder.</summary>
    public const string FileName = ".studiokit-written";

    private const int MostTries = 500;

    // Another run holds the list for as long as it takes to add a few lines.
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(20);
    private readonly HashSet<string> _lines;

    private WrittenList(string text)
    {
        _lines = [.. text[..(text.LastIndexOf('\n') + 1)].Split('\n').Where(IsWhole)];
    }

    /// <summary>Reads a folder's list; an empty one where there is none.</summary>
    /// <exception cref="FileWritingException">The file of that name is none of ours.</exception>
    public static WrittenList Read(string folder)
    {
        var path = Path.Combine(folder, FileName);
        RefuseWhatIsNoFile(path);
        return File.Exists(path) ? Patiently(() => Parse(path, File.ReadAllText(path))) : new WrittenList("");
    }

    /// <summary>Adds files to a folder's list and sees to it that they are on the disk.</summary>
    public static void Add(string folder, IEnumerable<(string Name, string Hash)> files)
    {
        var path = Path.Combine(folder, FileName);
        RefuseWhatIsNoFile(path);
        Patiently(() =>
        {
            using var stream = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            using var reader = new StreamReader(stream, Encoding.UTF8, leaveOpen: true);
            var text = reader.ReadToEnd();
            var known = Parse(path, text);
            var added = string.Concat(files.Where(file => !known.Holds(file.Name, file.Hash)).Select(file => Line(file.Name, file.Hash) + "\n"));
            var start = text.Length == 0 || text[^1] == '\n' ? "" : "\n";
            stream.Seek(0, SeekOrigin.End);
            stream.Write(Encoding.UTF8.GetBytes(added.Length == 0 ? "" : start + added));
            stream.Flush(flushToDisk: true);
            return known;
        });
    }

    /// <summary>Whether this content was written here under this name.</summary>
    public bool Holds(string name, string hash) => _lines.Contains(Line(name, hash));

    private static string Line(string name, string hash) => $"{hash} {Plain(name)}";

    // A name may hold anything, line ends too, but has one line.
    private static string Plain(string name) => name.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\n", "\\n", StringComparison.Ordinal);

    private static bool IsWhole(string line) =>
        line.Length > ContentHash.Length + 1 && line[ContentHash.Length] == ' ' && ContentHash.IsOfDigits(line.AsSpan(0, ContentHash.Length));

    // Nothing is ever added to a file that somebody else keeps under the list's name.
    private static WrittenList Parse(string path, string text) =>
        ContentHash.IsOfDigits(text.AsSpan(0, Math.Min(text.Length, ContentHash.Length))) ? new WrittenList(text) : throw NotOurs(path);

    private static void RefuseWhatIsNoFile(string path)
    {
        if (FilePlace.IsLink(path) || FilePlace.At(path).Kind is FileKind.Folder or FileKind.Other)
        {
            throw NotOurs(path);
        }
    }

    private static FileWritingException NotOurs(string path) =>
        new($"{path} is not the list that StudioKit keeps under that name; nothing was written. Move it away, or name another folder.");

    private static WrittenList Patiently(Func<WrittenList> action)
    {
        for (var tries = 1; ; tries++)
        {
            try
            {
                return action();
            }
            catch (IOException error) when (tries < MostTries && WritingFault.IsInUse(error))
            {
                Thread.Sleep(Pause);
            }
        }
    }
}
