namespace StudioKit.Writing.Tests;

public sealed class FileBatchTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void A_file_that_StudioKit_wrote_is_replaced()
    {
        Batches.Write(_scratch.File("card.pdf"), "first");

        Batches.Write(_scratch.File("card.pdf"), "second");

        File.ReadAllText(_scratch.File("card.pdf")).Should().Be("second");
        _scratch.Names().Should().Equal(".studiokit-written", "card.pdf");
    }

    [Fact]
    public void A_file_of_somebody_else_stays_and_nothing_beside_it_is_written()
    {
        File.WriteAllText(_scratch.File("b.pdf"), "mine");

        FluentActions.Invoking(() => FileBatch.Open(Batches.Request(_scratch.File("a.pdf"), _scratch.File("b.pdf"))))
            .Should().Throw<FileWritingException>().WithMessage("*b.pdf was not written by StudioKit*nothing was written*--force*");

        _scratch.Names().Should().Equal("b.pdf");
        File.ReadAllText(_scratch.File("b.pdf")).Should().Be("mine");
    }

    [Fact]
    public void A_file_that_was_changed_since_counts_as_somebody_elses()
    {
        Batches.Write(_scratch.File("kit.yaml"), "starter");
        File.AppendAllText(_scratch.File("kit.yaml"), "# my notes");

        Batches.Refusal(_scratch.File("kit.yaml")).Should().Contain("changed since");
    }

    [Fact]
    public void A_file_of_somebody_else_goes_only_where_the_user_says_so()
    {
        File.WriteAllText(_scratch.File("b.pdf"), "mine");

        Batches.Write(_scratch.File("b.pdf"), "ours", force: true);

        File.ReadAllText(_scratch.File("b.pdf")).Should().Be("ours");
    }

    [Fact]
    public void Nothing_has_its_name_before_all_is_there()
    {
        using var batch = FileBatch.Open(Batches.Request(_scratch.File("a.pdf"), _scratch.File("b.pdf")));

        batch.Write(_scratch.File("a.pdf"), "a"u8.ToArray());
        File.Exists(_scratch.File("a.pdf")).Should().BeFalse();
        batch.Write(_scratch.File("b.pdf"), "b"u8.ToArray());
        batch.Commit().Should().Equal(_scratch.File("a.pdf"), _scratch.File("b.pdf"));

        _scratch.Names().Should().Equal(".studiokit-written", "a.pdf", "b.pdf");
    }

    [Fact]
    public void A_target_that_nobody_wrote_stays_as_it_was()
    {
        Batches.Write(_scratch.File("a.pdf"), "first");
        using (var batch = FileBatch.Open(Batches.Request(_scratch.File("a.pdf"), _scratch.File("b.pdf"))))
        {
            batch.Write(_scratch.File("b.pdf"), "b"u8.ToArray());
            batch.Commit().Should().Equal(_scratch.File("b.pdf"));
        }

        File.ReadAllText(_scratch.File("a.pdf")).Should().Be("first");
        _scratch.Names().Should().Equal(".studiokit-written", "a.pdf", "b.pdf");
    }

    [Fact]
    public void A_run_that_breaks_off_leaves_what_was_there_and_nothing_beside_it()
    {
        Batches.Write(_scratch.File("a.pdf"), "first");
        var run = () =>
        {
            using var batch = FileBatch.Open(Batches.Request(_scratch.File("a.pdf"), _scratch.File("new/folder/b.pdf")));
            batch.Write(_scratch.File("a.pdf"), "second"u8.ToArray());
            throw new InvalidOperationException();
        };

        run.Should().Throw<InvalidOperationException>();

        File.ReadAllText(_scratch.File("a.pdf")).Should().Be("first");
        _scratch.Names().Should().Equal(".studiokit-written", "a.pdf");
    }

    [Fact]
    public void A_full_disk_is_told_in_a_sentence_and_leaves_what_was_there()
    {
        Batches.Write(_scratch.File("a.pdf"), "first");
        var run = () =>
        {
            using var batch = FileBatch.Open(Batches.Request(_scratch.File("a.pdf"), _scratch.File("b.pdf")));
            batch.Write(_scratch.File("a.pdf"), "second"u8.ToArray());

            // 28 is ENOSPC, "no space left on device" (errno.h of Linux and macOS), as the runtime passes it on.
            batch.Write(_scratch.File("b.pdf"), stream =>
            {
                stream.WriteByte(1);
                throw new IOException("No space left on device : '/x'", 28);
            });
        };

        run.Should().Throw<FileWritingException>().WithMessage("cannot write *b.pdf: the disk is full; nothing was written.");

        File.ReadAllText(_scratch.File("a.pdf")).Should().Be("first");
        _scratch.Names().Should().Equal(".studiokit-written", "a.pdf");
    }

    [Fact]
    public void A_file_of_somebody_elses_with_a_like_name_stays()
    {
        File.WriteAllText(_scratch.File("card.pdf.part"), "mine");

        Batches.Write(_scratch.File("card.pdf"), "ours");

        File.ReadAllText(_scratch.File("card.pdf.part")).Should().Be("mine");
    }

    [Fact]
    public void A_target_that_somebody_changes_during_the_run_stays_theirs()
    {
        Batches.Write(_scratch.File("a.pdf"), "first");
        using var batch = FileBatch.Open(Batches.Request(_scratch.File("a.pdf"), _scratch.File("b.pdf")));
        batch.Write(_scratch.File("a.pdf"), "second"u8.ToArray());
        batch.Write(_scratch.File("b.pdf"), "b"u8.ToArray());

        File.WriteAllText(_scratch.File("b.pdf"), "mine");

        FluentActions.Invoking(batch.Commit).Should().Throw<FileWritingException>().WithMessage("*b.pdf was changed by somebody else*");
        File.ReadAllText(_scratch.File("a.pdf")).Should().Be("first");
        File.ReadAllText(_scratch.File("b.pdf")).Should().Be("mine");
    }

    /// <summary>The last moment before a file has its name: whatever comes up there then is somebody else's.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void What_somebody_puts_in_a_free_place_at_the_last_moment_stays_theirs(bool isLink)
    {
        var (first, taken, mine) = (_scratch.File("a.pdf"), _scratch.File("b.pdf"), _scratch.File("mine.txt"));
        File.WriteAllText(mine, "mine");
        using var batch = FileBatch.Open(Batches.Request(first, taken) with { Force = true });
        batch.BeforeNaming = () =>
        {
            if (isLink)
            {
                File.CreateSymbolicLink(taken, mine);
            }
            else
            {
                File.WriteAllText(taken, "mine");
            }
        };
        batch.Write(first, "a"u8.ToArray());
        batch.Write(taken, "b"u8.ToArray());

        FluentActions.Invoking(batch.Commit).Should().Throw<FileWritingException>().WithMessage("cannot write *b.pdf*1 of 2 files are written*");

        File.ReadAllText(taken).Should().Be("mine");
        (new FileInfo(taken).LinkTarget is not null).Should().Be(isLink);
        File.ReadAllText(mine).Should().Be("mine");
    }

    [Fact]
    public void A_link_that_leads_nowhere_is_replaced_where_the_user_says_so()
    {
        File.CreateSymbolicLink(_scratch.File("a.pdf"), _scratch.File("elsewhere"));

        Batches.Write(_scratch.File("a.pdf"), "ours", force: true);

        File.ReadAllText(_scratch.File("a.pdf")).Should().Be("ours");
        File.Exists(_scratch.File("elsewhere")).Should().BeFalse();
    }

    [Fact]
    public void Any_number_of_files_may_be_written_at_the_same_time()
    {
        var paths = Enumerable.Range(0, 50).Select(i => _scratch.File($"{i}.txt")).ToList();
        using var batch = FileBatch.Open(Batches.Request(paths));

        Parallel.ForEach(paths, path => batch.Write(path, System.Text.Encoding.UTF8.GetBytes(path)));

        batch.Commit().Should().Equal(paths);
        paths.Should().OnlyContain(path => File.ReadAllText(path) == path);
    }

    [Fact]
    public void Two_runs_into_one_folder_at_the_same_time_both_keep_their_files()
    {
        Parallel.For(0, 20, i => Batches.Write(_scratch.File($"{i}.txt"), "first"));

        Parallel.For(0, 20, i => Batches.Write(_scratch.File($"{i}.txt"), "second"));

        _scratch.Names().Should().HaveCount(21);
    }
}
