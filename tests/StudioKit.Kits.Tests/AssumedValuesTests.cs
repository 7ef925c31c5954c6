using System.Text.Json;
using StudioKit.Physics.Structure;

namespace StudioKit.Kits.Tests;

/// <summary>Keys for what the checks would otherwise assume: each is read, stands in with a default that is told, refuses nonsense in its place, and is known to editors.</summary>
public sealed class AssumedValuesTests
{
    private const string Smallest = """
        kit: Small
        camera: {name: body, sensor: 36 mm x 24 mm}
        lenses:
          - {name: reed, focal-length: 55 mm}

        """;

    /// <summary>Section, key, text, value in SI; conversions by definition: g = 9.80665 m/s², 1 lb = 0.45359237 kg, 1° = π/180 rad, a Fahrenheit degree is 5/9 K.</summary>
    public static TheoryData<string, string, string, double> Written => new()
    {
        { "frame", "joint-stiffness", "80 N·m/rad", 80 },
        { "frame", "joint-stiffness", "2 Nm/°", 2 * 180 / Math.PI },
        { "frame", "foot-travel", "90 mm", 0.09 },
        { "panel", "elbow-load", "45 N", 45 },
        { "panel", "elbow-load", "5 kgf", 49.03325 },
        { "panel", "elbow-load", "10 lbf", 44.482216152605 },
        { "panel", "subject-in-box", "350 g", 0.35 },
        { "panel", "short-term-stress", "30 MPa", 30e6 },
        { "panel", "making", "extruded", (int)SheetMaking.Extruded },
        { "site", "ground-friction", "0.6", 0.6 },
        { "site", "sun-warming", "15 K", 15 },
        { "site", "sun-warming", "15 °C", 15 },
        { "site", "sun-warming", "27 °F", 15 },
        { "session", "longest-recycle", "2 s", 2 },
        { "flash", "energy", "75 J", 75 },
        { "flash", "energy", "0.02 Wh", 72 },
    };

    /// <summary>The values that the checks took before there were keys for them.</summary>
    public static TheoryData<string, string, string> Defaults => new()
    {
        { "frame", "joint-stiffness", "50 N·m/rad" },
        { "frame", "foot-travel", "120 mm" },
        { "panel", "elbow-load", "30 N" },
        { "panel", "subject-in-box", "200 g" },
        { "panel", "short-term-stress", "37 MPa" },
        { "panel", "making", "cast" },
        { "site", "ground-friction", "0.4" },
        { "site", "sun-warming", "10 K" },
    };

    /// <summary>Section, key, a text that is wrong for it, the code it is refused with.</summary>
    public static TheoryData<string, string, string, string> Wrong => new()
    {
        { "frame", "joint-stiffness", "50 N", DiagnosticCodes.UnreadableValue },
        { "frame", "joint-stiffness", "0.5 N·m/rad", DiagnosticCodes.OutOfRange },
        { "frame", "foot-travel", "2 m", DiagnosticCodes.OutOfRange },
        { "panel", "elbow-load", "30", DiagnosticCodes.UnreadableValue },
        { "panel", "elbow-load", "-1 N", DiagnosticCodes.OutOfRange },
        { "panel", "subject-in-box", "30 N", DiagnosticCodes.UnreadableValue },
        { "panel", "short-term-stress", "0 MPa", DiagnosticCodes.OutOfRange },
        { "panel", "making", "moulded", DiagnosticCodes.UnreadableValue },
        { "site", "ground-friction", "0", DiagnosticCodes.OutOfRange },
        { "site", "sun-warming", "-5 K", DiagnosticCodes.OutOfRange },
        { "site", "sun-warming", "10 mm", DiagnosticCodes.UnreadableValue },
        { "session", "longest-recycle", "0 s", DiagnosticCodes.OutOfRange },
        { "flash", "energy", "75 W", DiagnosticCodes.UnreadableValue },
    };

    [Theory]
    [MemberData(nameof(Written))]
    public void What_the_kit_says_takes_the_place_of_what_was_assumed(string section, string key, string text, double si)
    {
        var result = Parse(section, key, text);

        result.Diagnostics.Should().BeEmpty();
        Value(result.Kit!, key).Should().BeApproximately(si, Math.Abs(si) * 1e-12);
        result.Defaults.Should().NotContain(used => used.Path.EndsWith("." + key, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Defaults))]
    public void What_stands_in_is_told(string section, string key, string value) =>
        KitReader.Parse(Smallest, "kit.yaml", PartsLibrary.Embedded).Defaults.Should().Contain(used => used.Path == $"{section}.{key}" && used.Value == value);

    [Theory]
    [MemberData(nameof(Wrong))]
    public void Nonsense_is_refused_where_it_stands(string section, string key, string text, string code)
    {
        var fault = Parse(section, key, text).Diagnostics.Should().ContainSingle().Which;

        // Four lines of the smallest kit and the section's own come before; two spaces, the key, a colon and a space stand before the value.
        fault.Code.Should().Be(code);
        fault.Line.Should().Be(6);
        fault.Column.Should().Be(section == "flash" ? "  - {name: sedge, guide-number: 30 m, energy: ".Length + 1 : key.Length + 5);
    }

    [Theory]
    [MemberData(nameof(Defaults))]
    public void Editors_know_the_key_and_what_stands_in(string section, string key, string value) =>
        Described(section, key).GetProperty("default").GetString().Should().Be(value);

    [Theory]
    [InlineData("session", "longest-recycle")]
    [InlineData("flash", "energy")]
    public void Editors_know_the_key_that_nothing_stands_in_for(string section, string key) =>
        Described(section, key).TryGetProperty("default", out _).Should().BeFalse();

    [Fact]
    public void A_part_of_the_library_brings_its_making_and_strength_along()
    {
        // Polycarbonate sheet is extruded (common practice, no source).
        var panel = KitReader.Parse(Smallest + "panel: opal-polycarbonate-3\n", "kit.yaml", PartsLibrary.Embedded).Kit!.Panel;

        panel.Making.Should().Be(SheetMaking.Extruded);
        panel.ShortTermStress.Should().BeLessThan(new Studio.PanelSpec().ShortTermStress);
    }

    private static KitReadResult Parse(string section, string key, string text) => KitReader.Parse(
        Smallest + (section == "flash" ? $"flashes:\n  - {{name: sedge, guide-number: 30 m, {key}: {text}}}\n" : $"{section}:\n  {key}: {text}\n"), "kit.yaml", PartsLibrary.Embedded);

    private static double Value(KitSpec kit, string key) => key switch
    {
        "joint-stiffness" => kit.Frame.JointStiffness.NewtonMetersPerRadian,
        "foot-travel" => kit.Frame.FootTravel.Meters,
        "elbow-load" => kit.Panel.ElbowLoad.Newtons,
        "subject-in-box" => kit.Panel.SubjectInBox.Kilograms,
        "short-term-stress" => kit.Panel.ShortTermStress.Pascals,
        "making" => (int)kit.Panel.Making,
        "ground-friction" => kit.Site.GroundFriction,
        "sun-warming" => kit.Site.SunWarming.Kelvins,
        "longest-recycle" => kit.Session.LongestRecycle!.Value.Seconds,
        _ => kit.Flashes[0].Energy!.Value.Joules,
    };

    private static JsonElement Described(string section, string key)
    {
        using var schema = JsonDocument.Parse(KitSchema.Write());
        return schema.RootElement.GetProperty("$defs").GetProperty(section).GetProperty("properties").GetProperty(key).Clone();
    }
}
