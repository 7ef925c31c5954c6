using StudioKit.Kits;
using StudioKit.Planning;

namespace StudioKit.Sheets.Tests.Building;

/// <summary>A planned kit with a frame to build.</summary>
internal static class BuiltKit
{
    public static Plan Table { get; } = Of("kind: table", "skirts: yes");

    /// <summary>All files of the table, written once.</summary>
    public static IReadOnlyList<SheetFile> TableFiles => Files.Value;

    public static Plan Swept { get; } = Of("kind: swept-table", "sweep-radius: 1 m\n  sweep-angle: 35°");

    /// <summary>A second set-up whose flash stands higher and to the left, and a third with one on the ground.</summary>
    public static Plan ThreeBelow { get; } = Of(
        "kind: table",
        "skirts: no",
        more: "- {name: pale, kind: white-background, lights: [{flash: willow, role: below, distance: 200 mm, offset-right: -50 mm, offset-back: 80 mm}]}\n"
            + "  - {name: soft, kind: white-background, lights: [{flash: willow, role: below, distance: 420 mm}]}");

    /// <summary>A second set-up whose flash stands right over the first one's.</summary>
    public static Plan OverEachOther { get; } = Of(
        "kind: table",
        "skirts: no",
        more: "- {name: pale, kind: white-background, lights: [{flash: willow, role: below, distance: 200 mm, offset-right: 20 mm}]}");

    /// <summary>A second set-up whose flash stands too near the first one's rail.</summary>
    public static Plan Refused { get; } = Of(
        "kind: table",
        "skirts: no",
        more: "- {name: pale, kind: white-background, lights: [{flash: willow, role: below, distance: 270 mm, offset-back: 80 mm}]}");

    private static readonly Lazy<IReadOnlyList<SheetFile>> Files = new(() => SheetSet.Write(Table, new SheetOptions()));

    public static Plan Of(string frame, string panel, string name = "Reed margin", string more = "") => KitPlanner.Plan(KitReader.Parse(
        $$"""
        kit: {{name}}
        camera: {name: body R, sensor: 36 mm x 24 mm, pixels: 6000 x 4000}
        lenses:
          - {name: reed 50, focal-length: 50 mm, focusing: unit, aperture: f/2.8 to f/22, largest-magnification: 1:2, magnifications: [1:2]}
        flashes:
          - {name: sedge, guide-number: "30 m @ ISO 100", head: 70 mm x 40 mm, cell: aa-nimh-2000, mass: 300 g}
          - {name: willow, guide-number: "30 m @ ISO 100", head: 72 mm x 42 mm, cell: aa-nimh-2000, mass: 300 g}
        modifiers:
          - {name: small box, kind: softbox, size: 200 mm x 150 mm, made-from: white card}
        panel:
          width: 600 mm
          depth: 700 mm
          {{panel}}
        frame:
          height: 500 mm
          pipe: pvc-u-20x1.5
          fittings: pvc-u-20
          longest-piece: 450 mm
          {{frame}}
        subjects:
          - {name: moth, group: flying-insects, length: 40 mm}
        set-ups:
          - name: white
            kind: white-background
            lights: [{flash: sedge, role: below, distance: 30 cm, offset-right: 20 mm}, {flash: willow, role: above, modifier: small box, distance: 40 cm}]
          {{more}}
        """,
        "reed.yaml",
        PartsLibrary.Embedded));
}
