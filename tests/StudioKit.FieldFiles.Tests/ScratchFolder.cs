namespace StudioKit.FieldFiles.Tests;

/// <summary>A folder for one test's files, gone when the test is.</summary>
internal sealed class ScratchFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("studiokit-field-files").FullName;

    public string File(string name) => System.IO.Path.Combine(Path, name);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
