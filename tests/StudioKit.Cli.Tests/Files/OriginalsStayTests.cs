using SkiaSharp;

namespace StudioKit.Cli.Tests.Files;

/// <summary>Commands work beside people's originals, raw edits and other files, and leave them as they are.</summary>
public sealed class OriginalsStayTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void An_original_of_the_batch_that_lies_in_the_output_folder_stays()
    {
        var (other, original) = (Picture("cards/x.png", 250), Picture("out/x.png", 50));

        Scale(_folder.File("out"), other, original).Should().Contain("out/x.png is one of the files that this command reads");

        CodeOf(original).Should().Be(50);
        Directory.EnumerateFileSystemEntries(_folder.File("out")).Should().ContainSingle();
    }

    [Fact]
    public void An_original_reached_through_a_linked_folder_stays()
    {
        var original = Picture("portraits/x.png", 50);
        Directory.CreateSymbolicLink(_folder.File("link"), _folder.File("portraits"));

        Scale(_folder.File("portraits"), _folder.File("link/x.png")).Should().Contain("never replaced");

        CodeOf(original).Should().Be(50);
    }

    [Fact]
    public void An_original_of_the_name_that_a_copy_would_have_stays()
    {
        var (other, original) = (Picture("cards/x.png", 250), Picture("out/x.png", 50));

        Scale(_folder.File("out"), other).Should().Contain("out/x.png is a picture that StudioKit did not write");

        CodeOf(original).Should().Be(50);
    }

    [Fact]
    public void A_photographers_sidecar_stays()
    {
        var original = Picture("x.png", 250);
        Directory.CreateDirectory(_folder.File("out"));
        File.WriteAllText(_folder.File("out/x.png.xmp"), "<edits/>");

        CommandRun.Of("scale", original, "--pixel-size", "5 um", "--out", _folder.File("out")).ExitCode.Should().Be(0);

        File.ReadAllText(_folder.File("out/x.png.xmp")).Should().Be("<edits/>");
        File.ReadAllText(_folder.File("out/x.png.scale.xmp")).Should().Contain("MicrometresPerPixel");
    }

    [Fact]
    public void Pictures_of_one_name_from_several_folders_are_refused_before_anything_is_written()
    {
        var (first, second) = (Picture("a/x.png", 250), Picture("b/x.png", 240));

        Scale(_folder.File("out"), first, second).Should().Contain("a/x.png and ").And.Contain("b/x.png would both become ");

        Directory.Exists(_folder.File("out")).Should().BeFalse();
    }

    [Fact]
    public void A_picture_named_twice_is_copied_once() =>
        CommandRun.Of("scale", Picture("x.png", 250), _folder.File("./x.png"), "--pixel-size", "5 um", "--out", _folder.File("out")).Output
            .Split('\n', StringSplitOptions.RemoveEmptyEntries).Should().ContainSingle();

    [Fact]
    public void A_second_run_replaces_the_copies_of_the_first()
    {
        var original = Picture("x.png", 250);
        CommandRun.Of("scale", original, "--pixel-size", "5 um", "--out", _folder.File("out")).ExitCode.Should().Be(0);

        CommandRun.Of("scale", original, "--pixel-size", "6 um", "--out", _folder.File("out")).Output.Should().Contain("6 µm per pixel");
    }

    [Theory]
    [InlineData("taken", "is not a folder")]
    [InlineData("", "--out names no folder")]
    public void A_folder_for_copies_that_is_none_is_told_in_a_sentence(string name, string sentence)
    {
        File.WriteAllText(_folder.File("taken"), "mine");

        Scale(name.Length == 0 ? "" : _folder.File(name), Picture("x.png", 250)).Should().StartWith("studiokit: ").And.Contain(sentence);
    }

    [Theory]
    [InlineData("sheets", "--date", "2027-05-14")]
    [InlineData("schema")]
    public void No_command_writes_to_a_place_without_a_name(string command, params string[] more)
    {
        string[] kit = command == "sheets" ? [Repository.Kit("fen-edge.yaml")] : [];

        var run = CommandRun.Of([command, .. kit, "--out", "", .. more]);

        run.ExitCode.Should().Be(3);
        run.Error.Should().StartWith("studiokit: ");
    }

    [Fact]
    public void The_log_is_not_replaced_by_what_is_exported_from_it()
    {
        var log = _folder.File("field.log");
        CommandRun.Of("log", "session", "--log", log, "--locality", "Wisplow Fen").ExitCode.Should().Be(0);
        var before = File.ReadAllBytes(log);

        var run = CommandRun.Of("log", "export", "--log", log, "--csv", log, "--force");

        run.ExitCode.Should().Be(3);
        run.Error.Should().Contain("one of the files that this command reads");
        File.ReadAllBytes(log).Should().Equal(before);
    }

    [Fact]
    public void Of_several_exports_none_is_written_where_one_may_not_be()
    {
        var log = _folder.File("field.log");
        CommandRun.Of("log", "session", "--log", log, "--locality", "Wisplow Fen").ExitCode.Should().Be(0);
        File.WriteAllText(_folder.File("mine.geojson"), "mine");

        CommandRun.Of("log", "export", "--log", log, "--csv", _folder.File("out.csv"), "--geojson", _folder.File("mine.geojson")).ExitCode.Should().Be(3);

        File.Exists(_folder.File("out.csv")).Should().BeFalse();
        File.ReadAllText(_folder.File("mine.geojson")).Should().Be("mine");
    }

    private static string Scale(string folder, params string[] pictures)
    {
        var run = CommandRun.Of(["scale", .. pictures, "--pixel-size", "5 um", "--out", folder]);
        run.ExitCode.Should().Be(3);
        run.Output.Should().BeEmpty();
        return run.Error;
    }

    private string Picture(string name, byte code) => _folder.GreyPicture(name, 200, 150, code);

    private static int CodeOf(string path)
    {
        using var bitmap = SKBitmap.Decode(path);
        return bitmap.GetPixel(100, 140).Red;
    }
}
