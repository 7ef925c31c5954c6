using System.CommandLine;
using StudioKit.Kits;

namespace StudioKit.Cli.Tests.Written;

/// <summary>Whoever types what README and guide say gets what they say; no line of theirs goes stale.</summary>
public sealed class WrittenCommandsTests : IDisposable
{
    // Test frames as a camera saves them, evenly grey; what is read off them is another test's matter. The ladders lie within half a stop of their kits' plans.
    private static readonly (string Name, byte Code)[] Pictures =
    [
        ("test.jpg", 240), ("panel-1-32.jpg", 137),
        ("ladders/fen/panel-1-8.jpg", 221), ("ladders/fen/panel-1-16.jpg", 162), ("ladders/fen/panel-1-32.jpg", 118),
        ("ladders/pond/panel-1-16.jpg", 225), ("ladders/pond/panel-1-32.jpg", 165), ("ladders/pond/panel-1-64.jpg", 120),
    ];

    private static readonly RootCommand Commands = StudioKitCommand.BuildAll(new CommandHost { Output = TextWriter.Null, Error = TextWriter.Null });

    private readonly TemporaryFolder _folder = new();

    public WrittenCommandsTests()
    {
        foreach (var kit in Directory.GetFiles(Path.GetDirectoryName(Repository.Kit("fen-edge.yaml"))!, "*.yaml"))
        {
            Directory.CreateDirectory(_folder.File("kits"));
            File.Copy(kit, _folder.File(Path.Combine("kits", Path.GetFileName(kit))));
        }

        foreach (var (name, code) in Pictures)
        {
            _folder.GreyPicture(name, 480, 320, code);
        }
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_guide_leads_from_the_table_to_cards_as_it_is_written()
    {
        var calls = 0;
        foreach (var (kind, text) in WrittenPage.Blocks(Page("docs", "guide.md")))
        {
            switch (kind)
            {
                case "yaml":
                    WriteDown(text);
                    break;
                case "csv":
                    File.WriteAllText(_folder.File("readings.csv"), text);
                    break;
                default:
                    calls += WrittenPage.Calls(text).Count(Works);
                    break;
            }
        }

        calls.Should().BeGreaterThan(6);
        File.Exists(_folder.File("my-sheets/cards-A6.pdf")).Should().BeTrue("the guide says so");
        CommandRun.Of("check", _folder.File("my-kit.yaml"), "--defaults").Output.Should().Contain("session.frames").And.NotContain("lenses[0].pupil-ratio", "it was measured");
    }

    [Fact]
    public void The_commands_of_the_README_work_as_they_are_written()
    {
        File.WriteAllText(_folder.File("readings.csv"), "name,kind,flash,power,distance,reading\nsedge at 1 m,flash-meter,sedge,1/1,1 m,f/22\n");
        var kit = KitReader.Parse(File.ReadAllText(_folder.File("kits/fen-edge.yaml")), "fen-edge.yaml", PartsLibrary.Embedded).Kit!;
        _folder.GreyPicture("spider-1.jpg", kit.Camera.PixelsWide, kit.Camera.PixelsHigh, 240);
        var page = Page("README.md");

        var typed = WrittenPage.Blocks(page).SelectMany(block => WrittenPage.Calls(block.Text)).ToList();
        var named = WrittenPage.Spans(page).Where(words => words.Length > 1 && IsCommand(words[0]) && words.Any(IsHere)).ToList();

        typed.Should().HaveCountGreaterThan(3);
        named.Should().HaveCountGreaterThan(3);
        typed.Concat(named).Should().OnlyContain(words => Works(words));
    }

    [Theory]
    [InlineData("README.md")]
    [InlineData("docs/guide.md")]
    public void What_is_named_in_passing_is_a_command_or_an_option_that_there_is(string file)
    {
        var options = Commands.Subcommands.SelectMany(command => command.Subcommands.Append(command)).SelectMany(command => command.Options).Select(option => option.Name).ToHashSet(StringComparer.Ordinal);
        var spans = WrittenPage.Spans(Page(file)).ToList();

        spans.SelectMany(words => words).Where(word => word.StartsWith("--", StringComparison.Ordinal) && word.Length > 2).Should().NotBeEmpty().And.OnlyContain(word => options.Contains(word) || word == "--project" || word == "--version");
        spans.Where(words => words.Length > 1 && IsCommand(words[0])).SelectMany(words => Commands.Parse(words).UnmatchedTokens).Should().BeEmpty();
    }

    // A section that is written again takes the place of the one before, as somebody changes it in the file.
    private void WriteDown(string section)
    {
        var path = _folder.File("my-kit.yaml");
        var names = Sections(section).Select(part => part.Name).ToHashSet(StringComparer.Ordinal);
        File.WriteAllText(path, string.Concat(Sections(File.ReadAllText(path)).Where(part => !names.Contains(part.Name)).Select(part => part.Text)) + section);
        var read = KitReader.Parse(File.ReadAllText(path), path, PartsLibrary.Embedded);
        read.Diagnostics.Select(diagnostic => diagnostic.Format()).Should().BeEmpty($"this can be written:\n{section}");
    }

    // A section begins where a line begins with a letter.
    private static IEnumerable<(string Name, string Text)> Sections(string text)
    {
        var lines = text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n').Select(line => line + "\n").ToList();
        var starts = Enumerable.Range(0, lines.Count).Where(i => char.IsAsciiLetter(lines[i][0])).ToList();
        return starts.Select((start, k) => (lines[start].Split(':')[0], string.Concat(lines[start..(k + 1 < starts.Count ? starts[k + 1] : lines.Count)])));
    }

    private bool Works(string[] words)
    {
        var run = CommandRun.Of([.. words.SelectMany((word, i) => Placed(word, i > 0 ? words[i - 1] : ""))]);
        run.ExitCode.Should().Be(0, $"'{string.Join(' ', words)}' says: {run.Error}");
        return true;
    }

    // Files are those of the folder, and a star stands for all that there are, as in a shell.
    private IEnumerable<string> Placed(string word, string before)
    {
        var isPath = before is "--out" or "--pictures" || word.StartsWith("ladders/", StringComparison.Ordinal) || Path.GetExtension(word) is ".yaml" or ".jpg" or ".csv" or ".pdf";
        return !isPath ? [word]
            : word.Contains('*', StringComparison.Ordinal) ? Directory.GetFiles(_folder.File(Path.GetDirectoryName(word)!), Path.GetFileName(word)).Order(StringComparer.Ordinal)
            : [_folder.File(word)];
    }

    private bool IsHere(string word) => Path.GetExtension(word) is ".yaml" or ".jpg" && (word.Contains('*', StringComparison.Ordinal) || File.Exists(_folder.File(word)));

    private static bool IsCommand(string word) => Commands.Subcommands.Any(command => command.Name == word);

    private static string Page(params string[] path) => File.ReadAllText(Path.Combine([Path.GetDirectoryName(Path.GetDirectoryName(Repository.Kit("fen-edge.yaml")))!, .. path]));
}
