using StudioKit.Kits;
using StudioKit.Planning.Exploring;
using KitTextFile = StudioKit.Kits.Editing.KitText;

namespace StudioKit.Planning.Tests.Exploring;

/// <summary>Kits that leave something open.</summary>
internal static class OpenKits
{
    /// <summary>A white-background studio with three things open: 12 designs.</summary>
    public const string Small =
        """
        kit: Cottongrass mire
        camera: {name: body, sensor: 36 mm x 24 mm, flash-sync: 1/200 s, iso: 100 to 6400, mass: 700 g}
        lenses:
          - {name: rush 60, focal-length: 60 mm, aperture: f/2.8 to f/32, largest-magnification: 1:1, magnifications: [1:2], mass: 300 g, front-diameter: 5 mm}
        flashes:
          - {name: one, guide-number: "32 m @ ISO 100, 35 mm", head: 10 mm x 10 mm, mass: 300 g}
          - {name: two, guide-number: "32 m @ ISO 100, 35 mm", head: 10 mm x 10 mm, mass: 300 g}
        panel: {transmittance: 0.5, underside-reflectance: 0, width: 500 mm, depth: 400 mm}   # cut from what was left
        frame: {height: 500 mm}
        site: {ground-reflectance: 0, outdoor-correction: 0 stops, ambient: EV 0, hand-speed: 0 m/s, wind: Beaufort 2}
        set-ups:
          - name: white
            kind: white-background
            aperture: f/16
            shutter: 1/200 s
            iso: 400
            camera-pitch: 90°
            lights:
              - {flash: one, role: below, distance: 45 cm}
              - {flash: two, role: above, distance: 40 cm}
        explore:
          measures: [mass, white-margin, wind]
          choices:
            - {name: width, key: panel.width, values: [460 mm, 500 mm]}
            - {name: thickness, key: panel.thickness, values: [1 mm, 3 mm, 5 mm]}
            - {name: place, key: "set-ups[white].lights[one].distance", from: 40 cm, to: 45 cm, step: 5 cm}

        """;

    /// <summary>A kit of flashes, cells and loads, quickly planned, of which 18,432 designs can be made.</summary>
    public const string Large =
        """
        kit: Alder carr
        camera: {name: body, sensor: 36 mm x 24 mm, flash-sync: 1/200 s, iso: 100 to 6400, mass: 700 g}
        lenses:
          - {name: rush 60, focal-length: 60 mm, aperture: f/2.8 to f/32, largest-magnification: 1:1, magnifications: [1:4, 1:2], mass: 300 g}
        flashes:
          - {name: one, guide-number: "32 m @ ISO 100, 35 mm", mass: 300 g, flashes-per-set: 150, cell: aa-nimh-2000, cell-count: 4, spare-sets: 1}
          - {name: two, guide-number: "24 m @ ISO 100, 35 mm", mass: 250 g, flashes-per-set: 120, cell: aa-nimh-2000, cell-count: 4, spare-sets: 1}
        modifiers:
          - {name: dome, kind: dome, size: 75 mm x 50 mm, transmittance: 0.8, mass: 25 g}
          - {name: softbox, kind: softbox, size: 200 mm x 150 mm, transmittance: 0.7, mass: 140 g}
        pack:
          bags:
            - {name: shoulder bag, inside: 420 mm x 280 mm x 160 mm, mass: 1.2 kg}
            - {name: pouch, inside: 220 mm x 120 mm x 100 mm, mass: 200 g}
        subjects:
          - {name: crane fly, group: flying-insects, length: 30 mm, height: 6 mm, speed: 1 mm/s}
        set-ups:
          - name: dusk
            kind: low-light-fill
            aperture: f/8
            shutter: 1/60 s
            iso: 1600
            ambient: EV 8
            lights:
              - {flash: one, role: fill, modifier: dome, distance: 60 cm}
          - name: black
            kind: dark-background
            aperture: f/16
            shutter: 1/200 s
            iso: 400
            ambient: EV 4
            lights:
              - {flash: two, role: key, modifier: dome, distance: 40 cm}
        session: {frames: 20, rounds: 2}
        explore:
          measures: [mass, energy, flashes]
          choices:
            - {name: dusk from, key: "set-ups[dusk].lights[one].distance", values: [40 cm, 60 cm, 80 cm, 1 m]}
            - {name: black from, key: "set-ups[black].lights[two].distance", values: [30 cm, 40 cm, 50 cm, 60 cm]}
            - {name: before one, key: "set-ups[dusk].lights[one].modifier", values: [dome, softbox]}
            - {name: before two, key: "set-ups[black].lights[two].modifier", values: [dome, softbox]}
            - {name: spare of one, key: "flashes[one].spare-sets", from: 0, to: 2, step: 1}
            - {name: spare of two, key: "flashes[two].spare-sets", from: 0, to: 2, step: 1}
            - {name: cells, key: "flashes[one].cell", values: [aa-nimh-2000, aa-nimh-2500]}
            - {name: light of dusk, key: "set-ups[dusk].iso", values: [800, 1600]}
            - {name: pouch, leave-out: ["pack.bags[pouch]"]}
            - name: sensor
              options:
                - {name: as bought}
                - {name: lighter body, writes: [{key: camera.mass, value: 500 g}], price: 300}

        """;

    private static readonly Lazy<DesignSpace> SmallSpace = new(() => Reading(Small).Space!);
    private static readonly Lazy<DesignSpace> LargeSpace = new(() => Reading(Large).Space!);
    private static readonly Lazy<DesignSearchResult> SmallResult = new(() => Search(SmallSpace.Value, 2000));
    private static readonly Lazy<DesignSearchResult> LargeResult = new(() => Search(LargeSpace.Value, 300));

    public static DesignSpace OfSmall => SmallSpace.Value;

    public static DesignSpace OfLarge => LargeSpace.Value;

    /// <summary>All designs of the small kit.</summary>
    public static DesignSearchResult SmallSearched => SmallResult.Value;

    /// <summary>The large kit, searched.</summary>
    public static DesignSearchResult LargeSearched => LargeResult.Value;

    public static KitReadResult Read(string text) => KitReader.Parse(text, "kit.yaml", PartsLibrary.Embedded);

    public static DesignSpaceReading Reading(string text) => DesignSpace.Of(KitTextFile.Of(text), KitText.Read(text), Read);

    public static DesignAim AimOf(DesignSpace space) => new(space.AsWritten.Kit!.Explore!.Measures, []);

    public static DesignSearchResult Search(DesignSpace space, int most, int seed = 1, int atOnce = 1) =>
        DesignSearch.Run(space, AimOf(space), new DesignSearchOptions { Most = most, Seed = seed, AtOnce = atOnce });
}
