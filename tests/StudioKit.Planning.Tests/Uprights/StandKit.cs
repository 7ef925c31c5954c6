namespace StudioKit.Planning.Tests.Uprights;

/// <summary>A kit whose lens comes to no framing, so that only what is built is planned; 20 mm pipe with fittings of whole millimetres.</summary>
internal static class StandKit
{
    /// <summary>The kit with upright sheets, and more of its sections.</summary>
    public static string Text(string uprights, string setUps, string more = "") =>
        $$"""
        kit: Reed bed
        camera: {name: body, sensor: 36 mm x 24 mm}
        lenses:
          - {name: reed 60, focal-length: 60 mm, magnifications: [10:1]}
        flashes:
          - {name: sedge, guide-number: 36 m}
          - {name: willow, guide-number: 36 m}
        frame: {pipe: pvc-u-20x1.5, fittings: pvc-u-20, longest-piece: 600 mm}
        {{more}}
        uprights:
        {{uprights}}
        set-ups:
        {{setUps}}

        """;

    /// <summary>A plant where it grows, before one of the sheets.</summary>
    public static string Growing(string upright) =>
        $"  - {{name: before {upright}, kind: white-background, upright: {upright}, background-distance: 30 cm, lights: [{{flash: sedge, role: behind, distance: 30 cm}}, {{flash: willow, role: key, distance: 40 cm}}]}}";

    /// <summary>An animal on the panel, before one of the sheets.</summary>
    public static string OnPanel(string upright) =>
        $"  - {{name: before {upright}, kind: white-background, upright: {upright}, background-distance: 15 cm, lights: [{{flash: sedge, role: behind, distance: 30 cm}}, {{flash: willow, role: above, distance: 40 cm}}, {{flash: willow, role: below, distance: 30 cm}}]}}";

    /// <summary>What holds the only sheet of a kit with one.</summary>
    public static UprightStandPlan Only(string upright, Func<string, string>? setUp = null, string more = "") =>
        KitText.Plan(Text($"  - {{name: screen, {upright}}}", (setUp ?? Growing)("screen"), more)).Workshop!.Uprights.Should().ContainSingle().Subject;
}
