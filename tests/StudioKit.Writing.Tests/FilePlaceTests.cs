namespace StudioKit.Writing.Tests;

/// <summary>Where the platform does not tell which file it is, its real name does.</summary>
public sealed class FilePlaceTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void Links_to_files_and_folders_lead_to_one_real_name()
    {
        Directory.CreateDirectory(_scratch.File("a/b"));
        File.WriteAllText(_scratch.File("a/b/kit.yaml"), "");
        Directory.CreateSymbolicLink(_scratch.File("c"), "a");
        File.CreateSymbolicLink(_scratch.File("a/link.yaml"), "../c/b/kit.yaml");

        FilePlace.ByName(_scratch.File("c/link.yaml")).Should().Be(FilePlace.ByName(_scratch.File("a/b/kit.yaml")));
        FilePlace.ByName(_scratch.File("c/b")).Kind.Should().Be(FileKind.Folder);
    }

    [Fact]
    public void A_link_to_itself_leads_nowhere()
    {
        File.CreateSymbolicLink(_scratch.File("loop"), "loop");

        FluentActions.Invoking(() => FilePlace.ByName(_scratch.File("loop"))).Should().NotThrow();
        FilePlace.At(_scratch.File("loop")).Kind.Should().Be(FileKind.Nothing);
    }
}
