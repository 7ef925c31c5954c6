namespace StudioKit.Planning.Tests.Plans;

/// <summary>Kit files written out in tests.</summary>
internal static class KitTexts
{
    /// <summary>A 36 mm × 24 mm camera, a 55 and a 180 mm lens, two small flashes, a softbox, a dome, 3 mm opal acrylic on a table.</summary>
    public const string Base =
        """
        kit: test
        camera: {name: body, sensor: 36 mm x 24 mm, flash-sync: 1/200 s, iso: 100 to 6400}
        lenses:
          - {name: short, focal-length: 55 mm, aperture: f/2.8 to f/32, largest-magnification: 1:2, length: 70 mm, pupil-ratio: 1, magnifications: [1:2, 1:1]}
          - {name: long, focal-length: 180 mm, focusing: internal, closest-focus: 480 mm, aperture: f/3.5 to f/32, magnifications: [1:4]}
        accessories:
          extension-tubes: [{name: tube, length: 27.5 mm}]
          filters: [{name: polariser, kind: polariser, loss: 1.5 stops}]
        flashes:
          - {name: one, guide-number: "30 m @ ISO 100, 35 mm", head: 60 mm x 35 mm}
          - {name: two, guide-number: "20 m @ ISO 100, 35 mm", head: 60 mm x 35 mm}
        modifiers:
          - {name: small softbox, kind: softbox, size: 150 mm x 120 mm, loss: 2 stops}
          - {name: dome, kind: dome, size: 80 mm x 60 mm, loss: 1.7 stops}
        panel: {transmittance: 0.5, width: 400 mm, depth: 400 mm}
        frame: {height: 600 mm}
        subjects:
          - {name: moth, group: flying-insects, length: 30 mm, height: 10 mm, speed: 1 mm/s}

        """;

    /// <summary>The base kit where nothing throws light back: planned in a hundredth of the time, for what doesn't ask how light goes round under a sheet.</summary>
    public static readonly string Dark =
        Base.Replace("panel: {transmittance: 0.5", "site: {ground-reflectance: 0}\npanel: {underside-reflectance: 0, transmittance: 0.5", StringComparison.Ordinal);

    /// <summary>Plans the base kit with set-ups.</summary>
    public static Plan PlanOf(string setUps) => KitText.Plan(Base + setUps);
}
