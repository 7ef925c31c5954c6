using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Sheets.Json;

namespace StudioKit.Sheets.Tests.Json;

/// <summary>A session must never show what was planned before: its plans, written out whole as JSON, are held against plans made afresh and stage by stage.</summary>
public sealed class PlanSessionTests
{
    // One change for each key that a stage may look at; each replaces a value of the demo kit by another sound one.
    private static readonly (string From, string To)[] Changes =
    [
        ("iso: 500", "iso: 640"),
        ("iso: 100 to 6400", "iso: 100 to 3200"),
        ("sensor: 36 mm x 24 mm", "sensor: 35 mm x 23 mm"),
        ("pixels: 8192 x 5464", "pixels: 6000 x 4000"),
        ("flash-sync: 1/200 s", "flash-sync: 1/250 s"),
        ("flange-distance: 44 mm", "flange-distance: 20 mm"),
        ("guide-number: 30 m @ ISO 100, 35 mm ± 0.3 stop", "guide-number: 32 m @ ISO 100, 35 mm ± 0.5 stop"),
        ("lowest-power: 1/128", "lowest-power: 1/64"),
        ("head: 72 mm x 42 mm", "head: 72 mm x 42 mm\n    zoom: 50 mm"),
        ("power-step: third", "power-step: whole"),
        ("head: 70 mm x 40 mm", "head: 60 mm x 50 mm"),
        ("head: 70 mm x 40 mm", "body: 240 mm x 90 mm x 60 mm"),
        ("full-power-duration: 1/300 s", "full-power-duration: 1/200 s"),
        ("recycle-time: 3 s", "recycle-time: 9 s"),
        ("flashes-per-set: 150", "flashes-per-set: 15"),
        ("spare-sets: 2", "spare-sets: 3"),
        ("transmittance: 0.7 ± 0.1", "transmittance: 0.6 ± 0.2"),
        ("size: 200 mm x 150 mm", "size: 150 mm x 100 mm"),
        ("transmittance: 0.5 ± 0.05", "transmittance: 0.4 ± 0.1"),
        ("width: 600 mm", "width: 620 mm"),
        ("margin: 30 mm", "margin: 60 mm"),
        ("margin: 30 mm", "margin: 30 mm\n  harmed-by: [alkalis]"),
        ("skirts: yes", "skirts: no"),
        ("height: 500 mm", "height: 520 mm"),
        ("insertion-gap: 1 mm", "insertion-gap: 2 mm"),
        ("stretchers: always", "panel-rests: front-and-back"),
        ("pegs: {count: 4, hold: 3 kg, guys: yes}", "pegs: {count: 8, hold: 5 kg}"),
        ("inside: 620 mm x 320 mm x 220 mm", "inside: 500 mm x 320 mm x 220 mm"),
        ("highest-load: 10 kg", "highest-load: 4 kg"),
        ("body-mass: 68 kg", "body-mass: 50 kg"),
        ("{name: water, mass: 1 kg", "{name: water, mass: 2 kg"),
        ("length: 45 mm", "length: 20 mm"),
        ("height: 15 mm", "height: 20 mm"),
        ("speed: 20 mm/s", "speed: 80 mm/s"),
        ("hold-limit: 5 min", "hold-limit: 2 min"),
        ("ambient: EV 10 ± 0.5 stop", "ambient: EV 9 ± 1 stop"),
        ("ambient: EV 10 ± 0.5 stop", "ambient: open wood"),
        ("camera-pitch: [30°, 60°, 90°]", "camera-pitch: [45°, 90°]"),
        ("role: below, distance: 45 cm", "role: below, distance: 40 cm"),
        ("role: below, distance: 45 cm", "role: below, distance: 30 cm, offset-right: 2 cm"),
        ("modifier: small softbox, distance: 40 cm", "modifier: dome, distance: 30 cm"),
        ("target-white-margin: 1/3 stop", "target-white-margin: 2/3 stop"),
        ("fill-level: -1 stop", "fill-level: -2 stops"),
        ("filter: polariser", "ambient-under: 3 stops"),
        ("    support: sand bag\n", ""),
        ("kind: bean-bag", "kind: bean-bag, sway: 2 mm/s"),
        ("kind: bean-bag", "kind: tripod"),
        ("mass: 60 g, packed", "mass: 560 g, packed"),
        ("mass: 60 g, packed", "mass: 60 g, price: 9, packed"),
        ("packed: 220 mm x 150 mm x 15 mm", "packed: 260 mm x 150 mm x 60 mm"),
        ("rim-level: +1/3 stop", "rim-level: -1/3 stop"),
        ("light-window: EV 13 to EV 15", "light-window: EV 14 to EV 15"),
        ("clock: 20:30 to 21:15", "clock: 20:30 to 21:45"),
        ("settling: 1 min", "settling: 3 min"),
        ("frame-time: 5 s", "frame-time: 8 s"),
        ("wind: Beaufort 3", "wind: Beaufort 6"),
        ("slope: 4°", "slope: 9°"),
        ("slope: 4°", "gust-factor: 1.3"),
        ("ground-reflectance: 0.08", "ground-reflectance: 0.5"),
        ("temperature: 24 °C", "temperature: 38 °C"),
        ("kerf: 2 mm", "kerf: 4 mm"),
        ("{length: 2 m, price: 3.20}", "{length: 2 m, price: 9.20}"),
        ("magnifications: [1:4, 1:2, 1:1]   #", "magnifications: [1:3, 1:1]   #"),
        ("length: 27.5 mm", "length: 30 mm"),
        ("metered: yes  ", "metered: no  "),
        ("ambient: EV 8                      # last light", "ambient: EV 8\n    subject-ambient: EV 6   # last light"),
        ("light-window: EV 13 to EV 15", "subject-ambient: EV 12"),
        ("background-distance: 2 m", "background-reflectance: 0.3"),
        ("ambient-under: 5 stops", "metered-share: 40 %"),
        ("spacing: 60 µm", "spacing: 80 µm"),
        ("size: 300 µm", "spacing: 300 µm"),
        ("relief: 0.3 mm", "relief: 0.4 mm"),
        ("contrast: 0.4}", "contrast: 0.5}"),
        ("name: an eye", "name: the eyes"),
        ("transmittance: 0.8", "transmittance: 0.8\n    half-ball: yes"),
        ("transmittance: 0.8", "transmittance: 0.8\n    light-distribution: sedge.ies"),
        ("head: 72 mm x 42 mm", "head: 72 mm x 42 mm\n    light-distribution: sedge.ies"),
        ("downhill: left", "downhill: 30°"),
        ("group: amphibians", "group: small-mammals"),
        ("date: 2026-06-14", "date: 2026-12-14"),
        ("latitude: 52.3° N", "latitude: 52.3° S"),
        ("longitude: 5.1° E", "longitude: 5.1° W"),
        ("utc-offset: +2 h", "utc-offset: +1 h"),
        ("shade-loss: 2 stops", "shade-loss: 1 stop"),
        ("hold-limit: 5 min", "hold-limit: 5 min\n    active: dusk"),
        ("speed: 2 mm/s", "speed: 2 mm/s\n    active: 22:00 to 02:00"),
        ("azimuth: -100°", "azimuth: 100°"),
        ("elevation: 40°", "elevation: 35°"),
        ("distance: 1 m}", "distance: 1 m, azimuth: -30°}"),
        (", holder: long arm}", "}"),
        (", holder: short stand}", "}"),
        ("kind: arm", "kind: clamp"),
        ("reach: 55 cm", "reach: 35 cm"),
        ("built: yes", "built: no"),
        ("price: 24\n    size: 380", "price: 26\n    size: 380"),
        ("size: 380 mm x 90 mm x 80 mm", "size: 620 mm x 90 mm x 80 mm"),
        ("mass: 540 g\n\ntriggers", "mass: 640 g\n\ntriggers"),
        ("highest: 1.1 m", "highest: 60 cm"),
        ("highest: 1.1 m", "lowest: 70 cm"),
        ("front-diameter: 62 mm", "front-diameter: 82 mm"),
        ("front-diameter: 62 mm", "hood: 40 mm"),
        ("camera-pitch: 10°", "camera-pitch: 10°\n    height-over-ground: 60 cm"),
        ("channel: 5", "channel: 7"),
        ("channel: 5, groups: 3", "channel: 5, groups: 1"),
        ("channel: 5, groups: 3", "channel: 5, groups: 3, sync: 1/100 s"),
        ("channel: 5, groups: 3", "channel: 5, groups: 3, range: 50 cm"),
        ("mass: 45 g, packed: 75 mm x 40 mm x 35 mm}   # on", "mass: 95 g, packed: 75 mm x 40 mm x 35 mm}   # on"),
        ("mass: 45 g, packed: 75 mm x 40 mm x 35 mm}   # on", "mass: 45 g, packed: 750 mm x 40 mm x 35 mm}   # on"),
        ("mass: 45 g, packed: 75 mm x 40 mm x 35 mm}   # on", "mass: 45 g, price: 30, packed: 75 mm x 40 mm x 35 mm}   # on"),
        ("mass: 45 g, packed: 75 mm x 40 mm x 35 mm}   # on", "mass: 45 g, cell: aa-alkaline, packed: 75 mm x 40 mm x 35 mm}   # on"),
        ("mass: 45 g, packed: 75 mm x 40 mm x 35 mm}   # on", "mass: 45 g, cell: aa-alkaline, cell-count: 3, packed: 75 mm x 40 mm x 35 mm}   # on"),
        ("kind: radio-receiver, count: 2", "kind: radio-receiver, count: 3"),
        ("kind: radio-receiver, count: 2, groups: 3", "kind: cord"),
        ("kind: radio-receiver, count: 2, groups: 3, mass: 45 g, packed: 75 mm x 40 mm x 35 mm", "kind: radio-receiver, groups: 3, built-into: willow"),
        ("willow, trigger: radio receiver, group: B, role: above", "willow, trigger: radio receiver, group: C, role: above"),
        ("willow, trigger: radio receiver, group: B, role: above", "willow, role: above"),
        ("  - {name: radio receiver", "  - {name: old sender, kind: radio-sender, channel: 9, mass: 30 g}\n  - {name: radio receiver"),
    ];

    // An invented head: half of its light at 30° across and at 20° along.
    private static readonly PartsLibrary Parts = PartsLibrary.FromTexts(new Dictionary<string, string>
    {
        ["light-distributions/sedge"] = "TILT=NONE\n1 -1 1 4 2 1 2 0.07 0.04 0\n1 1 50\n0 20 30 90\n0 90\n400 300 200 0\n400 200 100 0\n",
    });

    // One session for all changes, so that each is planned after all those before it.
    private static readonly SessionBench Fen = new("fen-edge.yaml");

    public static TheoryData<int> EveryChange => [.. Enumerable.Range(0, Changes.Length)];

    /// <summary>Only where the sheet mirrors a light does it matter whether it is glossy.</summary>
    [Fact]
    public void A_satin_sheet_under_a_light_that_a_glossy_one_mirrors_is_planned_as_if_nothing_had_been_planned_before()
    {
        var mirrored = Fen.Text.Replace("azimuth: -100°, elevation: 35°", "azimuth: 180°, elevation: 60°", StringComparison.Ordinal);
        var (glossy, satin) = (Read(mirrored), Read(mirrored.Replace("margin: 30 mm", "margin: 30 mm\n  finish: satin", StringComparison.Ordinal)));

        var before = Written(Fen.Session.Plan(glossy));
        var within = Fen.Session.Plan(satin);

        Written(within).Should().Be(Afresh(satin, within)).And.NotBe(before, "the mirror image is gone");
    }

    [Theory]
    [MemberData(nameof(EveryChange))]
    public void A_kit_that_changes_within_a_session_is_planned_as_if_nothing_had_been_planned_before(int change) => Fen.Holds(Changes[change]);

    // Every stage is handed the whole kit here, and only its slice in a session: a key missing from a slice shows as a difference.
    internal static string Afresh(KitReadResult read, Plan within)
    {
        var (kit, services) = (read.Kit!, new PlanningServices());
        var framings = PlanStages.Framings(kit);
        var panel = PlanStages.Panel(kit, framings);
        var uprights = PlanStages.Uprights(kit, framings);
        var frame = PlanStages.Frame(kit, panel, uprights, services);
        var alone = frame is null ? PlanStages.WorkshopWithoutFrame(kit, panel, uprights, services) : null;
        var light = PlanStages.Light(kit, panel, frame, uprights);
        var exposures = PlanStages.Exposures(kit, read.Uncertainties, framings, light);
        var plan = within with
        {
            Framings = [.. framings.Select(framing => framing.Plan)],
            Panel = panel,
            Uprights = uprights,
            UprightLights = PlanStages.UprightLights(kit, light, framings, exposures),
            Frame = frame,
            WorkshopWithoutFrame = alone,
            Light = light,
            Exposures = exposures,
            LightStands = PlanStages.LightStands(kit, framings, light, exposures),
            Features = PlanStages.Features(kit, framings, exposures),
            Covers = PlanStages.Covers(kit, panel, framings, exposures),
            PanelLights = PlanStages.PanelLights(kit, panel, frame, light, framings, exposures),
            Pack = PlanStages.Pack(kit, panel, frame, frame?.Workshop ?? alone, exposures),
            Session = PlanStages.Session(kit, exposures, PlanStages.Bearings(kit, read.Uncertainties, framings, light, exposures)),
        };
        plan = plan with { Day = PlanStages.Day(kit, plan.Session) };
        return Written(plan with { Checks = PlanStages.Checks(plan), Cautions = PlanStages.Cautions(plan) });
    }

    internal static KitReadResult Read(string text)
    {
        var read = KitReader.Parse(text, "kit.yaml", Parts);
        read.HasErrors.Should().BeFalse("the change is a sound one: {0}", string.Join(' ', read.Diagnostics.Select(fault => fault.Format())));
        return read;
    }

    internal static string Written(Plan plan) => PlanJson.Write(plan);
}
