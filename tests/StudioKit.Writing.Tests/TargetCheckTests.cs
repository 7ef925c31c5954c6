using System.Diagnostics;

namespace StudioKit.Writing.Tests;

/// <summary>What is never written over, by whatever name it is met.</summary>
public sealed class TargetCheckTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Theory]
    [InlineData("same")]
    [InlineData("link")]
    [InlineData("linked-folder")]
    [InlineData("hard-link")]
    [InlineData("detour")]
    public void An_input_is_never_replaced_under_any_of_its_names(string way)
    {
        Directory.CreateDirectory(_scratch.File("originals"));
        var original = _scratch.File("originals/kit.yaml");
        File.WriteAllText(original, "mine");
        var name = Name(way, original);

        Batches.Refusal(name, force: true, original).Should().Contain("one of the files that this command reads");
        Batches.Refusal(original, force: true, name).Should().Contain("one of the files that this command reads");

        File.ReadAllText(original).Should().Be("mine");
    }

    [Fact]
    public void An_input_that_StudioKit_wrote_is_an_input_first()
    {
        Batches.Write(_scratch.File("kit.yaml"), "starter");

        Batches.Refusal(_scratch.File("kit.yaml"), force: false, _scratch.File("kit.yaml")).Should().Contain("reads");
    }

    [Theory]
    [InlineData("portrait.xmp", "<x:xmpmeta/>", "sidecar")]
    [InlineData("portrait.jpg.XMP", "", "sidecar")]
    [InlineData("portrait.png", "\u0089PNG\r\n\u001a\n", "picture")]
    [InlineData("portrait.jpg", "\u00FF\u00D8\u00FF\u00E0", "picture")]
    [InlineData("portrait.raw", "II*\0xxxx", "picture")]
    [InlineData("portrait", "\0\0\0\u0018ftypheic", "picture")]
    public void A_photograph_and_a_sidecar_are_never_replaced(string name, string start, string kind)
    {
        File.WriteAllText(_scratch.File(name), start, System.Text.Encoding.Latin1);

        Batches.Refusal(_scratch.File(name), force: true).Should().Contain(kind).And.NotContain("--force");
    }

    [Fact]
    public void A_sidecar_of_ours_into_which_a_photographer_wrote_is_theirs()
    {
        Batches.Write(_scratch.File("portrait.xmp"), "scale");
        File.AppendAllText(_scratch.File("portrait.xmp"), "exposure +1");

        Batches.Refusal(_scratch.File("portrait.xmp"), force: true).Should().Contain("sidecar");
    }

    [Fact]
    public void A_link_at_the_target_is_somebody_elses_and_what_it_leads_to_stays_even_where_it_goes()
    {
        File.WriteAllText(_scratch.File("notes.txt"), "mine");
        File.CreateSymbolicLink(_scratch.File("card.pdf"), _scratch.File("notes.txt"));
        Batches.Refusal(_scratch.File("card.pdf")).Should().Contain("--force");

        Batches.Write(_scratch.File("card.pdf"), "ours", force: true);

        File.ReadAllText(_scratch.File("notes.txt")).Should().Be("mine");
        File.ReadAllText(_scratch.File("card.pdf")).Should().Be("ours");
    }

    [Fact]
    public void A_link_to_a_photograph_is_never_replaced()
    {
        File.WriteAllBytes(_scratch.File("portrait.jpg"), [0xFF, 0xD8, 0xFF, 0xE1]);
        File.CreateSymbolicLink(_scratch.File("copy.jpg"), _scratch.File("portrait.jpg"));

        Batches.Refusal(_scratch.File("copy.jpg"), force: true).Should().Contain("picture");
    }

    [Fact]
    public void A_pipe_is_no_place_for_a_file()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using (var made = Process.Start("mkfifo", _scratch.File("pipe")))
        {
            made.WaitForExit();
        }

        Batches.Refusal(_scratch.File("pipe"), force: true).Should().Contain("pipe, not a file");
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("out/", "does not name a file")]
    [InlineData("..", "does not name a file")]
    [InlineData("a\0b", "does not name a file")]
    [InlineData(".studiokit-written", "keeps for itself")]
    public void A_name_that_names_no_file_is_told(string name, string sentence) => Batches.Refusal(name, force: true).Should().Contain(sentence);

    [Fact]
    public void A_folder_at_the_target_is_told()
    {
        Directory.CreateDirectory(_scratch.File("card.pdf"));

        Batches.Refusal(_scratch.File("card.pdf"), force: true).Should().Contain("is a folder");
    }

    [Theory]
    [InlineData("taken/card.pdf")]
    [InlineData("taken/deeper/card.pdf")]
    public void A_folder_that_is_really_a_file_is_told(string name)
    {
        File.WriteAllText(_scratch.File("taken"), "mine");

        Batches.Refusal(_scratch.File(name)).Should().Contain($"{_scratch.File("taken")} is not a folder");
    }

    /// <summary>The pseudo file system of processes takes no files, whoever asks.</summary>
    [Fact]
    public void A_folder_that_takes_no_files_is_told_in_a_sentence()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        Batches.Refusal("/proc/self/card.pdf").Should().StartWith("cannot write into /proc/self: ").And.EndWith("nothing was written.");
    }

    [Fact]
    public void A_name_longer_than_the_file_system_takes_is_told_in_a_sentence() =>
        Batches.Refusal(_scratch.File(new string('n', 300))).Should().StartWith($"cannot write into {_scratch.Path}: ").And.EndWith("nothing was written.");

    [Fact]
    public void Two_targets_of_one_name_are_refused_and_told_by_what_they_are_made_of()
    {
        var request = new FileBatchRequest { Targets = [new(_scratch.File("out/x.jpg"), "a/x.jpg"), new(_scratch.File("out/x.jpg"), "b/x.jpg")] };

        FluentActions.Invoking(() => FileBatch.Open(request)).Should().Throw<FileWritingException>().WithMessage("a/x.jpg and b/x.jpg would both become*nothing was written*");

        _scratch.Names().Should().BeEmpty();
    }

    [Fact]
    public void A_command_that_cannot_be_forced_does_not_name_the_option()
    {
        File.WriteAllText(_scratch.File("a.txt"), "mine");

        FluentActions.Invoking(() => FileBatch.Open(Batches.Request(_scratch.File("a.txt")) with { CanBeForced = false }))
            .Should().Throw<FileWritingException>().Which.Message.Should().Contain("was not written by StudioKit").And.NotContain("--force").And.Contain("Name another place");
    }

    [Fact]
    public void A_folder_that_takes_no_files_is_told_without_a_name_of_chance()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        // The kernel's own files (proc(5)): nothing can be made among them, whoever one is.
        Batches.Refusal("/proc/self/a.pdf").Should().StartWith("cannot write into /proc/self: ").And.NotContain("staging").And.EndWith("; nothing was written.");
    }

    [Fact]
    public void Two_targets_of_one_name_in_a_folder_of_two_names_are_refused()
    {
        Directory.CreateDirectory(_scratch.File("out"));
        Directory.CreateSymbolicLink(_scratch.File("also"), _scratch.File("out"));

        FluentActions.Invoking(() => FileBatch.Open(Batches.Request(_scratch.File("out/x.jpg"), _scratch.File("also/x.jpg"))))
            .Should().Throw<FileWritingException>().WithMessage("*are the same file*");
    }

    [Fact]
    public void A_file_of_somebody_elses_under_the_lists_name_stays()
    {
        File.WriteAllText(_scratch.File(".studiokit-written"), "my own notes");

        Batches.Refusal(_scratch.File("a.pdf"), force: true).Should().Contain("is not the list");

        File.ReadAllText(_scratch.File(".studiokit-written")).Should().Be("my own notes");
    }

    [Fact]
    public void A_link_under_the_lists_name_is_not_followed()
    {
        File.WriteAllText(_scratch.File("notes"), "");
        File.CreateSymbolicLink(_scratch.File(".studiokit-written"), _scratch.File("notes"));

        Batches.Refusal(_scratch.File("a.pdf"), force: true).Should().Contain("is not the list");

        File.ReadAllText(_scratch.File("notes")).Should().BeEmpty();
    }

    private string Name(string way, string original)
    {
        switch (way)
        {
            case "link":
                return File.CreateSymbolicLink(_scratch.File("link"), original).FullName;
            case "linked-folder":
                Directory.CreateSymbolicLink(_scratch.File("folder"), Path.GetDirectoryName(original)!);
                return _scratch.File("folder/kit.yaml");
            case "hard-link" when OperatingSystem.IsLinux():
                using (var made = Process.Start("ln", [original, _scratch.File("second")]))
                {
                    made.WaitForExit();
                }

                return _scratch.File("second");
            case "detour":
                return _scratch.File("originals/../originals/./kit.yaml");
            default:
                return original;
        }
    }
}
