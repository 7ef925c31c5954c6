namespace StudioKit.Writing.Tests;

public sealed class NewFileTests : IDisposable
{
    private static readonly Action<Stream> Text = stream => stream.Write("whole"u8);
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void Of_many_that_start_a_file_at_once_one_does()
    {
        var started = 0;

        Parallel.For(0, 20, _ => Interlocked.Add(ref started, NewFile.TryCreate(_scratch.File("field.log"), Text) ? 1 : 0));

        started.Should().Be(1);
        _scratch.Names().Should().Equal("field.log");
        File.ReadAllText(_scratch.File("field.log")).Should().Be("whole");
    }

    [Fact]
    public void A_file_that_is_there_stays()
    {
        File.WriteAllText(_scratch.File("field.log"), "mine");

        NewFile.TryCreate(_scratch.File("field.log"), Text).Should().BeFalse();

        File.ReadAllText(_scratch.File("field.log")).Should().Be("mine");
    }

    [Fact]
    public void A_file_in_which_nothing_whole_could_be_written_goes_again()
    {
        NewFile.TryCreate(_scratch.File("field.log"), Text).Should().BeTrue();

        NewFile.Discard(_scratch.File("field.log"));

        _scratch.Names().Should().BeEmpty();
    }

    /// <summary>28 is ENOSPC, "no space left on device" (errno.h of Linux and macOS), as the runtime passes it on.</summary>
    [Fact]
    public void A_full_disk_leaves_no_file_that_was_only_begun()
    {
        var create = () => NewFile.TryCreate(_scratch.File("field.log"), stream =>
        {
            stream.WriteByte(1);
            throw new IOException("No space left on device : '/x'", 28);
        });

        create.Should().Throw<FileWritingException>().WithMessage("cannot create *field.log: the disk is full; nothing was written.");

        _scratch.Names().Should().BeEmpty();
    }

    [Fact]
    public void What_somebody_else_starts_meanwhile_stays_theirs()
    {
        NewFile.TryCreate(_scratch.File("field.log"), stream =>
        {
            File.WriteAllText(_scratch.File("field.log"), "mine");
            stream.Write("ours"u8);
        }).Should().BeFalse();

        _scratch.Names().Should().Equal("field.log");
        File.ReadAllText(_scratch.File("field.log")).Should().Be("mine");
    }

    // Where looking and naming are two steps, two of eight come between each other about once in twenty rounds.
    [Fact]
    public void Of_many_that_start_one_file_at_once_one_does_and_its_content_stays()
    {
        for (var round = 0; round < 200; round++)
        {
            var path = _scratch.File(FormattableString.Invariant($"{round}.log"));
            using var together = new Barrier(8);
            var created = new bool[8];
            var writers = Enumerable.Range(0, 8).Select(number => new Thread(() =>
            {
                together.SignalAndWait();
                created[number] = NewFile.TryCreate(path, stream => stream.WriteByte((byte)number));
            })).ToList();
            writers.ForEach(writer => writer.Start());
            writers.ForEach(writer => writer.Join());

            created.Should().ContainSingle(isMine => isMine);
            File.ReadAllBytes(path).Should().Equal((byte)Array.IndexOf(created, true));
        }
    }

    [Fact]
    public void A_link_that_leads_nowhere_is_not_followed()
    {
        File.CreateSymbolicLink(_scratch.File("field.log"), _scratch.File("elsewhere"));

        FluentActions.Invoking(() => NewFile.TryCreate(_scratch.File("field.log"), Text)).Should().Throw<FileWritingException>().WithMessage("cannot create *a link that leads nowhere*");

        File.Exists(_scratch.File("elsewhere")).Should().BeFalse();
    }

    [Fact]
    public void A_device_is_no_place_for_a_file()
    {
        if (OperatingSystem.IsLinux())
        {
            FluentActions.Invoking(() => NewFile.TryCreate("/dev/null", Text)).Should().Throw<FileWritingException>().WithMessage("/dev/null is a device or a pipe, not a file; nothing was written.");
        }
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("missing/field.log", "its folder is gone")]
    public void A_name_that_takes_no_file_is_told(string name, string sentence) =>
        FluentActions.Invoking(() => NewFile.TryCreate(name.Length == 0 ? "" : _scratch.File(name), Text)).Should().Throw<FileWritingException>().WithMessage($"*{sentence}*");
}
