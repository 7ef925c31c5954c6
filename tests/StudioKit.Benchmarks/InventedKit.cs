using System.Globalization;

namespace StudioKit.Benchmarks;

/// <summary>A studio as small as four kinds of set-up allow, with as many lenses or copies as are asked for. All of it is invented.</summary>
internal static class InventedKit
{
    private const string Gear =
        """

        flashes:
          - name: sedge
            guide-number: 30 m @ ISO 100, 35 mm
            lowest-power: 1/128
            head: 70 mm x 40 mm
            mass: 300 g
          - name: willow
            guide-number: 38 m @ ISO 100, 35 mm
            lowest-power: 1/128
            head: 72 mm x 42 mm
            mass: 340 g
        panel:
          part: opal-acrylic-3
          width: 600 mm
          depth: 400 mm
          transmittance: 0.5
          skirts: yes
        frame:
          kind: table
          height: 500 mm
          pipe: pvc-u-25x1.25
        subjects:
          - {name: hawk-moth, group: flying-insects, length: 45 mm, height: 15 mm, speed: 2 mm/s}
          - {name: raft spider, group: crawling-insects-and-spiders, length: 60 mm, height: 12 mm, speed: 20 mm/s}
        set-ups:
          - name: white
            kind: white-background
            aperture: f/16
            shutter: 1/125 s
            iso: 500
            ambient: EV 10
            camera-pitch: [30°, 60°, 90°]
            lights:
              - {flash: sedge, role: below, distance: 45 cm}
              - {flash: willow, role: above, distance: 40 cm, azimuth: -100°, elevation: 35°}
          - name: by day
            kind: daylight-fill
            aperture: f/11
            shutter: 1/200 s
            iso: 400
            ambient: EV 14
            camera-pitch: 20°
            lights:
              - {flash: willow, role: fill, distance: 35 cm}
            fill-level: -1 stop
            background-distance: 3 m
          - name: dusk
            kind: low-light-fill
            aperture: f/8
            shutter: 1/60 s
            iso: 1600
            ambient: EV 8
            camera-pitch: 15°
            lights:
              - {flash: willow, role: fill, distance: 1 m}
            fill-level: -1 stop
            background-distance: 2 m
          - name: black
            kind: dark-background
            aperture: f/16
            shutter: 1/200 s
            iso: 400
            ambient: EV 8
            camera-pitch: 10°
            lights:
              - {flash: willow, role: key, distance: 35 cm}
            background-distance: 1.7 m
        stock:
          currency: EUR
          kerf: 2 mm
          sheet-kerf: 3 mm
          lengths:
            - {length: 2 m, price: 3.20}
            - {length: 3 m, price: 4.40}
          sheets:
            - {material: white opal acrylic, size: 1000 mm x 500 mm, price: 24}
            - {material: white opal acrylic, size: 1220 mm x 610 mm, price: 33}
            - {material: white cloth, size: 3000 mm x 1500 mm, price: 14}
        """;

    /// <summary>With so many lenses, each at three magnifications in four set-ups.</summary>
    public static string WithLenses(int lenses) =>
        $"""
        kit: Many lenses
        camera: {Camera}
        lenses:
        {string.Join('\n', Enumerable.Range(0, lenses).Select(Lens))}
        """ + Gear;

    /// <summary>With one lens, built so many times at once.</summary>
    public static string InBatch(int studios) => WithLenses(1).Replace("  currency:", FormattableString.Invariant($"  studios: {studios}\n  currency:"), StringComparison.Ordinal);

    private const string Camera = "{name: body A, sensor: 36 mm x 24 mm, pixels: 8192 x 5464, flash-sync: 1/200 s, iso: 100 to 6400, flange-distance: 44 mm, mass: 740 g}";

    private static string Lens(int index)
    {
        var focalLength = 40 + (index * 7 % 160);
        return string.Create(
            CultureInfo.InvariantCulture,
            $$"""  - {name: reed {{index}}, focal-length: {{focalLength}} mm, focusing: unit, aperture: f/2.8 to f/32, largest-magnification: 1:1, closest-focus: {{(4 * focalLength) + 20}} mm, length: {{70 + (index % 40)}} mm, pupil-ratio: 1, magnifications: [1:4, 1:2, 1:1], mass: 290 g}""");
    }
}
