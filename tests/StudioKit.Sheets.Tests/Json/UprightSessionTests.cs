namespace StudioKit.Sheets.Tests.Json;

/// <summary>Upright sheets that change within a session are planned as if nothing had been planned before.</summary>
public sealed class UprightSessionTests
{
    // Of the kit with upright sheets; what holds them has its own.
    private static readonly (string From, string To)[] ChangesOfUprights =
    [
        ("plant screen", "bank screen"),
        ("sheet: opal-acrylic-3\n    stake-hold", "sheet: opal-acrylic-2\n    stake-hold"),
        ("sheet: opal-acrylic-3\n    stake-hold", "sheet: {transmittance: 0.4}\n    stake-hold"),
        ("sheet: opal-acrylic-3\n    stake-hold", "sheet: {part: opal-acrylic-3, scatter-exponent: 1}\n    stake-hold"),
        ("sheet: opal-acrylic-3\n    stake-hold", "sheet: {part: opal-acrylic-3, underside-reflectance: 0.6}\n    stake-hold"),
        ("sheet: opal-acrylic-3\n    stake-hold", "width: 400 mm\n    sheet: opal-acrylic-3\n    stake-hold"),
        ("sheet: opal-acrylic-3\n    stake-hold", "height: 300 mm\n    sheet: opal-acrylic-3\n    stake-hold"),
        ("sheet: opal-acrylic-3\n    stake-hold", "margin: 50 mm\n    sheet: opal-acrylic-3\n    stake-hold"),
        ("sheet: opal-acrylic-3\n    stake-hold", "over-ground: 1 cm\n    sheet: opal-acrylic-3\n    stake-hold"),
        ("sheet: opal-acrylic-3\n    stake-hold", "lean: 10°\n    sheet: opal-acrylic-3\n    stake-hold"),
        ("    upright: plant screen\n", "    upright: plant screen\n    background-distance: 40 cm\n"),
        ("background-distance: 12 cm", "background-distance: 16 cm"),
        ("height-over-ground: 9 cm", "height-over-ground: 12 cm"),
        ("camera-pitch: [0°, 3°]", "camera-pitch: 0°"),
        ("role: behind, distance: 35 cm", "role: behind, distance: 40 cm"),
        ("role: behind, distance: 35 cm", "role: behind, distance: 35 cm, offset-right: 5 cm"),
        ("role: behind, distance: 35 cm", "role: behind, distance: 35 cm, offset-up: -3 cm"),
        ("role: behind, distance: 35 cm", "role: behind, distance: 35 cm, modifier: small dome"),
        ("role: behind, distance: 25 cm", "role: behind, distance: 30 cm"),
        ("ground-reflectance: 0.1", "ground-reflectance: 0.3"),
    ];

    private static readonly SessionBench Screens = new("pond-edge.yaml", ("  - name: bee under the tub\n    kind", "  - name: sundew before the screen\n"));

    public static TheoryData<int> EveryChange => [.. Enumerable.Range(0, ChangesOfUprights.Length)];

    [Theory]
    [MemberData(nameof(EveryChange))]
    public void An_upright_sheet_that_changes_within_a_session_is_planned_as_if_nothing_had_been_planned_before(int change) => Screens.Holds(ChangesOfUprights[change]);
}
