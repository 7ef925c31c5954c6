namespace StudioKit.Planning.Tests.Panels;

/// <summary>A small kit with one framing straight down on a panel lit from its middle.</summary>
internal static class LightKit
{
    /// <summary>Black ground, no skirts, a small head and no loss outdoors: nothing but the straight light counts.</summary>
    public static string Yaml(string below = "distance: 45 cm", string head = "10 mm x 10 mm", string pitch = "90°", string skirts = "no") => $$"""
        kit: Sallow bog
        camera: {name: body, sensor: 36 mm x 24 mm, mass: 700 g}
        lenses:
          - {name: sallow 60, focal-length: 60 mm, aperture: f/2.8 to f/32, focusing: unit, largest-magnification: 1:1, magnifications: [1:1], mass: 300 g}
        flashes:
          - {name: below, guide-number: "30 m @ ISO 100, 35 mm", head: {{head}}, mass: 300 g}
          - {name: above, guide-number: "30 m @ ISO 100, 35 mm", mass: 300 g}
        panel: {width: 400 mm, depth: 400 mm, transmittance: 0.5, underside-reflectance: 0, skirts: {{skirts}}}
        frame: {height: 500 mm}
        site: {ground-reflectance: 0, outdoor-correction: 0 stops, ambient: EV 5}
        set-ups:
          - name: white
            kind: white-background
            aperture: f/16
            shutter: 1/125 s
            iso: 500
            camera-pitch: {{pitch}}
            lights:
              - {flash: below, role: below, {{below}}}
              - {flash: above, role: above, distance: 40 cm}
        """;

    public static Plan Plan(string yaml) => KitText.Plan(yaml);
}
