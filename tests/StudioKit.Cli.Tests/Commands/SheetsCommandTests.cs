namespace StudioKit.Cli.Tests.Commands;

public sealed class SheetsCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("fen-edge.yaml")]
    [InlineData("heath-ultralight.yaml")]
    [InlineData("tall-stand.yaml")]
    public void A_demo_kit_stands_and_prints_a_line_for_every_file_it_writes(string kit)
    {
        var run = CommandRun.Of("sheets", Repository.Kit(kit), "--out", _folder.Path);

        run.Error.Should().StartWith("Print first, to take outdoors: field-pack.pdf (2 sheets, both sides), cards-A6.pdf").And.Contain("build-sheet.pdf").And.Contain("100 %").And.NotContain("does not fit");
        run.ExitCode.Should().Be(0);
        var files = run.Output.Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries);
        files.Should().OnlyContain(file => File.Exists(file));
        files.Select(Path.GetFileName).Should().Contain(["plan-report.pdf", "cards-A6.pdf", "cards-3x5in.pdf", "build-sheet.pdf", "pack-list.pdf"]);
    }

    [Fact]
    public void The_same_kit_gives_the_same_bytes()
    {
        CommandRun.Of("sheets", Repository.Kit("heath-ultralight.yaml"), "--out", _folder.File("first"));
        CommandRun.Of("sheets", Repository.Kit("heath-ultralight.yaml"), "--out", _folder.File("second"));

        foreach (var file in Directory.EnumerateFiles(_folder.File("first")))
        {
            File.ReadAllBytes(Path.Combine(_folder.File("second"), Path.GetFileName(file))).Should().Equal(File.ReadAllBytes(file), Path.GetFileName(file));
        }
    }

    [Fact]
    public void A_pdf_of_somebody_elses_stays_and_nothing_is_written_beside_it()
    {
        File.WriteAllText(_folder.File("pack-list.pdf"), "mine");

        var run = CommandRun.Of("sheets", Repository.Kit("heath-ultralight.yaml"), "--out", _folder.Path);

        run.ExitCode.Should().Be(3);
        run.Error.Should().Contain("pack-list.pdf").And.Contain("--force");
        Directory.EnumerateFiles(_folder.Path).Should().ContainSingle();
    }

    [Theory]
    [InlineData("--date", "14.5.2027", "2027-05-14")]
    [InlineData("--cards", "A5ish", "A6")]
    [InlineData("--paper", "foolscap", "letter")]
    public void A_wrong_option_says_what_would_be_accepted(string option, string value, string accepted)
    {
        var run = CommandRun.Of("sheets", Repository.Kit("heath-ultralight.yaml"), "--out", _folder.Path, option, value);

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain(accepted);
        Directory.EnumerateFiles(_folder.Path).Should().BeEmpty();
    }

    [Fact]
    public void A_broken_kit_writes_nothing()
    {
        File.WriteAllText(_folder.File("bad.yaml"), "kit: Bad\n");

        CommandRun.Of("sheets", _folder.File("bad.yaml"), "--out", _folder.File("out")).ExitCode.Should().Be(2);

        Directory.Exists(_folder.File("out")).Should().BeFalse();
    }

    [Fact]
    public void A_book_is_one_file_beside_the_field_pack()
    {
        var run = CommandRun.Of("sheets", Repository.Kit("heath-ultralight.yaml"), "--out", _folder.Path, "--book");

        run.ExitCode.Should().Be(0);
        run.Output.Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries).Should().Equal(_folder.File("field-pack.pdf"), _folder.File("field-book.pdf"));
    }

    [Fact]
    public void A_template_is_written_changed_and_printed()
    {
        CommandRun.Of("new", "--template", "A7", _folder.File("mine.yaml")).ExitCode.Should().Be(0);
        File.WriteAllText(_folder.File("mine.yaml"), File.ReadAllText(_folder.File("mine.yaml")).Replace("template: A7", "template: my own", StringComparison.Ordinal));

        var run = CommandRun.Of("sheets", Repository.Kit("heath-ultralight.yaml"), "--out", _folder.File("out"), "--template", _folder.File("mine.yaml"));

        run.ExitCode.Should().Be(0);
        run.Output.Should().Contain("cards-my-own.pdf").And.NotContain("cards-A6.pdf");
    }

    [Fact]
    public void A_faulty_template_is_told_by_line_and_nothing_is_written()
    {
        File.WriteAllText(_folder.File("mine.yaml"), "template: mine\nsize: A6\nfront: [setings]\n");

        var run = CommandRun.Of("sheets", Repository.Kit("heath-ultralight.yaml"), "--out", _folder.File("out"), "--template", _folder.File("mine.yaml"));

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("mine.yaml(3,9): error KIT001: 'setings' is not a block of a card.").And.Contain("Did you mean 'settings'?");
        Directory.Exists(_folder.File("out")).Should().BeFalse();
    }

    [Fact]
    public void What_a_card_is_too_small_for_is_told_and_is_no_success()
    {
        var run = CommandRun.Of("sheets", Repository.Kit("fen-edge.yaml"), "--out", _folder.File("out"), "--cards", "40 mm x 40 mm");

        run.ExitCode.Should().Be(1);
        run.Error.Should().Contain("does not fit: cards-40x40mm.pdf: The card").And.Contain("Take a larger card.");
        File.Exists(_folder.File("out/cards-40x40mm.pdf")).Should().BeTrue();
    }

    [Fact]
    public void A_letter_that_no_bundled_font_prints_is_told_with_its_place_and_is_no_success()
    {
        var text = File.ReadAllText(Repository.Kit("heath-ultralight.yaml"));
        var name = text.Split('\n').Single(line => line.StartsWith("kit:", StringComparison.Ordinal));
        File.WriteAllText(_folder.File("heath.yaml"), text.Replace(name, "kit: Heide 荒地 황무지 בור 🦋", StringComparison.Ordinal));

        var run = CommandRun.Of("sheets", _folder.File("heath.yaml"), "--out", _folder.File("out"));
        var check = CommandRun.Of("check", _folder.File("heath.yaml"));

        run.ExitCode.Should().Be(1, "what is left out is no success");
        run.Error.Should().MatchRegex(@"does not fit: plan-report\.pdf: No bundled font prints .*U\+05D1.*U\+1F98B");
        check.ExitCode.Should().Be(0, "it is a warning");
        check.Error.Should().MatchRegex(@"heath\.yaml\(\d+,19\): warning KIT023: No bundled font prints .*U\+05D1.*U\+1F98B.* in 'kit'");
        check.Error.Should().NotContain("U+8352").And.NotContain("U+D669");
    }

    [Theory]
    [InlineData("0 mm x 0 mm")]
    [InlineData("10 km x 10 km")]
    [InlineData("220 mm x 290 mm")]
    public void A_card_that_no_paper_holds_is_refused_before_anything_is_planned(string size)
    {
        var run = CommandRun.Of("sheets", Repository.Kit("heath-ultralight.yaml"), "--out", _folder.File("sheets"), "--cards", size);

        run.ExitCode.Should().Be(2);
        run.Error.Should().MatchRegex("sides are 40 mm to 300 mm|does not fit on A4");
        Directory.Exists(_folder.File("sheets")).Should().BeFalse();
    }
}
