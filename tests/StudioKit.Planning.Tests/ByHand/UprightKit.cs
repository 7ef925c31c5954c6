namespace StudioKit.Planning.Tests.ByHand;

/// <summary>
/// The kit of <see cref="HandKit"/> with a plant before an upright sheet: the camera looks level at the sheet's middle, 20 cm over the ground; one flash 45 cm behind the sheet,
/// one from beside the lens, 8° off the line of sight, at 40 cm.
/// </summary>
internal static class UprightKit
{
    /// <summary>The kit's text.</summary>
    /// <param name="sheet">Further keys of the upright sheet.</param>
    /// <param name="setUp">Further keys of the set-up, a semicolon between them.</param>
    /// <param name="sections">Further sections.</param>
    public static string Of(string sheet = "width: 100 mm, height: 100 mm, over-ground: 150 mm", string setUp = "background-distance: 5 cm", string sections = "") => HandKit.Of(
        $$"""
        uprights:
          - {name: reed screen, sheet: {transmittance: 0.5, underside-reflectance: 0}{{(sheet.Length == 0 ? "" : ", ")}}{{sheet}}}
        set-ups:
          - name: where it grows
            kind: white-background
            upright: reed screen
            aperture: f/16
            shutter: 1/200 s
            iso: 400
            height-over-ground: 20 cm
            camera-pitch: 0°
            lights:
              - {flash: one, role: behind, distance: 45 cm}
              - {flash: two, role: key, distance: 40 cm, azimuth: 8°, elevation: 0°}
            {{setUp.Replace("; ", "\n    ", StringComparison.Ordinal)}}

        """ + sections);

    /// <summary>The only exposure of the kit.</summary>
    public static ExposurePlan Exposure(string sheet = "width: 100 mm, height: 100 mm, over-ground: 150 mm", string setUp = "background-distance: 5 cm") => KitText.Plan(Of(sheet, setUp)).Exposures.Single();
}
