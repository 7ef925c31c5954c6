namespace StudioKit.Writing.Tests;

public sealed class NewFileTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void Of_many_that_start_a_file_at_once_one_does()
    {
        var started = 0;

        Parallel.For(0, 20, _ => Interlocked.Add(ref started, NewFile.TryCreate(_scratch.File("field.log")) ? 1 : 0));

        started.Should().Be(1);
    }

    [Fact]
    public void A_file_that_is_there_stays()
    {
        File.WriteAllText(_scratch.File("field.log"), "mine");

        NewFile.TryCreate(_scratch.File("field.log")).Should().BeFalse();

        File.ReadAllText(_scratch.File("field.log")).Should().Be("mine");
    }

    [Fact]
    public void A_file_in_which_nothing_whole_could_be_written_goes_again()
    {
        NewFile.TryCreate(_scratch.File("field.log")).Should().BeTrue();

        NewFile.Discard(_scratch.File("field.log"));

        _scratch.Names().Should().BeEmpty();
    }

    [Fact]
    public void A_link_that_leads_nowhere_is_not_followed()
    {
        File.CreateSymbolicLink(_scratch.File("field.log"), _scratch.File("elsewhere"));

        FluentActions.Invoking(() => NewFile.TryCreate(_scratch.File("field.log"))).Should().Throw<FileWritingException>().WithMessage("cannot create *");

        File.Exists(_scratch.File("elsewhere")).Should().BeFalse();
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("missing/field.log", "its folder is gone")]
    public void A_name_that_takes_no_file_is_told(string name, string sentence) =>
        FluentActions.Invoking(() => NewFile.TryCreate(name.Length == 0 ? "" : _scratch.File(name))).Should().Throw<FileWritingException>().WithMessage($"*{sentence}*");
}
