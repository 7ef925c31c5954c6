using System.Text;
using StudioKit.Cli.Files;

namespace StudioKit.Cli.Tests.Files;

public sealed class WrittenFilesTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_file_that_StudioKit_wrote_is_replaced()
    {
        Write("card.pdf", "first");

        Write("card.pdf", "second");

        File.ReadAllText(_folder.File("card.pdf")).Should().Be("second");
    }

    [Fact]
    public void A_file_of_somebody_else_stays_and_nothing_beside_it_is_written()
    {
        File.WriteAllText(_folder.File("b.pdf"), "mine");

        var act = () => WrittenFiles.In(_folder.Path, force: false).Write([("a.pdf", "x"u8.ToArray()), ("b.pdf", "x"u8.ToArray())]);

        act.Should().Throw<FileTroubleException>().WithMessage("*b.pdf was not written by StudioKit*--force*");
        File.ReadAllText(_folder.File("b.pdf")).Should().Be("mine");
        File.Exists(_folder.File("a.pdf")).Should().BeFalse();
    }

    [Fact]
    public void A_file_that_was_changed_since_counts_as_somebody_elses()
    {
        Write("kit.yaml", "starter");
        File.AppendAllText(_folder.File("kit.yaml"), "# my notes");

        var act = () => Write("kit.yaml", "starter");

        act.Should().Throw<FileTroubleException>();
    }

    [Fact]
    public void Force_replaces_it()
    {
        File.WriteAllText(_folder.File("b.pdf"), "mine");

        WrittenFiles.In(_folder.Path, force: true).Write([("b.pdf", "ours"u8.ToArray())]);

        File.ReadAllText(_folder.File("b.pdf")).Should().Be("ours");
    }

    [Fact]
    public void A_folder_that_is_really_a_file_is_named()
    {
        File.WriteAllText(_folder.File("taken"), "");

        var act = () => WrittenFiles.In(_folder.File("taken"), force: false);

        act.Should().Throw<FileTroubleException>().WithMessage("cannot open *taken*");
    }

    [Fact]
    public void No_half_written_file_is_left_behind()
    {
        Write("card.pdf", "content");

        Directory.EnumerateFiles(_folder.Path).Should().NotContain(path => path.EndsWith(".part"));
    }

    private void Write(string name, string text) =>
        WrittenFiles.In(_folder.Path, force: false).Write([(name, Encoding.UTF8.GetBytes(text))]);
}
