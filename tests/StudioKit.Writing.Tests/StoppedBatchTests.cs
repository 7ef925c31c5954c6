namespace StudioKit.Writing.Tests;

/// <summary>Runs that the user stops, and runs that are killed: what they leave is told by the folder, not by the run.</summary>
public sealed class StoppedBatchTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void Runs_side_by_side_in_one_folder_never_take_each_other_for_left_over()
    {
        Parallel.For(0, 8, new ParallelOptions { MaxDegreeOfParallelism = 8 }, run =>
        {
            for (var i = 0; i < 60; i++)
            {
                Batches.Write(_scratch.File($"{run}-{i}.txt"), $"{run} {i}");
            }
        });

        Directory.GetFiles(_scratch.Path, "*.txt").Should().HaveCount(8 * 60);
        Directory.GetDirectories(_scratch.Path).Should().BeEmpty();
    }

    [Fact]
    public void A_stop_removes_what_waits_at_once()
    {
        using var stop = new CancellationTokenSource();
        using var batch = FileBatch.Open(Batches.Request(_scratch.File("out/a.pdf")), stop.Token);
        batch.Write(_scratch.File("out/a.pdf"), "a"u8.ToArray());

        stop.Cancel();

        _scratch.Names().Should().BeEmpty("the folder was made for the run");
        FluentActions.Invoking(batch.Commit).Should().Throw<OperationCanceledException>();
    }

    [Fact]
    public void A_stop_in_the_middle_of_a_file_ends_the_writing()
    {
        using var stop = new CancellationTokenSource();
        using var batch = FileBatch.Open(Batches.Request(_scratch.File("a.pdf")), stop.Token);

        FluentActions.Invoking(() => batch.Write(_scratch.File("a.pdf"), _ => stop.Cancel())).Should().Throw<OperationCanceledException>();

        _scratch.Names().Should().BeEmpty();
    }

    /// <summary>What a killed run leaves: a locked folder whose lock nobody holds any more.</summary>
    [Fact]
    public void The_next_run_clears_away_what_a_killed_one_left()
    {
        var left = LeftBehind('a');
        File.WriteAllText(Path.Combine(left, "a.pdf"), "half");

        Batches.Write(_scratch.File("a.pdf"), "whole");

        _scratch.Names().Should().Equal(".studiokit-written", "a.pdf");
    }

    [Fact]
    public void A_run_killed_before_it_locked_its_folder_leaves_nothing_for_good()
    {
        Directory.CreateDirectory(_scratch.File(".studiokit-staging-" + new string('b', 32)));

        Batches.Write(_scratch.File("a.pdf"), "whole");

        _scratch.Names().Should().Equal(".studiokit-written", "a.pdf");
    }

    [Fact]
    public void What_a_living_run_stages_stays()
    {
        using var living = FileBatch.Open(Batches.Request(_scratch.File("a.pdf")));
        living.Write(_scratch.File("a.pdf"), "a"u8.ToArray());

        Batches.Write(_scratch.File("b.pdf"), "b");

        living.Commit().Should().Equal(_scratch.File("a.pdf"));
        _scratch.Names().Should().Equal(".studiokit-written", "a.pdf", "b.pdf");
    }

    [Theory]
    [InlineData(".studiokit-staging-notes")]
    [InlineData(".studiokit-staging-cccccccccccccccccccccccccccccccc")]
    public void A_folder_of_somebody_elses_with_a_like_name_stays(string name)
    {
        Directory.CreateDirectory(_scratch.File(name));
        File.WriteAllText(_scratch.File(name + "/notes.txt"), "mine");

        Batches.Write(_scratch.File("a.pdf"), "a");

        File.ReadAllText(_scratch.File(name + "/notes.txt")).Should().Be("mine");
    }

    [Fact]
    public void A_link_of_a_like_name_is_not_followed()
    {
        Directory.CreateDirectory(_scratch.File("mine"));
        var chance = new string('d', 32);
        File.WriteAllText(_scratch.File($"mine/{chance}.lock"), "");
        File.WriteAllText(_scratch.File("mine/notes.txt"), "mine");
        Directory.CreateSymbolicLink(_scratch.File(".studiokit-staging-" + chance), _scratch.File("mine"));

        Batches.Write(_scratch.File("a.pdf"), "a");

        File.ReadAllText(_scratch.File("mine/notes.txt")).Should().Be("mine");
    }

    /// <summary>A run cut off between noting its files and naming them: on the list stand the old contents and the new.</summary>
    [Fact]
    public void A_folder_in_which_a_run_was_cut_off_is_accepted_with_old_and_with_new_contents()
    {
        Batches.Write(_scratch.File("a.pdf"), "old a");
        Batches.Write(_scratch.File("b.pdf"), "old b");
        var (oldA, oldB) = (File.ReadAllBytes(_scratch.File("a.pdf")), File.ReadAllBytes(_scratch.File("b.pdf")));
        Batches.Write(_scratch.File("a.pdf"), "new a");
        Batches.Write(_scratch.File("b.pdf"), "new b");

        // As it is when only the first of the two got its name.
        File.WriteAllBytes(_scratch.File("b.pdf"), oldB);
        Batches.Write(_scratch.File("b.pdf"), "new b");
        File.WriteAllBytes(_scratch.File("a.pdf"), oldA);
        Batches.Write(_scratch.File("a.pdf"), "new a");

        File.ReadAllText(_scratch.File("b.pdf")).Should().Be("new b");
    }

    [Fact]
    public void The_new_contents_are_on_the_list_before_a_file_gets_its_name()
    {
        using (var batch = FileBatch.Open(Batches.Request(_scratch.File("a.pdf"), _scratch.File("z.pdf"))))
        {
            batch.Write(_scratch.File("a.pdf"), "a"u8.ToArray());
            batch.Write(_scratch.File("z.pdf"), "z"u8.ToArray());

            // The folder in the way is not there when the batch looks, so the second name cannot be given.
            batch.BeforeNaming = () => Directory.CreateDirectory(_scratch.File("z.pdf/in-the-way"));
            FluentActions.Invoking(batch.Commit).Should().Throw<FileWritingException>().WithMessage("*z.pdf*1 of 2 files are written*");
        }

        Directory.Delete(_scratch.File("z.pdf"), recursive: true);

        Batches.Write(_scratch.File("a.pdf"), "again");
        _scratch.Names().Should().Equal(".studiokit-written", "a.pdf");
    }

    [Fact]
    public void A_list_cut_short_in_the_middle_of_a_line_still_knows_the_rest()
    {
        Batches.Write(_scratch.File("a.pdf"), "first");
        File.AppendAllText(_scratch.File(".studiokit-written"), "0123abcd");

        Batches.Write(_scratch.File("a.pdf"), "second");
        Batches.Write(_scratch.File("a.pdf"), "third");

        File.ReadAllText(_scratch.File("a.pdf")).Should().Be("third");
    }

    private string LeftBehind(char chance)
    {
        var folder = _scratch.File(".studiokit-staging-" + new string(chance, 32));
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, new string(chance, 32) + ".lock"), "");
        return folder;
    }
}
