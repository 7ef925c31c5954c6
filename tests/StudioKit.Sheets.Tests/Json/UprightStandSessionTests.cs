using StudioKit.Kits;
using StudioKit.Planning;

namespace StudioKit.Sheets.Tests.Json;

/// <summary>Every key that says what holds an upright sheet changes the plan, and a session never shows what was planned before.</summary>
public sealed class UprightStandSessionTests
{
    // Its lens comes to no framing, so that nothing is lit: what holds the sheets is planned all the same.
    private const string Kit = """
        kit: Reed bed
        camera: {name: body, sensor: 36 mm x 24 mm}
        lenses:
          - {name: reed 60, focal-length: 60 mm, magnifications: [10:1]}
        flashes:
          - {name: sedge, guide-number: 36 m}
          - {name: willow, guide-number: 36 m}
        panel: {width: 500 mm, depth: 400 mm}
        site: {wind: 3 m/s, temperature: 24 °C}
        uprights:
          - name: staked
            width: 500 mm
            height: 400 mm
            over-ground: 10 cm
            lean: 10°
            stake-depth: 25 cm
            stake-hold: 4 kg
            cord-pegs: 4
            peg-hold: 3 kg
            sheet: {thickness: 3 mm}
          - {name: footed, carrier: feet, width: 400 mm, height: 300 mm, foot-length: 50 cm, ballast: 2 kg}
          - {name: held, carrier: frame, width: 300 mm, height: 250 mm}
        set-ups:
          - name: where it grows
            kind: white-background
            upright: staked
            background-distance: 30 cm
            lights: [{flash: sedge, role: behind, distance: 30 cm}, {flash: willow, role: key, distance: 40 cm}]
          - name: on the path
            kind: white-background
            upright: footed
            lights: [{flash: sedge, role: behind, distance: 30 cm}, {flash: willow, role: key, distance: 40 cm}]
          - name: level
            kind: white-background
            upright: held
            lights: [{flash: sedge, role: behind, distance: 30 cm}, {flash: willow, role: above, distance: 40 cm}, {flash: willow, role: below, distance: 30 cm}]

        """;

    private static readonly (string From, string To)[] Changes =
    [
        ("carrier: feet, width: 400 mm, height: 300 mm, foot-length: 50 cm, ballast: 2 kg", "carrier: stakes, width: 400 mm, height: 300 mm, over-ground: 4 cm"),
        ("width: 500 mm\n", "width: 520 mm\n"),
        ("height: 400 mm\n", "height: 420 mm\n"),
        ("over-ground: 10 cm", "over-ground: 12 cm"),
        ("lean: 10°", "lean: 15°"),
        ("stake-depth: 25 cm", "stake-depth: 30 cm"),
        ("stake-hold: 4 kg", "stake-hold: 5 kg"),
        ("cord-pegs: 4", "cord-pegs: 8"),
        ("peg-hold: 3 kg", "peg-hold: 4 kg"),
        ("foot-length: 50 cm", "foot-length: 60 cm"),
        ("ballast: 2 kg", "ballast: 3 kg"),
        ("background-distance: 30 cm", "background-distance: 25 cm"),
        ("{thickness: 3 mm}", "{thickness: 4 mm}"),
        ("{thickness: 3 mm}", "{thickness: 3 mm, density: 1300 kg/m³}"),
        ("{thickness: 3 mm}", "{thickness: 3 mm, youngs-modulus: 2.5 GPa}"),
        ("{thickness: 3 mm}", "{thickness: 3 mm, poisson-ratio: 0.3}"),
        ("{thickness: 3 mm}", "{thickness: 3 mm, long-term-stress: 4 MPa}"),
        ("{thickness: 3 mm}", "{thickness: 3 mm, short-term-stress: 30 MPa}"),
        ("{thickness: 3 mm}", "{thickness: 3 mm, making: extruded}"),
        ("{thickness: 3 mm}", "{thickness: 3 mm, thermal-expansion: 9e-5 /K}"),
        ("{thickness: 3 mm}", "{thickness: 3 mm, keep-direction: yes}"),
        ("{thickness: 3 mm}", "{thickness: 3 mm, mass: 800 g}"),
        ("{thickness: 3 mm}", "{thickness: 3 mm, material: frosted acrylic}"),
        ("{thickness: 3 mm}", "{thickness: 3 mm, material: frosted acrylic, harmed-by: [alkalis]}"),
        ("wind: 3 m/s", "wind: 4 m/s"),
        ("wind: 3 m/s", "wind: 3 m/s, gust-factor: 2"),
        ("wind: 3 m/s", "wind: 3 m/s, slope: 8°"),
        ("wind: 3 m/s", "wind: 3 m/s, ground-friction: 0.6"),
        ("wind: 3 m/s", "wind: 3 m/s, sun-warming: 15 K"),
        ("panel: {width", "frame: {joint-stiffness: 80 N·m/rad}\npanel: {width"),
    ];

    private static readonly PlanSession Session = new();
    private static readonly KitReadResult Before = PlanSessionTests.Read(Kit);
    private static readonly string Unchanged = PlanSessionTests.Written(Session.Plan(Before));

    public static TheoryData<int> EveryChange => [.. Enumerable.Range(0, Changes.Length)];

    [Theory]
    [MemberData(nameof(EveryChange))]
    public void What_holds_a_sheet_changes_the_plan_and_is_planned_as_if_nothing_had_been_planned_before(int change)
    {
        var (from, to) = Changes[change];
        var after = PlanSessionTests.Read(Kit.Replace(from, to, StringComparison.Ordinal));

        Session.Plan(Before);
        var within = Session.Plan(after);

        PlanSessionTests.Written(within).Should().Be(PlanSessionTests.Afresh(after, within), "'{0}' became '{1}'", from, to);
        WithoutKit(PlanSessionTests.Written(within)).Should().NotBe(WithoutKit(Unchanged), "'{0}' in place of '{1}' changes the plan", to, from);
    }

    // The content hash and the list of defaults change with every key, whatever comes of it.
    private static string WithoutKit(string json)
    {
        var defaults = json.IndexOf("\"defaults\"", StringComparison.Ordinal);
        return string.Join('\n', (defaults < 0 ? json : json[..defaults]).Split('\n').Where(line => !line.Contains("contentHash", StringComparison.Ordinal)));
    }
}
