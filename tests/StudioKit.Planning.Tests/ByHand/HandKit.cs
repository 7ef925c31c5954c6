namespace StudioKit.Planning.Tests.ByHand;

/// <summary>
/// A kit whose light can be worked out on paper: 10 mm heads, a black ground, a sheet that throws nothing back, no loss outdoors, a still hand.
/// One 60 mm lens that moves as a whole, at half life size, too slim to hide a light; two flashes of GN 32 m; a panel 500 mm over the ground.
/// </summary>
internal static class HandKit
{
    /// <summary>A white background by one flash below and one above, the camera looking straight down.</summary>
    public const string White =
        """
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

        """;

    private const string Text =
        """
        kit: Cottongrass mire
        camera: {name: body, sensor: 36 mm x 24 mm, flash-sync: 1/200 s, iso: 100 to 6400, mass: 700 g CAMERA}
        lenses:
          - {name: rush 60, focal-length: 60 mm, aperture: f/2.8 to f/32, largest-magnification: 1:1, magnifications: [1:2], mass: 300 g LENS}
        flashes:
          - {name: one, guide-number: "32 m @ ISO 100, 35 mm", head: 10 mm x 10 mm, mass: 300 g ONE}
          - {name: two, guide-number: "32 m @ ISO 100, 35 mm", head: 10 mm x 10 mm, mass: 300 g TWO}
        panel: {transmittance: 0.5, underside-reflectance: 0 PANEL}
        frame: {height: 500 mm FRAME}
        site: {ground-reflectance: 0, outdoor-correction: 0 stops, ambient: EV 0, hand-speed: 0 m/s}

        """;

    /// <summary>The kit with more said of its parts: further keys of camera, lens, flashes, panel and frame, further sections.</summary>
    public static string Of(string sections, string camera = "", string lens = "", string one = "", string two = "", string panel = "", string frame = "") => Text
        .Replace(" CAMERA", More(camera), StringComparison.Ordinal)
        .Replace(" LENS", More(lens.Contains("front-diameter", StringComparison.Ordinal) ? lens : $"front-diameter: 5 mm{More(lens)}"), StringComparison.Ordinal)
        .Replace(" ONE", More(one), StringComparison.Ordinal)
        .Replace(" TWO", More(two), StringComparison.Ordinal)
        .Replace(" PANEL", More(panel), StringComparison.Ordinal)
        .Replace(" FRAME", More(frame), StringComparison.Ordinal)
        + sections;

    /// <summary>The kit of <see cref="Of"/>, planned.</summary>
    public static Plan Plan(string sections, string camera = "", string lens = "", string one = "", string two = "", string panel = "", string frame = "") =>
        KitText.Plan(Of(sections, camera, lens, one, two, panel, frame));

    private static string More(string keys) => keys.Length == 0 ? "" : $", {keys}";
}
