namespace StudioKit.Sheets.Tests.Json;

/// <summary>Covers, triggers and shelters that change within a session are planned as if nothing had been planned before.</summary>
public sealed class CoverSessionTests
{
    // Of the kit with covers.
    private static readonly (string From, string To)[] ChangesOfCovers =
    [
        ("bee tub", "bee box"),
        ("shape: tub", "shape: round-tub"),
        ("inside: 90 mm x 90 mm x 30 mm", "inside: 80 mm x 90 mm x 30 mm"),
        ("inside: 90 mm x 90 mm x 30 mm", "inside: 90 mm x 90 mm x 25 mm"),
        ("wall: 1.5 mm", "wall: 3 mm"),
        ("material: polystyrene", "material: acrylic"),
        ("time-limit: 3 min", "time-limit: 30 s"),
        ("time-limit: 3 min", "lifted: yes"),
        ("mass: 70 g", "mass: 90 g"),
        ("mass: 70 g", "packed: 90 mm x 80 mm x 40 mm"),
        ("price: 3.20\n  - name", "price: 4.20\n  - name"),
        ("water: 40 mm", "water: 30 mm"),
        ("packed: 110 mm x 90 mm x 60 mm", "packed: 160 mm x 90 mm x 60 mm"),
        ("cover: bee tub", "cover: beetle tank"),
        ("    cover: bee tub\n", ""),
        ("camera-pitch: [60°, 75°]", "camera-pitch: [20°, 75°]"),
        ("length: 11 mm", "length: 12 mm\n    wet: yes"),
        ("small dome, distance: 35 cm}", "small dome, distance: 35 cm, azimuth: 180°, elevation: 60°}"),
        ("ambient: EV 10 ± 0.5 stop          # in", "ambient: EV 12 ± 0.5 stop          # in"),
        ("depth: 300 mm", "depth: 320 mm"),
        ("reedmace, trigger: radio receiver, group: B, role: above", "reedmace, trigger: radio receiver, group: A, role: above"),
        ("channel: 3, groups: 3, sets-power: yes", "channel: 3, groups: 3"),
        ("kind: shade-cloth, size: 2 m x 2 m", "kind: umbrella, size: 2 m x 2 m"),
        ("size: 2 m x 2 m", "size: 1.8 m x 2.1 m"),
        ("transmittance: 5 %", "transmittance: 15 %"),
        ("distance: 1 m, mass: 620 g", "distance: 1.2 m, mass: 620 g"),
        ("distance: 1 m, mass: 620 g", "distance: 1 m, held: yes, mass: 620 g"),
        ("distance: 1 m, mass: 620 g", "distance: 1 m, highest-wind: 3 m/s, mass: 620 g"),
        ("mass: 620 g", "mass: 720 g"),
        ("packed: 520 mm x 90 mm x 90 mm", "packed: 720 mm x 90 mm x 90 mm"),
        ("price: 18", "price: 19"),
        ("    shelters: [dark cloth]             # sun", "    shelters: [dark cloth, reed screen]             # sun"),
        ("    shelters: [dark cloth]             # sun", "    sun-share: 40 %\n    shelters: [dark cloth]             # sun"),
        ("    shelters: [dark cloth]             # sun", "# sun"),
        ("    shelters: [reed screen]            # a", "# a"),
        ("kind: wind-break, size: 1.6 m x 0.8 m", "kind: wind-break, size: 1.6 m x 0.7 m"),
    ];

    private static readonly SessionBench Pond = new("pond-edge.yaml", ("  - name: sundew before the screen\n", "session:\n"));

    public static TheoryData<int> EveryChange => [.. Enumerable.Range(0, ChangesOfCovers.Length)];

    /// <summary>The share of holes counts where the frame stands behind it, and the sun where something hangs in its way.</summary>
    [Theory]
    [InlineData("porosity: 35 %", "porosity: 50 %")]
    [InlineData("distance: 60 cm, mass: 480 g", "distance: 90 cm, mass: 480 g")]
    [InlineData("clock: 11:00 to 13:00", "clock: 16:00 to 18:00")]
    [InlineData("latitude: 52.3° N", "latitude: 41.3° N")]
    public void A_frame_behind_a_wind_break_in_the_sun_is_planned_as_if_nothing_had_been_planned_before(string from, string to)
    {
        var text = Pond.Text.Replace("shelters: [dark cloth]", "shelters: [dark cloth, reed screen]", StringComparison.Ordinal)
            .Replace("    ambient: EV 10 ± 0.5 stop          # in", "    clock: 11:00 to 13:00\n    ambient: EV 14          # in", StringComparison.Ordinal)
            .Replace("site:\n", "site:\n  date: 2026-06-14\n  latitude: 52.3° N\n  longitude: 5.1° E\n", StringComparison.Ordinal);
        var (first, second) = (PlanSessionTests.Read(text), PlanSessionTests.Read(text.Replace(from, to, StringComparison.Ordinal)));

        var before = PlanSessionTests.Written(Pond.Session.Plan(first));
        var within = Pond.Session.Plan(second);

        PlanSessionTests.Written(within).Should().Be(PlanSessionTests.Afresh(second, within)).And.NotBe(before);
    }

    [Theory]
    [MemberData(nameof(EveryChange))]
    public void A_cover_that_changes_within_a_session_is_planned_as_if_nothing_had_been_planned_before(int change) => Pond.Holds(ChangesOfCovers[change]);
}
