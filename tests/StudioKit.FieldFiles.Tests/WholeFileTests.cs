namespace StudioKit.FieldFiles.Tests;

public sealed class WholeFileTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void A_file_that_breaks_off_leaves_the_old_one_and_nothing_beside_it()
    {
        File.WriteAllText(_scratch.File("card.pdf"), "old");

        FluentActions.Invoking(() => WholeFile.Write(_scratch.File("card.pdf"), stream =>
        {
            stream.WriteByte(1);
            throw new IOException("The disk is full.");
        })).Should().Throw<IOException>();

        Directory.GetFiles(_scratch.Path).Should().ContainSingle();
        File.ReadAllText(_scratch.File("card.pdf")).Should().Be("old");
    }

    [Fact]
    public void A_file_of_somebody_elses_with_a_like_name_stays()
    {
        File.WriteAllText(_scratch.File("card.pdf.part"), "mine");

        WholeFile.Write(_scratch.File("card.pdf"), stream => stream.WriteByte(1));

        File.ReadAllText(_scratch.File("card.pdf.part")).Should().Be("mine");
        File.ReadAllBytes(_scratch.File("card.pdf")).Should().Equal(1);
    }
}
