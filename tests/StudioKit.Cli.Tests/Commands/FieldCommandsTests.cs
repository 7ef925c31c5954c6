using System.CommandLine;
using System.Text.Json;
using StudioKit.Cli.Commands;
using StudioKit.Kits;
using StudioKit.Wording;
using UglyToad.PdfPig;

namespace StudioKit.Cli.Tests.Commands;

public sealed class FieldCommandsTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData(1.0)]
    [InlineData(0.5, "--target", "1/2 stop")]
    public void Photo_aims_for_the_set_ups_own_margin_unless_another_is_asked_for(double target, params string[] more)
    {
        var options = new PhotoOptions(new CommandHost { Output = TextWriter.Null, Error = TextWriter.Null });
        var command = new Command("photo");
        options.AddTo(command);
        var setUp = KitReader.Parse(SmallKit, "kit.yaml", PartsLibrary.Embedded).Kit!.SetUps[0];

        options.TargetOf(command.Parse(["a.jpg", .. more]), setUp).Should().Be(target);
    }

    /// <summary>Code 188 is half of saturation on the sRGB curve (IEC 61966-2-1): one stop under.</summary>
    [Fact]
    public void Photo_says_what_is_missing_and_what_to_turn()
    {
        var run = CommandRun.Of("photo", Picture("panel.png", 188), "--bare", "--power", "1/16", "--distance", "30 cm", "--out", _folder.File("out"));

        run.ExitCode.Should().Be(0);
        run.Output.Should().Contain("1.0 stop at the darkest").And.Contain("Lower flash up 1 1/3 stops");
        File.Exists(_folder.File("out/panel.white.png")).Should().BeTrue();
    }

    [Fact]
    public void Photo_measures_a_power_ladder()
    {
        var run = CommandRun.Of(
            "photo", Picture("a.png", 99), Picture("b.png", 137), Picture("c.png", 188), "--ladder", "1/32", "--ladder", "1/16", "--ladder", "1/8", "--json");

        // Codes 99, 137 and 188 are an eighth, a quarter and a half of saturation, so it clips at 1/4; at 1/8 the margin is -1 stop.
        var cells = JsonDocument.Parse(run.Output).RootElement.GetProperty("cells");
        cells[0].GetProperty("whiteMarginStops").GetDouble().Should().BeApproximately(-1, 0.03);
    }

    [Fact]
    public void Photo_that_is_missing_is_file_trouble() =>
        CommandRun.Of("photo", _folder.File("missing.jpg")).ExitCode.Should().Be(3);

    [Fact]
    public void Scale_makes_a_copy_with_a_bar_and_leaves_the_original()
    {
        var original = Picture("spider.jpg", 240);
        var before = File.ReadAllBytes(original);

        // 36 mm over 400 pixels at half life size: 180 µm a pixel; a quarter of the width is 18 mm, so the bar is 1 cm.
        var run = CommandRun.Of("scale", original, "--sensor", "36 mm", "--magnification", "1:2", "--out", _folder.File("scaled"));

        run.ExitCode.Should().Be(0);
        run.Output.Should().Contain("bar 1 cm, 180 µm per pixel");
        File.ReadAllBytes(original).Should().Equal(before);
        File.Exists(_folder.File("scaled/spider.jpg.xmp")).Should().BeTrue();
    }

    [Theory]
    [InlineData("--pixel-size=-5 um", "--pixel-size must be more than nothing", "5.6 um")]
    [InlineData("--pixel-size=0 um", "--pixel-size must be more than nothing", "5.6 um")]
    [InlineData("--sensor=0 mm --magnification=1:2", "--sensor must be more than nothing", "36 mm")]
    [InlineData("--sensor=36 mm", "--sensor goes with --magnification", "1:2")]
    [InlineData("--pixel-size=5 um --sensor=36 mm --magnification=1:2", "--pixel-size and --sensor each say what the scale is", "give one of them")]
    [InlineData("--rule=rule.jpg --kit=fen.yaml", "--rule and --kit each say what the scale is", "give one of them")]
    [InlineData("--magnification=1:2", "give --kit and --framing", "--pixel-size")]
    public void A_scale_comes_from_one_place_and_is_more_than_nothing(string options, string sentence, string form)
    {
        var run = CommandRun.Of(["scale", Picture("spider.jpg", 240), "--out", _folder.File("scaled"), .. options.Replace(" --", "\n--", StringComparison.Ordinal).Split('\n')]);

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain(sentence).And.Contain(form);
        Directory.Exists(_folder.File("scaled")).Should().BeFalse();
    }

    [Fact]
    public void Scale_without_a_scale_is_bad_usage() =>
        CommandRun.Of("scale", Picture("spider.jpg", 240), "--out", _folder.File("scaled")).ExitCode.Should().Be(2);

    [Fact]
    public void A_given_pixel_size_is_taken_with_its_unit() =>
        CommandRun.Of("scale", Picture("spider.png", 240), "--pixel-size", "5 um", "--out", _folder.File("scaled")).Output
            .Should().Contain("bar 500 µm, 5 µm per pixel", "a quarter of 400 pixels of 5 µm is 500 µm");

    /// <summary>
    /// The kit's camera is 36 mm and 8192 pixels wide, or 8192 of 4.39 µm; at half life size a pixel shows 8.79 µm, and three quarters of the picture crop
    /// nothing off a pixel.
    /// </summary>
    [Fact]
    public void Scale_takes_magnification_and_sensor_from_the_plan_of_a_kit_and_is_told_of_a_crop()
    {
        File.WriteAllText(_folder.File("kit.yaml"), """
            kit: Reed margin
            camera: {name: body R, sensor: 36 mm x 24 mm, pixels: 8192 x 5464}
            lenses:
              - {name: reed 50, focal-length: 50 mm, focusing: unit, aperture: f/2.8 to f/22, largest-magnification: 1:2, magnifications: [1:2]}
            """);
        string[] start = ["scale", Picture("spider.jpg", 240), "--kit", _folder.File("kit.yaml"), "--framing", "reed 50 at 1:2", "--out", _folder.File("scaled")];

        var refused = CommandRun.Of(start);
        var cropped = CommandRun.Of([.. start, "--cropped"]);

        refused.ExitCode.Should().Be(2);
        refused.Error.Should().Contain("FLD321").And.Contain("8192 x 5464").And.Contain("--cropped");
        cropped.ExitCode.Should().Be(0, cropped.Error);
        cropped.Output.Should().Contain("8.789 µm per pixel ± ");
        File.ReadAllText(_folder.File("scaled/spider.jpg.xmp")).Should().Contain("Framing 'reed 50 at 1:2' of kit 'Reed margin'").And.Contain("Cropped.");
    }

    [Fact]
    public void A_framing_that_the_kit_does_not_have_is_answered_with_those_it_has()
    {
        var run = CommandRun.Of(
            "scale", Picture("spider.jpg", 240), "--kit", Repository.Kit("fen-edge.yaml"), "--framing", "reed 55 at 9:1", "--out", _folder.File("scaled"));

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("has no framing 'reed 55 at 9:1'").And.Contain("reed 55 at 1:");
    }

    /// <summary>A picture that carries a bar is printed with that one; the scale comes from its sidecar, and what cannot be shown is named.</summary>
    [Fact]
    public void A_scaled_copy_goes_onto_a_plate_by_its_sidecar_with_the_one_bar_it_has()
    {
        var log = _folder.File("field.log");
        var session = CommandRun.Of("log", "session", "--log", log, "--start", "2026-05-09T14:00:00+01:00").Output.Trim();
        var subject = CommandRun.Of("log", "subject", session, "--log", log, "--name", "Dolomedes").Output.Trim();
        CommandRun.Of("scale", Picture("spider.png", 240), "--pixel-size", "100 um", "--out", _folder.File("scaled")).ExitCode.Should().Be(0);
        CommandRun.Of("log", "frame", subject, _folder.File("scaled/spider.png"), "--log", log).ExitCode.Should().Be(0);
        CommandRun.Of("log", "frame", subject, Picture("moth.png", 240), "--log", log).ExitCode.Should().Be(0);

        var run = CommandRun.Of("log", "plates", "--log", log, "--pictures", _folder.File("scaled"), "--out", _folder.File("plates.pdf"));

        run.ExitCode.Should().Be(0, run.Error);
        run.Error.Should().Contain("Left out, no such file in the folder: moth.png.");
        using var document = PdfDocument.Open(File.ReadAllBytes(_folder.File("plates.pdf")));
        document.GetPage(1).Paths.Select(path => path.GetBoundingRectangle()!.Value).Should().NotContain(box => box.Height < 3, "the picture has its own bar");
        document.GetPage(1).Text.Should().Contain("2.15 times life size").And.Contain("moth.png");
    }

    [Fact]
    public void A_held_animal_at_its_limit_is_called_out_and_rings_by_its_exit_code()
    {
        var (log, clock) = (_folder.File("field.log"), new MovedClock());
        var session = CommandRun.At(clock, "log", "session", "--log", log).Output.Trim();
        var subject = CommandRun.At(clock, "log", "subject", session, "--log", log, "--name", "Dolomedes").Output.Trim();
        CommandRun.At(clock, "log", "hold", "start", subject, "--log", log, "--limit", "10 min").ExitCode.Should().Be(0);

        clock.Now += TimeSpan.FromMinutes(9.5);
        CommandRun.At(clock, "log", "hold", "status", "--log", log).ExitCode.Should().Be(0);
        clock.Now += TimeSpan.FromMinutes(0.5);
        var status = CommandRun.At(clock, "log", "hold", "status", "--log", log);

        status.ExitCode.Should().Be(1);
        status.Output.Should().Contain("held 10.0 min of 10 min: LET IT GO NOW");
    }

    [Fact]
    public void A_sessions_place_keeps_its_uncertainty_apart_from_its_height()
    {
        var log = _folder.File("field.log");
        CommandRun.Of("log", "session", "--log", log, "--latitude", "52.6", "--longitude", "-21.5", "--uncertainty-m", "30", "--elevation-m", "2").ExitCode.Should().Be(0);

        JsonDocument.Parse(CommandRun.Of("log", "list", "--log", log, "--json").Output).RootElement.GetProperty("sessions")[0]
            .GetProperty("coordinateUncertaintyM").GetDouble().Should().Be(30);
    }

    [Fact]
    public void Log_keeps_a_session_and_gives_it_back()
    {
        var log = _folder.File("field.log");
        var session = CommandRun.Of("log", "session", "--log", log, "--start", "2026-05-09T14:00:00+01:00", "--latitude", "52.6", "--longitude", "-21.5").Output.Trim();
        var subject = CommandRun.Of("log", "subject", session, "--log", log, "--name", "Dolomedes").Output.Trim();
        CommandRun.Of("log", "hold", "start", subject, "--log", log, "--limit", "10 min").ExitCode.Should().Be(0);
        CommandRun.Of("log", "hold", "status", "--log", log).Output.Should().Contain("Dolomedes").And.Contain("of 10 min");
        CommandRun.Of("log", "hold", "stop", subject, "--log", log).ExitCode.Should().Be(0);
        CommandRun.Of("log", "export", "--log", log, "--archive", _folder.File("fen.zip")).ExitCode.Should().Be(0);

        CommandRun.Of("log", "import", _folder.File("fen.zip"), "--log", _folder.File("other.log")).ExitCode.Should().Be(0);
        CommandRun.Of("log", "list", "--log", _folder.File("other.log")).Output.Should().Contain(session).And.Contain("Dolomedes");
    }

    [Fact]
    public void Log_refuses_a_bad_latitude_by_name()
    {
        var run = CommandRun.Of("log", "session", "--log", _folder.File("field.log"), "--latitude", "91", "--longitude", "0");

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("decimalLatitude");
    }

    /// <summary>
    /// 400 pixels of 100 µm are 40 mm in life. A4 less 15 mm margins and an 8 mm gap leaves places 86 mm wide, so the print is 2.15 times life
    /// size and the bar of 1 cm, the longest round one within a quarter of the width, is 21.5 mm long; a unit of PDF is 1/72 in (ISO 32000-1).
    /// </summary>
    [Fact]
    public void Plates_are_printed_from_the_log_at_true_scale()
    {
        var log = _folder.File("field.log");
        var session = CommandRun.Of("log", "session", "--log", log, "--start", "2026-05-09T14:00:00+01:00", "--locality", "Wisplow Fen").Output.Trim();
        var subject = CommandRun.Of("log", "subject", session, "--log", log, "--name", "Dolomedes", "--qualifier", "cf.").Output.Trim();
        CommandRun.Of("log", "frame", subject, Picture("spider.png", 240), "--pixel-size", "100 um", "--log", log).ExitCode.Should().Be(0);

        var run = CommandRun.Of("log", "plates", "--log", log, "--pictures", _folder.Path, "--out", _folder.File("plates.pdf"));

        run.ExitCode.Should().Be(0, run.Error);
        using var document = PdfDocument.Open(File.ReadAllBytes(_folder.File("plates.pdf")));
        var bar = document.GetPage(1).Paths.Select(path => path.GetBoundingRectangle()!.Value).Single(box => box.Height < 3);
        bar.Width.Should().BeApproximately(21.5 * 72 / 25.4, 0.01);
        document.GetPage(1).GetImages().Single().BoundingBox.Width.Should().BeApproximately(86 * 72 / 25.4, 0.01);
        document.GetPage(1).Text.Should().Contain("Dolomedes").And.Contain("Wisplow").And.Contain("2.15 times life size");
    }

    [Fact]
    public void Plates_without_any_scaled_picture_are_refused()
    {
        CommandRun.Of("log", "session", "--log", _folder.File("field.log"));

        var run = CommandRun.Of("log", "plates", "--log", _folder.File("field.log"), "--pictures", _folder.Path, "--out", _folder.File("plates.pdf"));

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("no logged frame has both a scale and a picture");
    }

    [Fact]
    public void Calibrate_writes_a_correction_that_the_plan_uses_and_leaves_the_kit()
    {
        var kit = Kit();
        var before = File.ReadAllText(kit);
        var light = JsonDocument.Parse(CommandRun.Of("plan", kit, "--json").Output).RootElement.GetProperty("exposures")[0].GetProperty("lights")[0];
        var flash = light.GetProperty("flash").GetString();

        // The kit's flash below promises what its guide number says; the meter reads half a stop less than the plan's own lines give.
        var promised = light.GetProperty("lightBudget").EnumerateArray().Where(line => InBeam.Contains(line.GetProperty("item").GetString()))
            .Sum(line => line.GetProperty("stops").GetDouble());
        var reading = Math.Pow(2, promised - 0.5).ToString("0.####", System.Globalization.CultureInfo.InvariantCulture);
        File.WriteAllText(
            _folder.File("readings.csv"),
            $"name,kind,flash,power,distance,reading,uncertainty\nmeter,flash-meter,{flash},{light.GetProperty("power").GetString()},{light.GetProperty("distanceMm").GetDouble()} mm,{reading} lx·s,0.1 stop\n");

        var run = CommandRun.Of("calibrate", kit, "--readings", _folder.File("readings.csv"), "--date", "2026-05-09");

        // Prior 0.5 and reading 0.1 weigh 1 to 25: −0.5·25/26.
        run.Output.Should().Contain("-0.48 ± 0.10 stop");
        File.ReadAllText(kit).Should().Be(before);
        var plan = CommandRun.Of("plan", kit);
        plan.Error.Should().Contain("measured corrections of 2026-05-09");
        plan.Output.Should().Contain($"guide number of {flash}");
        JsonDocument.Parse(CommandRun.Of("plan", kit, "--json").Output).RootElement.GetProperty("correctedOn").GetString().Should().Be("2026-05-09");
        CommandRun.Of("sheets", kit, "--out", _folder.File("sheets")).ExitCode.Should().BeOneOf(0, 1);
        TextOf("sheets/plan-report.pdf").Should().Contain("Measured corrections").And.Contain("corrected 2026-05-09");
        TextOf("sheets/cards-A6.pdf").Should().Contain("corrected 2026-05-09");

        run.Error.Should().NotContain("takes the place of");
        CommandRun.Of("calibrate", kit, "--readings", _folder.File("readings.csv"), "--date", "2026-05-16")
            .Error.Should().Contain("takes the place of the correction of 2026-05-09").And.Contain("--history");
    }

    /// <summary>Codes 137 and 188 are a quarter and a half of saturation (IEC 61966-2-1), a stop apart like the two powers: both are as far off the plan.</summary>
    [Fact]
    public void Calibrate_takes_each_frame_at_its_own_power()
    {
        var run = CommandRun.Of(
            "calibrate", Kit(), "--frame", Picture("a.png", 137), "--power", "1/32", "--frame", Picture("b.png", 188), "--power", "1/16", "--framing", "reed 50 at 1:2", "--json");

        run.ExitCode.Should().Be(0, run.Error);
        var readings = JsonDocument.Parse(run.Output).RootElement.GetProperty("readings");
        var off = readings.EnumerateArray().Select(reading => reading.GetProperty("beforeStops").GetDouble()).ToList();
        off.Should().HaveCount(2);
        off[0].Should().BeApproximately(off[1], 0.02);
    }

    /// <summary>Full power promises 1591 lx·s at 1 m; every month a tenth of a stop less is 1591, 1484, 1385 and 1292.</summary>
    [Fact]
    public void Calibrate_history_tells_a_drift_and_what_to_read_next_and_writes_nothing()
    {
        var rows = new[] { ("2026-05-09", 1591), ("2026-06-08", 1484), ("2026-07-08", 1385), ("2026-08-07", 1292) }.Select(row => $"meter,flash-meter,sedge,1/1,1 m,{row.Item2} lx·s,{row.Item1}\n");
        File.WriteAllText(_folder.File("readings.csv"), "name,kind,flash,power,distance,reading,date\n" + string.Concat(rows));
        var kit = Kit();

        var run = CommandRun.Of("calibrate", kit, "--readings", _folder.File("readings.csv"), "--history");

        run.ExitCode.Should().Be(0, run.Error);
        run.Output.Should().Contain("DRIFTS: the light of flash 'sedge'").And.Contain("-0.30").And.Contain("read next time").And.Contain("power ladder with sedge").And.Contain("What to read next for the cards over sedge");
        File.Exists(_folder.File("kit.correction.yaml")).Should().BeFalse();
        var document = JsonDocument.Parse(CommandRun.Of("calibrate", kit, "--readings", _folder.File("readings.csv"), "--history", "--reach", "1/8", "--json").Output).RootElement;
        document.GetProperty("drifts")[0].GetProperty("significant").GetBoolean().Should().BeTrue();
        document.GetProperty("reachStops").GetDouble().Should().Be(0.125);
        var next = document.GetProperty("nextReadings").EnumerateArray().ToList();
        next.Select(reading => reading.GetProperty("marginUncertaintyAfterStops").GetDouble()).Should().BeInAscendingOrder();
        next[0].GetProperty("ladder").GetBoolean().Should().BeTrue("a ladder is surer than a frame");
        next.Single(reading => reading.GetProperty("kind").GetString() == "flash-meter" && reading.GetProperty("flash").GetString() == "sedge").GetProperty("taken").GetInt32().Should().Be(1, "what drifts is known from the last outing");
    }

    [Fact]
    public void How_sure_the_margin_is_to_be_is_asked_of_a_history_alone()
    {
        var run = CommandRun.Of("calibrate", Kit(), "--reach", "1/6");

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("--reach is about what to read next; add --history.");
    }

    [Theory]
    [InlineData(0.004, "0.00")]
    [InlineData(-0.004, "0.00")]
    [InlineData(-0.006, "-0.01")]
    [InlineData(0.5, "+0.50")]
    public void What_rounds_to_nothing_has_no_sign(double stops, string printed) => Rounded.WithSign(stops, 2).Should().Be(printed);

    [Theory]
    [InlineData(0.9996, "over 99.9 %")]
    [InlineData(0.996, "99.6 %")]
    [InlineData(1, "100 %")]
    [InlineData(0.0004, "under 0.1 %")]
    [InlineData(0.42, "42 %")]
    public void A_share_is_all_or_nothing_only_where_it_is(double share, string printed) => Rounded.Percent(share).Should().Be(printed);

    [Theory]
    [InlineData("name,kind,power,reading\na,flash-meter,1/1,much\n", "readings.csv(2)")]
    [InlineData("name,kind,power,reding\n", "Did you mean 'reading'?")]
    public void Calibrate_says_where_a_table_is_wrong(string table, string said)
    {
        var kit = Kit();
        File.WriteAllText(_folder.File("readings.csv"), table);

        var run = CommandRun.Of("calibrate", kit, "--readings", _folder.File("readings.csv"));

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain(said);
    }

    /// <summary>EV 30 is thirty thousand times sunlight; the kit's half a stop allows two stops more than planned.</summary>
    [Fact]
    public void Calibrate_writes_nothing_when_no_reading_is_possible()
    {
        var kit = Kit();
        File.WriteAllText(_folder.File("readings.csv"), "name,kind,flash,power,distance,reading\nslip,flash-meter,sedge,1/1,1 m,EV 30\n");

        var run = CommandRun.Of("calibrate", kit, "--readings", _folder.File("readings.csv"));

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("slip: FLD216").And.Contain("stops from the plan");
        File.Exists(_folder.File("kit.correction.yaml")).Should().BeFalse();
    }

    /// <summary>A guide number of 30 m outdoors is 2.5·900/√2 = 1591 lx·s at 1 m; half a stop less is 1125 lx·s.</summary>
    [Fact]
    public void Calibrate_names_what_it_leaves_out_and_shows_old_and_new_powers()
    {
        var kit = Kit();
        File.WriteAllText(
            _folder.File("readings.csv"),
            "name,kind,flash,power,distance,reading\nfirst,flash-meter,sedge,1/1,1 m,1125 lx·s\nsecond,flash-meter,sedge,1/1,1 m,1125 lx·s\nslip,flash-meter,sedge,1/1,1 m,EV 30\n");

        var run = CommandRun.Of("calibrate", kit, "--readings", _folder.File("readings.csv"));

        run.ExitCode.Should().Be(0, run.Error);
        run.Output.Should().Contain("LEFT OUT").And.MatchRegex(@"white, reed 50 at 1:2 +sedge 1/[0-9.]+ -> 1/[0-9.]+");
        File.ReadAllText(_folder.File("kit.correction.yaml")).Should().Contain("slip");
    }

    [Theory]
    [InlineData("flashes: [{flash: sedge, light: {stops: 0.1, plus-minus: 1e300, before: 30, after: 31}}]")]
    [InlineData("x: &a [*a, *a]")]
    [InlineData("light: {af # guide number in m")]
    public void A_damaged_correction_file_is_told_and_left_alone(string entry)
    {
        var kit = Kit();
        File.WriteAllText(_folder.File("kit.correction.yaml"), $"correction-of: Reed margin\ndate: 2026-05-09\n{entry}\n");

        var run = CommandRun.Of("plan", kit);

        run.Error.Should().Contain("FLD211").And.Contain("not used").And.NotContain("   at ");
        run.Output.Should().NotBeEmpty();
    }

    [Fact]
    public void A_kit_without_a_file_has_no_place_for_corrections()
    {
        var run = CommandRun.Of("calibrate", "-", "--readings", "readings.csv");

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("name the file").And.NotContain("wrote");
    }

    [Fact]
    public void A_table_without_end_is_not_read_to_its_end()
    {
        File.WriteAllText(_folder.File("readings.csv"), new string('x', 3_000_000));

        var run = CommandRun.Of("calibrate", Kit(), "--readings", _folder.File("readings.csv"));

        run.ExitCode.Should().Be(3);
        run.Error.Should().Contain("larger than 1024 kB");
    }

    [Fact]
    public void Calibrate_without_a_kit_is_file_trouble() =>
        CommandRun.Of("calibrate", _folder.File("missing.yaml"), "--readings", "readings.csv").ExitCode.Should().Be(3);

    [Fact]
    public void Photo_advises_from_the_kits_plan()
    {
        // Code 240 is 0.871 of saturation on the sRGB curve (IEC 61966-2-1): 0.2 stop under, a third in clicks.
        var run = CommandRun.Of(
            "photo", Picture("panel.png", 240), "--bare", "--kit", DemoKit, "--framing", "reed 55 at 1:2", "--power", "1/8", "--target", "0 stop", "--json");

        run.ExitCode.Should().Be(0, run.Error);
        var frame = JsonDocument.Parse(run.Output).RootElement.GetProperty("frames")[0];
        frame.GetProperty("advice")[0].GetString().Should().StartWith("Flash below to 1/6.4 (1/8 + 1/3): darkest +0.1");

        frame.GetProperty("promisedBrightestStops").GetDouble().Should().BeLessThan(frame.GetProperty("veilAllowsStops").GetDouble());
    }

    /// <summary>A stop more asks for 30·2^(−1/2) = 21.2 cm by the square law; close by, the corners gain less than that, so it must come closer still.</summary>
    [Fact]
    public void Photo_offers_the_place_where_the_power_can_stay()
    {
        var run = CommandRun.Of("photo", Picture("panel.png", 188), "--bare", "--kit", Kit(), "--framing", "reed 50 at 1:2", "--power", "1/16", "--target", "0 stop", "--json");

        run.ExitCode.Should().Be(0, run.Error);
        var frame = JsonDocument.Parse(run.Output).RootElement.GetProperty("frames")[0];
        frame.GetProperty("newDistanceMm").GetDouble().Should().BeInRange(100, 212);
        frame.GetProperty("advice")[1].GetString().Should().StartWith("Or: Flash below nearer, to ");
    }

    [Theory]
    [InlineData("", "reed 50 at 1:2")]
    [InlineData("reed 50 at 1:3", "Did you mean")]
    public void Photo_asks_which_framing(string framing, string said)
    {
        var run = CommandRun.Of("photo", Picture("panel.png", 188), "--bare", "--kit", Kit(), "--framing", framing);

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain(said);
    }

    [Fact]
    public void Photo_of_no_white_background_says_so_and_advises_nothing()
    {
        var run = CommandRun.Of("photo", Picture("dusk.png", 40), "--power", "1/16", "--distance", "30 cm");

        run.Output.Should().Contain("DOUBTFUL").And.Contain("near white").And.NotContain("Lower flash up").And.NotContain("% of the frame");
    }

    /// <summary>Codes 188, 137 and 99 fall by a stop each (IEC 61966-2-1) while the powers named rise.</summary>
    [Fact]
    public void A_reversed_ladder_gets_no_advice_but_the_order_that_fits()
    {
        var run = CommandRun.Of("photo", Picture("a.png", 188), Picture("b.png", 137), Picture("c.png", 99), "--ladder", "1/32", "--ladder", "1/16", "--ladder", "1/8");

        run.ExitCode.Should().Be(2);
        run.Output.Should().BeEmpty();
        run.Error.Should().Contain("reversed").And.Contain("c.png 1/32, b.png 1/16, a.png 1/8");
    }

    [Fact]
    public void A_ladder_takes_its_powers_from_the_names_of_its_files()
    {
        var run = CommandRun.Of("photo", Picture("panel-1-8.png", 188), Picture("panel-1-32.png", 99), Picture("panel-1-16.png", 137), "--ladder", "names", "--json");

        run.ExitCode.Should().Be(0, run.Error);
        JsonDocument.Parse(run.Output).RootElement.GetProperty("cells")[0].GetProperty("whiteMarginStops").GetDouble().Should().BeApproximately(-1, 0.03);
        CommandRun.Of("photo", Picture("panel.png", 188), Picture("panel-1-32.png", 99), Picture("panel-1-16.png", 137), "--ladder", "names").Error.Should().Contain("panel.png: FLD107");
    }

    [Fact]
    public void A_ladders_text_says_the_verdict_first_then_what_to_turn_then_shows_a_picture()
    {
        var run = CommandRun.Of("photo", Picture("a.png", 99), Picture("b.png", 137), Picture("c.png", 188), "--ladder", "1/32", "--ladder", "1/16", "--ladder", "1/8");

        var lines = run.Output.Split(Environment.NewLine);
        lines[0].Should().StartWith("NOT WHITE at 1/8").And.Contain("1.0 stop under clipping");
        lines[1].Should().StartWith("Lower flash up 1 1/3 stops");
        lines.Count(line => line.Trim() == new string('-', 48) || line.Trim() == new string('#', 48)).Should().Be(16, "24 by 16 cells, two characters wide, as no number but the verdict's is printed");
    }

    /// <summary>The pictures are flat and far enough apart for the standard curve to be found, which is then kept beside the kit.</summary>
    [Fact]
    public void A_tone_curve_is_kept_beside_the_kit_and_used_for_later_frames()
    {
        var kit = Kit();
        var run = CommandRun.Of(
            "photo", Picture("a.png", 99), Picture("b.png", 137), Picture("c.png", 188), "--ladder", "1/32", "--ladder", "1/16", "--ladder", "1/8", "--kit", kit, "--framing", "reed 50 at 1:2", "--learn-curve");

        run.ExitCode.Should().Be(0, run.Error);
        File.ReadAllText(_folder.File("kit.correction.yaml")).Should().Contain("tone-curve:");
        CommandRun.Of("plan", kit).Error.Should().NotContain("measured corrections", "a tone curve corrects no figure of the kit");
        CommandRun.Of("photo", Picture("panel.png", 188), "--bare", "--kit", kit, "--framing", "reed 50 at 1:2").Output.Should().Contain("the standard one, as a ladder of this camera found");
    }

    [Fact]
    public void A_ladder_whose_framing_is_not_told_keeps_no_tone_curve()
    {
        var run = CommandRun.Of(
            "photo", Picture("a.png", 99), Picture("b.png", 137), Picture("c.png", 188), "--ladder", "1/32,1/16,1/8", "--kit", Kit(), "--framing", "reed 50 at 3:1", "--learn-curve");

        run.ExitCode.Should().Be(2);
        File.Exists(_folder.File("kit.correction.yaml")).Should().BeFalse("a command that is refused writes nothing");
    }

    [Fact]
    public void A_power_among_the_pictures_is_told_from_a_missing_file()
    {
        var run = CommandRun.Of("photo", Picture("a.png", 99), Picture("b.png", 137), Picture("c.png", 188), "--ladder", "1/32", "1/16", "1/8");

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("'1/16' is a power and no picture").And.Contain("--ladder 1/32,1/16,1/8");
    }

    [Fact]
    public void A_power_alone_is_enough_to_be_told_what_to_turn_it_to()
    {
        CommandRun.Of("photo", Picture("panel.png", 188), "--bare", "--power", "1/16").Output.Should().Contain("Lower flash up 1 1/3 stops").And.NotContain("closer");
        CommandRun.Of("photo", Picture("panel.png", 188), "--bare").Output.Should().Contain("say how the lower flash was set: --power");
    }

    /// <summary>A meter sees the softbox of one set-up and the dome of another: 2.8 stops of light between a bare flash and a boxed one would pass for the flash's own.</summary>
    [Fact]
    public void A_meter_before_a_flash_that_wears_different_things_must_say_which()
    {
        File.Copy(Repository.Kit("fen-edge.yaml"), _folder.File("fen.yaml"));
        File.WriteAllText(_folder.File("readings.csv"), "name,kind,flash,power,distance,reading\nmeter,flash-meter,willow,1/1,2 m,f/11\n");

        var run = CommandRun.Of("calibrate", _folder.File("fen.yaml"), "--readings", _folder.File("readings.csv"));

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("Which set-up?").And.Contain("white (small softbox), habitat by day (dome)");
    }

    [Fact]
    public void A_kept_tone_curve_says_what_a_frame_misses()
    {
        var kit = Kit();
        File.WriteAllText(
            _folder.File("kit.correction.yaml"),
            "correction-of: Reed margin\ndate: 2026-05-09\ntone-curve:\n  camera: \"\"\n  plus-minus: 0.05\n  standard: [0, 1, 3]\n  light: [0, 2, 5]\n");

        // Code 188 shows one stop under, which this camera makes of light two stops under.
        var run = CommandRun.Of("photo", Picture("panel.png", 188), "--bare", "--kit", kit, "--framing", "reed 50 at 1:2");

        run.ExitCode.Should().Be(0, run.Error);
        run.Output.Should().Contain("2.0 stops at the darkest").And.Contain("the camera's own, kept");
    }

    [Fact]
    public void A_white_frame_says_which_frame_would_tell_more()
    {
        var run = CommandRun.Of("photo", Picture("white.png", 255), "--bare", "--power", "1/8", "--distance", "30 cm");

        run.Output.Should().Contain("how far over clipping cannot be seen").And.Contain("at 1/64").And.NotContain("leave the lower flash");
    }

    [Fact]
    public void A_ladder_with_a_kit_is_drawn_beside_the_plan()
    {
        var run = CommandRun.Of(
            "photo", Picture("a.png", 99), Picture("b.png", 137), Picture("c.png", 188), "--ladder", "1/32", "--ladder", "1/16", "--ladder", "1/8",
            "--kit", Kit(), "--framing", "reed 50 at 1:2", "--json", "--out", _folder.File("maps"));

        run.ExitCode.Should().Be(0, run.Error);
        var root = JsonDocument.Parse(run.Output).RootElement;
        var cells = root.GetProperty("cells");
        for (var i = 0; i < cells.GetArrayLength(); i += 37)
        {
            (cells[i].GetProperty("whiteMarginStops").GetDouble() - root.GetProperty("plannedStops")[i].GetDouble())
                .Should().BeApproximately(root.GetProperty("differenceStops")[i].GetDouble(), 1e-4);
        }

        File.ReadAllText(_folder.File("maps/white-margin.svg")).Should().Contain("Measured less planned");
    }

    private string TextOf(string file)
    {
        using var document = PdfDocument.Open(File.ReadAllBytes(_folder.File(file)));
        return string.Join(' ', document.GetPages().SelectMany(page => page.GetWords()).Select(word => word.Text));
    }

    private const string SmallKit =
        """
        kit: Reed margin
        camera: {name: body R, sensor: 36 mm x 24 mm, pixels: 6000 x 4000}
        lenses:
          - {name: reed 50, focal-length: 50 mm, focusing: unit, aperture: f/2.8 to f/22, largest-magnification: 1:2, magnifications: [1:2, 1:4]}
        flashes:
          - {name: sedge, guide-number: 30 m @ ISO 100, head: 70 mm x 40 mm, cell: aa-nimh-2000, mass: 300 g}
          - {name: willow, guide-number: 36 m @ ISO 100, cell: aa-nimh-2000, mass: 300 g}
        panel: {width: 600 mm, depth: 400 mm, skirts: yes, transmittance: 0.5}
        frame: {kind: table, height: 500 mm, pipe: pvc-u-20x1.5, fittings: pvc-u-20}
        subjects: [{name: moth, group: flying-insects, length: 40 mm}]
        set-ups:
          - name: white
            kind: white-background
            aperture: f/16
            iso: 400
            camera-pitch: 60°
            target-white-margin: 1 stop
            lights: [{flash: sedge, role: below, distance: 30 cm}, {flash: willow, role: above, distance: 40 cm}]
        """;

    private static string DemoKit => Repository.Kit("fen-edge.yaml");

    private static readonly string[] InBeam = ["Guide number", "Power", "Outdoor correction", "Modifier", "Distance", "Head close by"];

    private string Kit()
    {
        File.WriteAllText(_folder.File("kit.yaml"), SmallKit);
        return _folder.File("kit.yaml");
    }

    private string Picture(string name, byte code) => _folder.GreyPicture(name, 400, 300, code);
}
