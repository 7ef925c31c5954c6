namespace StudioKit.FieldFiles.Tests;

/// <summary>A folder for one test's files, gone when the test is.</summary>
internal sealed class ScratchFolder : IDisposable
{
    private const string Memory = "/dev/shm";

    public ScratchFolder()
        : this(System.IO.Path.GetTempPath())
    {
    }

    private ScratchFolder(string parent) =>
        Path = Directory.CreateDirectory(System.IO.Path.Combine(parent, "studiokit-field-files-" + System.IO.Path.GetRandomFileName())).FullName;

    public string Path { get; }

    /// <summary>A folder in memory, where there is such a place: many small writes need not wait for a disk.</summary>
    public static ScratchFolder InMemory() => Directory.Exists(Memory) ? new ScratchFolder(Memory) : new ScratchFolder();

    public string File(string name) => System.IO.Path.Combine(Path, name);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
