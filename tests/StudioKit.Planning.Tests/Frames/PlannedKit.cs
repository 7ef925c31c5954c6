namespace StudioKit.Planning.Tests.Frames;

/// <summary>A small kit to plan, with more said of it where a test needs it.</summary>
internal static class PlannedKit
{
    /// <summary>Plans it. Nothing under its panel throws light back, which costs most of the time and is nothing to a frame.</summary>
    public static Plan Of(string frame = "kind: table", string stock = "currency: EUR", string more = "", string panel = "skirts: yes") =>
        KitText.Plan(
            $$"""
            kit: Reed margin
            camera: {name: body R, sensor: 36 mm x 24 mm, pixels: 6000 x 4000}
            lenses:
              - {name: reed 50, focal-length: 50 mm, focusing: unit, aperture: f/2.8 to f/22, largest-magnification: 1:2, magnifications: [1:2]}
            flashes:
              - {name: sedge, guide-number: "30 m @ ISO 100", head: 70 mm x 40 mm, cell: aa-nimh-2000, mass: 300 g}
              - {name: willow, guide-number: "30 m @ ISO 100", cell: aa-nimh-2000, mass: 300 g}
            panel:
              width: 600 mm
              depth: 400 mm
              underside-reflectance: 0
              skirt-reflectance: 0
              {{panel}}
            site: {ground-reflectance: 0}
            frame:
              height: 500 mm
              pipe: pvc-u-20x1.5
              fittings: pvc-u-20
              {{frame}}
            subjects:
              - {name: moth, group: flying-insects, length: 40 mm}
            set-ups:
              - name: white
                kind: white-background
                lights: [{flash: sedge, role: below, distance: 30 cm}, {flash: willow, role: above, distance: 40 cm}]
            stock:
              {{stock}}
            {{more}}
            """);
}
