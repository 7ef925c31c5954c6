using StudioKit.Cli;
using StudioKit.Field.Calibration;
using StudioKit.Web.Results;

namespace StudioKit.Web.Tests.Engine;

public sealed class TestFramesTests : IDisposable
{
    private const string Framing = "reed 55 at 1:2";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory();
    private readonly Asked _asked = new();

    // Three fifths of the width white, the rest one stop under: 2^-1 of the light.
    private static TakenPicture Halves => new(600, 400, (x, _) => x < 360 ? 0 : 1);

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void A_panel_of_which_three_fifths_are_white_is_told_so_with_the_stops_that_the_rest_misses()
    {
        var read = _asked.Read(Halves, Picture("panel.png"));
        var told = _asked.For(EngineQuestions.Frame, Frame("1/8"));

        read.Faults.Should().BeEmpty();
        read.Size.Should().Be("600 × 400 pixels");
        told.Standing.Should().Be(Standing.Fails);
        told.Verdict.Should().StartWith("NOT WHITE: 1.0 stop under clipping");
        // Code 188 stands for a little more than half the light, so the rest lies less than a whole stop under.
        told.Bands.Select(band => $"{band.Name}: {band.Value}").Should().Equal("white: 60 %", "less than 1/3 stop under: 0 %", "1/3 to 1 stop under: 40 %", "more than 1 stop under: 0 %");
        told.Darkest!.Value.X.Should().BeGreaterThan(0.6);
        told.Turns.Should().NotBeEmpty();
    }

    [Fact]
    public void Places_that_are_not_white_are_hatched_on_the_map_and_white_ones_are_not()
    {
        var read = _asked.Read(Halves, Picture("panel.png"));

        var map = _asked.Take("map:a");

        map.Should().HaveCount(4 * read.MapWidth * read.MapHeight);
        Hatched(map, read, 0, 0.55).Should().Be(0);
        // Two pixels of eight are hatching.
        Hatched(map, read, 0.65, 1).Should().BeApproximately(0.25, 0.01);
    }

    [Fact]
    public void What_is_said_of_a_picture_is_what_the_command_line_says_of_its_file()
    {
        var picture = new TakenPicture(601, 403, (x, y) => Math.Max(0, (x + y) / 500.0 - 0.7));
        var file = Save("panel.png", picture.Png());
        _asked.Read(picture, Picture("panel.png"));

        var told = _asked.For(EngineQuestions.Frame, Frame("1/8"));

        var printed = Run("photo", file, "--bare", "--kit", Kit(), "--framing", Framing, "--power", "1/8");
        printed.Should().Contain(told.Verdict);
        told.Turns.Should().NotBeEmpty().And.OnlyContain(turn => printed.Contains(turn));
        told.Figures.Where(figure => figure.Name != "tone curve").Should().NotBeEmpty().And.OnlyContain(figure => printed.Contains(figure.Value));
    }

    [Fact]
    public void A_frame_can_be_asked_again_at_another_power_without_being_read_again()
    {
        _asked.Read(Halves, Picture("panel.png"));

        var at = _asked.For(EngineQuestions.Frame, Frame("1/8"));
        var higher = _asked.For(EngineQuestions.Frame, Frame("1/2"));

        higher.Verdict.Should().Be(at.Verdict);
        higher.Turns.Should().NotBeEquivalentTo(at.Turns);
    }

    [Theory]
    [InlineData("moth.heic", new byte[] { 0, 0, 0, 24, (byte)'f', (byte)'t', (byte)'y', (byte)'p' }, "HEIF")]
    [InlineData("moth.tif", new byte[] { (byte)'I', (byte)'I', 42, 0, 8, 0, 0, 0 }, "TIFF")]
    [InlineData("moth.raw", new byte[] { (byte)'I', (byte)'I', 85, 0, 8, 0, 0, 0 }, "raw file")]
    [InlineData("moth.txt", new byte[] { (byte)'m', (byte)'o', (byte)'t', (byte)'h', 0, 0, 0, 0 }, "no picture")]
    [InlineData("moth.jpg", new byte[] { 0xFF, 0xD8, 0xFF, 0xE0, 0, 16, 0, 0 }, "damaged")]
    [InlineData("moth.jpg", new byte[0], "empty")]
    public void A_file_that_the_browser_does_not_open_is_named_by_what_it_is(string name, byte[] head, string said) =>
        _asked.Read(new TakenPicture(0, 0, (_, _) => 0) { Head = head }, Picture(name)).Faults.Should().ContainSingle().Which.Should().Contain(name).And.Contain(said);

    [Theory]
    [InlineData("a lot", "Power of the lower flash")]
    [InlineData("1/", "Power of the lower flash")]
    public void A_power_that_cannot_be_read_is_said_so(string power, string said)
    {
        _asked.Read(Halves, Picture("panel.png"));

        _asked.For(EngineQuestions.Frame, Frame(power)).Faults.Should().ContainSingle().Which.Should().Contain(said);
    }

    [Fact]
    public void A_picture_that_was_never_read_is_asked_for_again() =>
        _asked.For(EngineQuestions.Frame, Frame("")).Faults.Should().ContainSingle().Which.Should().Contain("Choose the file again");

    [Fact]
    public void The_power_in_a_files_name_is_told() => _asked.Read(Halves, Picture("panel-1-16.png")).Power.Should().Be("1/16");

    [Fact]
    public void A_ladder_gives_the_correction_that_the_command_line_makes_of_the_same_frames()
    {
        var (kit, files) = (Kit(), new List<string>());
        foreach (var (name, under) in new[] { ("a.png", 2.0), ("b.png", 1.0), ("c.png", 0.5) })
        {
            var picture = new TakenPicture(600, 400, (x, y) => under + (0.0005 * (x + y)));
            files.Add(Save(name, picture.Png()));
            _asked.Read(picture, Picture(name, name));
        }

        var told = Ladder();

        string[] powers = ["1/32", "1/16", "1/11.3"];
        Run(["photo", .. files, "--ladder", string.Join(',', powers), "--kit", kit, "--framing", Framing, "--pitch", "60°", "--learn-curve"]).Should().Contain(told.Verdict).And.ContainAll(told.Turns);
        Run(["calibrate", kit, .. files.Zip(powers).SelectMany(pair => new[] { "--frame", pair.First, "--power", pair.Second }), "--framing", Framing, "--pitch", "60°", "--date", "2027-05-14", "--force"]);
        told.Correction.Should().Be(File.ReadAllText(KitCorrectionFile.PathBeside(kit)));
        told.Cells.Should().Contain(cell => cell.Margin == "+0.4 stop", "white by little is white").And.OnlyContain(cell => cell.Band == (cell.Margin[0] == '+' ? cell.Band == "bright" ? "bright" : "white" : cell.Band == "dark" ? "dark" : "under"));
    }

    [Fact]
    public void A_kept_correction_is_planned_with_and_said_so_until_it_is_removed()
    {
        var before = _asked.Plan(Asked.Demo());
        foreach (var (name, under) in new[] { ("a.png", 2.0), ("b.png", 1.0), ("c.png", 0.5) })
        {
            _asked.Read(new TakenPicture(600, 400, (x, y) => under + (0.0005 * (x + y))), Picture(name, name));
        }

        var kept = _asked.For(EngineQuestions.Correct, new CorrectionTexts([Ladder().Correction]));
        var with = _asked.Plan(Asked.Demo());
        var again = Ladder().Correction;
        _asked.For(EngineQuestions.Correct, new CorrectionTexts([]));
        var without = _asked.Plan(Asked.Demo());

        kept.Kits.Should().ContainSingle().Which.KitName.Should().Be(before.KitName);
        before.Corrections.Should().BeEmpty();
        with.Corrections.Should().StartWith("with the corrections of 2027-05-14");
        with.Hash.Should().NotBe(before.Hash);
        without.Should().BeEquivalentTo(before);
        // The same frames say the same of the kit as written, whatever was kept of it.
        kept.Kits[0].Text.Should().Be(again);
    }

    [Fact]
    public void A_damaged_correction_is_told_and_plans_go_on_without_it()
    {
        var kept = _asked.For(EngineQuestions.Correct, new CorrectionTexts(["correction-of: ["]));

        kept.Kits.Should().BeEmpty();
        kept.Faults.Should().ContainSingle().Which.Should().Contain("cannot be used");
        _asked.Plan(Asked.Demo()).Corrections.Should().BeEmpty();
    }

    private static double Hatched(byte[] map, ReadPicture read, double from, double to)
    {
        var columns = Enumerable.Range(0, read.MapWidth).Where(x => x >= from * read.MapWidth && x < to * read.MapWidth).ToList();
        return Enumerable.Range(0, read.MapHeight).SelectMany(y => columns.Select(x => 4 * ((y * read.MapWidth) + x))).Average(i => map[i] != map[i + 1] ? 1.0 : 0);
    }

    private static PictureRequest Picture(string name, string key = "a") => new(key, name, IsBare: true, KitName: "");

    private static FrameRequest Frame(string power) => new(Asked.Demo(), "fen-edge.yaml", "a", "white", Framing, power);

    private LadderAnswer Ladder() => _asked.For(EngineQuestions.Ladder, new LadderRequest(
        Asked.Demo(), "fen-edge.yaml", "white", Framing, 60, [new("a.png", "1/32"), new("b.png", "1/16"), new("c.png", "1/11.3")], "2027-05-14"));

    private string Kit() => Save("fen-edge.yaml", System.Text.Encoding.UTF8.GetBytes(Asked.Demo()));

    private string Save(string name, byte[] content)
    {
        var path = Path.Combine(_folder.FullName, name);
        File.WriteAllBytes(path, content);
        return path;
    }

    private static string Run(params string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        StudioKitCommand.Run(args, new CommandHost { Output = output, Error = error }).Should().Be(0, error.ToString());
        return output.ToString();
    }
}
