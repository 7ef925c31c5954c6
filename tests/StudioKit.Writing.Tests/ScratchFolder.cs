namespace StudioKit.Writing.Tests;

/// <summary>A folder for one test's files, gone when the test is.</summary>
internal sealed class ScratchFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("studiokit-writing").FullName;

    public string File(string name) => System.IO.Path.Combine(Path, name);

    /// <summary>Everything in it, hidden or not, by names within it.</summary>
    public IEnumerable<string> Names() =>
        Directory.EnumerateFileSystemEntries(Path, "*", SearchOption.AllDirectories).Select(path => System.IO.Path.GetRelativePath(Path, path)).Order(StringComparer.Ordinal);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
