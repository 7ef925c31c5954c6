namespace StudioKit.Writing.Tests;

/// <summary>Files whose names turn up while the run is at work.</summary>
public sealed class AddedFileTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void Files_added_at_the_same_time_have_their_names_once_all_are_there()
    {
        var paths = Enumerable.Range(10, 50).Select(i => _scratch.File($"{i}.txt")).ToList();
        using var batch = FileBatch.Open(Batches.Request(_scratch.File("z.txt")));
        batch.Write(_scratch.File("z.txt"), "z"u8.ToArray());

        Parallel.ForEach(Enumerable.Reverse(paths), path => batch.Add(new FileTarget(path), System.Text.Encoding.UTF8.GetBytes(path)));

        Directory.GetFiles(_scratch.Path).Should().BeEmpty();
        batch.Commit().Should().Equal([_scratch.File("z.txt"), .. paths]);
        paths.Should().OnlyContain(path => File.ReadAllText(path) == path);
    }

    [Fact]
    public void All_that_must_not_be_replaced_are_named_at_the_end_and_nothing_is_written()
    {
        File.WriteAllText(_scratch.File("b.pdf"), "mine");
        File.WriteAllText(_scratch.File("d.pdf"), "mine");
        using (var batch = FileBatch.Open(Batches.Request()))
        {
            foreach (var name in new[] { "d.pdf", "c.pdf", "b.pdf", "new/a.pdf" })
            {
                batch.Add(new FileTarget(_scratch.File(name)), "ours"u8.ToArray());
            }

            FluentActions.Invoking(batch.Commit).Should().Throw<FileWritingException>()
                .WithMessage("*b.pdf was not written by StudioKit*\n*d.pdf was not written by StudioKit*nothing was written*--force*");
        }

        _scratch.Names().Should().Equal("b.pdf", "d.pdf");
        File.ReadAllText(_scratch.File("b.pdf")).Should().Be("mine");
    }

    [Fact]
    public void What_the_run_reads_is_not_replaced_under_any_name_either()
    {
        File.WriteAllText(_scratch.File("kit.yaml"), "kit");
        File.CreateSymbolicLink(_scratch.File("link.pdf"), _scratch.File("kit.yaml"));
        using var batch = FileBatch.Open(Batches.Request() with { Inputs = [_scratch.File("kit.yaml")], Force = true });

        batch.Add(new FileTarget(_scratch.File("link.pdf")), "ours"u8.ToArray());

        FluentActions.Invoking(batch.Commit).Should().Throw<FileWritingException>().WithMessage("*link.pdf is one of the files that this command reads*");
    }

    [Fact]
    public void A_file_that_waits_already_is_not_added_again()
    {
        using var batch = FileBatch.Open(Batches.Request(_scratch.File("a.pdf")));

        FluentActions.Invoking(() => batch.Add(new FileTarget(_scratch.File("../" + Path.GetFileName(_scratch.Path) + "/a.pdf")), "a"u8.ToArray()))
            .Should().Throw<FileWritingException>().WithMessage("*are the same file*");
    }

    [Fact]
    public void A_stopped_run_takes_no_more_files_and_leaves_none()
    {
        using var stop = new CancellationTokenSource();
        using var batch = FileBatch.Open(Batches.Request(), stop.Token);
        batch.Add(new FileTarget(_scratch.File("out/a.pdf")), "a"u8.ToArray());

        stop.Cancel();

        FluentActions.Invoking(() => batch.Add(new FileTarget(_scratch.File("out/b.pdf")), "b"u8.ToArray())).Should().Throw<OperationCanceledException>();
        _scratch.Names().Should().BeEmpty();
    }
}
