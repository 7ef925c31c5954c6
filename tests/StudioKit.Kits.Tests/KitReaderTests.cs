using StudioKit.Kits.Studio;

namespace StudioKit.Kits.Tests;

public sealed class KitReaderTests
{
    private const string Smallest = """
        kit: Small
        camera:
          name: body
          sensor: 36 mm x 24 mm
        lenses:
          - name: reed
            focal-length: 55 mm

        """;

    [Fact]
    public void The_smallest_kit_is_a_name_a_camera_and_a_lens()
    {
        var result = Parse(Smallest);

        result.Diagnostics.Should().BeEmpty();
        result.Kit!.Lenses.Should().ContainSingle().Which.FocalLength.Millimeters.Should().Be(55);
        result.Kit.Panel.Should().Be(new PanelSpec());
    }

    [Fact]
    public void Every_default_used_is_told_with_its_value()
    {
        var defaults = Parse(Smallest).Defaults.ToDictionary(used => used.Path, used => used.Value);

        // The values are the records' own defaults, as written beside their members.
        defaults["panel.thickness"].Should().Be("3 mm");
        defaults["panel.thermal-expansion"].Should().Be("7.2e-5 /K");
        defaults["camera.flash-sync"].Should().Be("1/200 s");
        defaults["camera.iso"].Should().Be("100 to 3200");
        defaults["lenses[0].aperture"].Should().Be("f/2.8 to f/22");
        defaults["frame.pipe.youngs-modulus"].Should().Be("2.9 GPa");
        defaults["frame.fittings.elbow.take-off"].Should().Be("11 mm");
        defaults["site.outdoor-correction"].Should().Be("-0.5 stop");
        defaults.Should().NotContainKey("camera.sensor");
    }

    [Fact]
    public void What_the_kit_says_is_no_default() =>
        Parse(Smallest + "panel:\n  thickness: 4 mm\n").Defaults.Should().NotContain(used => used.Path == "panel.thickness");

    [Fact]
    public void A_default_that_is_a_third_of_a_stop_is_reported_as_one() =>
        Parse(Smallest + "set-ups:\n  - {name: dusk, kind: low-light-fill}\n").Defaults
            .Should().Contain(used => used.Path == "set-ups[0].target-white-margin" && used.Value == "1/3 stop");

    [Theory]
    [InlineData("flashes:\n  - {name: sedge, guide-number: 30 m ± 10 %}", "flashes[0].guide-number", 0.1, UncertaintyKind.Relative)]
    [InlineData("flashes:\n  - {name: sedge, guide-number: 30 m ± 1/3 stop}", "flashes[0].guide-number", 1.0 / 3, UncertaintyKind.InStops)]
    [InlineData("panel:\n  thickness: 3 mm +/- 0.3 mm", "panel.thickness", 0.0003, UncertaintyKind.Absolute)]
    [InlineData("panel:\n  transmittance: 0.5 ± 0.05", "panel.transmittance", 0.05, UncertaintyKind.Absolute)]
    [InlineData("site:\n  ambient: EV 12 ± 1", "site.ambient", 1, UncertaintyKind.InStops)]
    public void An_uncertainty_is_kept_beside_its_value(string yaml, string path, double amount, UncertaintyKind kind)
    {
        var result = Parse(Smallest + yaml);

        result.Diagnostics.Should().BeEmpty();
        result.Uncertainties[path].Kind.Should().Be(kind);
        result.Uncertainties[path].Amount.Should().BeApproximately(amount, amount * 1e-12);
    }

    [Fact]
    public void A_part_is_overridden_field_by_field()
    {
        var kit = Parse(Smallest + "frame:\n  pipe: {part: pvc-u-25x1.9, mass-per-length: 130 g/m}\n").Kit!;

        // EN ISO 1452-2: dn 25, wall 1.9 mm at 16 bar.
        kit.Frame.Pipe.OutsideDiameter.Millimeters.Should().Be(25);
        kit.Frame.Pipe.Wall.Millimeters.Should().Be(1.9);
        kit.Frame.Pipe.MassPerLength!.Value.KilogramsPerMeter.Should().BeApproximately(0.13, 1e-12);
    }

    [Fact]
    public void One_fitting_of_a_family_can_be_measured_anew()
    {
        var fittings = Parse(Smallest + "frame:\n  fittings: {part: pvc-u-25, elbow: {mass: 20 g}}\n").Kit!.Frame.Fittings;

        fittings.Elbow.Mass.Grams.Should().Be(20);
        fittings.Elbow.TakeOff.Millimeters.Should().Be(13.5);
        fittings.Name.Should().Be("25 mm PVC-U fittings");
    }

    [Fact]
    public void A_part_may_build_on_another_and_the_nearer_one_wins()
    {
        var parts = PartsLibrary.FromTexts(new Dictionary<string, string>
        {
            ["flashes/marsh"] = "source: invented\nname: marsh\nguide-number: 30 m\ncell: aa-nimh-2000\n",
            ["flashes/bog"] = "source: invented\npart: marsh\nname: bog\ncell: {capacity: 1900 mAh}\n",
        });

        var flash = KitReader.Parse(Smallest + "flashes: [bog]\n", "kit.yaml", parts).Kit!.Flashes[0];

        flash.Name.Should().Be("bog");
        flash.GuideNumber.AtIso100.Meters.Should().Be(30);
        flash.Cell!.Capacity.MilliampereHours.Should().Be(1900);
        flash.Cell.Voltage.Volts.Should().Be(1.2);
    }

    [Fact]
    public void A_wrong_override_is_shown_in_the_kit_and_a_wrong_part_in_the_part()
    {
        var parts = PartsLibrary.FromTexts(new Dictionary<string, string> { ["pipes/reed"] = "source: invented\nwall: 1 kg\n" });

        var result = KitReader.Parse(Smallest + "frame:\n  pipe: {part: reed, density: 5 mm}\n", "kit.yaml", parts);

        result.Diagnostics.Select(fault => (fault.File, fault.Line)).Should().Equal(("kit.yaml", 9), ("parts/pipes/reed.yaml", 2));
    }

    [Fact]
    public void The_content_hash_sees_the_kit_and_its_parts_but_not_the_editor()
    {
        var text = Smallest + "frame:\n  pipe: reed\n";
        var thin = Parts("source: invented\nwall: 1 mm\n");
        var thick = Parts("source: invented\nwall: 2 mm\n");
        var hash = KitReader.Parse(text, "a.yaml", thin).ContentHash;

        hash.Should().MatchRegex("^[0-9a-f]{12}$");
        KitReader.Parse("\uFEFF" + text.Replace("\n", "\r\n", StringComparison.Ordinal), "b.yaml", thin).ContentHash.Should().Be(hash);
        KitReader.Parse(text, "a.yaml", thick).ContentHash.Should().NotBe(hash);
        KitReader.Parse(text + "# a note\n", "a.yaml", thin).ContentHash.Should().NotBe(hash);

        static PartsLibrary Parts(string pipe) => PartsLibrary.FromTexts(new Dictionary<string, string> { ["pipes/reed"] = pipe });
    }

    [Fact]
    public void Lists_of_one_need_no_brackets()
    {
        var kit = Parse(Smallest + "flashes:\n  - {name: sedge, guide-number: 30 m}\nset-ups:\n  - name: day\n    kind: daylight-fill\n    camera-pitch: 20°\n    aperture: best\n    lights:\n      - {flash: sedge, role: fill, distance: 1 m}\n").Kit!;

        kit.SetUps[0].CameraPitches.Should().ContainSingle().Which.Degrees.Should().Be(20);
        kit.SetUps[0].Aperture.Should().BeNull();
    }

    [Fact]
    public void A_white_background_without_a_flash_above_is_used_but_warned_of()
    {
        var result = Parse(Smallest + "flashes:\n  - {name: sedge, guide-number: 30 m}\nset-ups:\n  - name: white\n    kind: white-background\n    lights:\n      - {flash: sedge, role: below, distance: 45 cm}\n");

        result.Kit.Should().NotBeNull();
        result.Diagnostics.Should().ContainSingle().Which.Severity.Should().Be(DiagnosticSeverity.Warning);
    }

    [Fact]
    public void Every_part_of_the_library_can_be_used_and_says_where_it_comes_from()
    {
        var count = 0;
        foreach (var (kind, yaml) in new[]
        {
            ("pipes", "frame:\n  pipe: {0}\n"), ("fittings", "frame:\n  fittings: {0}\n"), ("sheets", "panel: {0}\n"),
            ("cells", "flashes:\n  - {{name: sedge, guide-number: 30 m, cell: {0}}}\n"),
        })
        {
            foreach (var name in PartsLibrary.Embedded.Names(kind))
            {
                count++;
                Parse(Smallest + string.Format(System.Globalization.CultureInfo.InvariantCulture, yaml, name)).Diagnostics.Should().BeEmpty(name);
            }
        }

        foreach (var name in PartsLibrary.Embedded.Names("cameras"))
        {
            count++;
            Parse($"kit: K\ncamera: {{part: {name}, name: body}}\nlenses:\n  - {{name: reed, focal-length: 55 mm}}\n").Diagnostics.Should().BeEmpty(name);
        }

        count.Should().BeGreaterThan(30);
    }

    // EN ISO 1452-2 and ASTM D1785, as a distributor and a standard table print them.
    [Theory]
    [InlineData("pvc-u-20x1.5", 20, 1.5)]
    [InlineData("pvc-u-32x2.4", 32, 2.4)]
    [InlineData("pvc-schedule-40-half-inch", 21.34, 2.77)]
    [InlineData("pvc-schedule-40-three-quarter-inch", 26.67, 2.87)]
    [InlineData("pvc-schedule-40-one-inch", 33.40, 3.38)]
    [InlineData("pvc-schedule-40-one-and-a-quarter-inch", 42.16, 3.56)]
    public void Pipes_have_the_standards_dimensions(string part, double outside, double wall)
    {
        var pipe = Parse(Smallest + $"frame:\n  pipe: {part}\n").Kit!.Frame.Pipe;

        pipe.OutsideDiameter.Millimeters.Should().BeApproximately(outside, 0.005);
        pipe.Wall.Millimeters.Should().BeApproximately(wall, 0.005);
    }

    [Theory]
    [InlineData("kit: {a, : b}")]
    [InlineData("kit: {name: x, : , length: 1}")]
    [InlineData("kit: {::}")]
    [InlineData("kit:\n  : name: x\n    y: z\n")]
    [InlineData("kit:\n  -:name: x\n    y: z\n")]
    public void A_stray_colon_never_makes_the_reader_throw(string yaml) => Parse(yaml).Kit.Should().BeNull();

    [Fact]
    public void A_file_of_too_many_lines_is_refused_before_it_is_parsed() =>
        Parse(new string('\n', 30_000)).Diagnostics.Should().ContainSingle().Which.Message.Should().Be("The file has too many lines.");

    [Fact]
    public void A_long_list_never_closed_is_a_fault_of_the_file() =>
        Parse("kit: [" + string.Concat(Enumerable.Repeat("x,\n", 300))).Diagnostics.Should().ContainSingle().Which.Code.Should().Be(DiagnosticCodes.Syntax);

    [Fact]
    public void No_text_makes_the_reader_throw() =>
        Gen.String[Gen.Char["kit:camera \n\n  -[]{}&*!|>'\"%@`#?,~0123456789mxf/.\t\r\u0000\u00e9\u2028"], 0, 200].Sample(text =>
        {
            _ = KitReader.Parse(text, "kit.yaml", PartsLibrary.Embedded).Diagnostics.Select(fault => fault.Format()).ToList();
        });

    [Fact]
    public void A_kit_with_any_one_letter_changed_never_makes_the_reader_throw()
    {
        var text = StarterBlocks.AllInUse;
        Gen.Int[0, text.Length - 1].Select(Gen.Char["\n :-{}[]&*#'\"%0x\t"]).Sample((at, letter) =>
        {
            _ = KitReader.Parse(text[..at] + letter + text[(at + 1)..], "kit.yaml", PartsLibrary.Embedded).Diagnostics.Select(fault => fault.Format()).ToList();
        });
    }

    private static KitReadResult Parse(string yaml) => KitReader.Parse(yaml, "kit.yaml", PartsLibrary.Embedded);
}
