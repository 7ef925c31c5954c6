namespace StudioKit.Kits.Tests;

/// <summary>Keys that are easily mistaken for their neighbours, each with a value of its own: what is written under a key arrives under its name.</summary>
public sealed class KeyPlacesTests
{
    private const string Text = """
        kit: Every pair
        camera: {name: body, sensor: 36 mm x 24 mm, pixels: 8000 x 5000, iso: 64 to 1600}
        lenses:
          - {name: reed, focal-length: 55 mm, aperture: f/4 to f/22}
        flashes:
          - {name: sedge, guide-number: 30 m, beam-width: 71°, beam-height: 53°, head: 70 mm x 40 mm}
        modifiers:
          - {name: dome, kind: dome, size: 90 mm x 60 mm}
        pack:
          bags:
            - {name: rucksack, inside: 620 mm x 320 mm x 220 mm}
          items:
            - {name: tub, mass: 1 g, size: 110 mm x 90 mm x 75 mm}
        set-ups:
          - name: white
            kind: white-background
            camera-pitch: [20°, 60°]
            camera-roll: 90°
            lights:
              - {flash: sedge, role: below, distance: 45 cm, offset-right: 11 mm, offset-back: 22 mm, aim-right: 33 mm, aim-back: 44 mm}
              - {flash: sedge, role: above, distance: 50 cm}
        stock:
          kerf: 1 mm
          sheet-kerf: 2 mm
          trim: 4 mm
          sheets:
            - {size: 1000 mm x 500 mm}
        """;

    private static readonly KitSpec Kit = KitReader.Parse(Text, "kit.yaml", PartsLibrary.Embedded).Kit!;

    [Fact]
    public void Sides_keep_their_order()
    {
        Sides(Kit.Camera.SensorWidth, Kit.Camera.SensorHeight).Should().Equal(36, 24);
        (Kit.Camera.PixelsWide, Kit.Camera.PixelsHigh).Should().Be((8000, 5000));
        Sides(Kit.Flashes[0].HeadWidth, Kit.Flashes[0].HeadHeight).Should().Equal(70, 40);
        Sides(Kit.Modifiers[0].Width, Kit.Modifiers[0].Height).Should().Equal(90, 60);
        Sides(Kit.Stock.Sheets[0].Width, Kit.Stock.Sheets[0].Height).Should().Equal(1000, 500);
        Sides(Kit.Pack.Bags[0].InsideLength, Kit.Pack.Bags[0].InsideWidth, Kit.Pack.Bags[0].InsideDepth).Should().Equal(620, 320, 220);
        Sides(Kit.Pack.Items[0].Length!.Value, Kit.Pack.Items[0].Width!.Value, Kit.Pack.Items[0].Depth!.Value).Should().Equal(110, 90, 75);
    }

    [Fact]
    public void Ranges_keep_their_ends()
    {
        (Kit.Camera.LowestIso.Value, Kit.Camera.HighestIso.Value).Should().Be((64, 1600));
        Kit.Lenses[0].WidestAperture.Value.Should().BeApproximately(4, 1e-9);
        Kit.Lenses[0].SmallestAperture.Value.Should().BeApproximately(Math.Pow(2, 4.5), 1e-9);
    }

    [Fact]
    public void A_light_stands_and_aims_where_its_keys_say()
    {
        var light = Kit.SetUps[0].Lights[0];

        Sides(light.Distance, light.OffsetRight, light.OffsetBack, light.AimRight!.Value, light.AimBack!.Value).Should().Equal(450, 11, 22, 33, 44);
        (Kit.Flashes[0].BeamWidth!.Value.Degrees, Kit.Flashes[0].BeamHeight!.Value.Degrees).Should().Be((71, 53));
    }

    [Fact]
    public void Pitch_and_roll_of_the_camera_are_two_keys()
    {
        Kit.SetUps[0].CameraPitches.Select(angle => angle.Degrees).Should().Equal(20, 60);
        Kit.SetUps[0].CameraRolls.Select(angle => angle.Degrees).Should().Equal(90);
    }

    [Fact]
    public void Cuts_in_pipe_and_in_sheet_are_two_keys() => Sides(Kit.Stock.Kerf, Kit.Stock.SheetKerf, Kit.Stock.Trim).Should().Equal(1, 2, 4);

    /// <summary>SI by definition: 1 mAh = 3.6 C, 1 g = 0.001 kg, 1° = π/180 rad.</summary>
    [Theory]
    [InlineData("flashes:\n  - {name: sedge, guide-number: 30 m, cell: {part: aa-nimh-2000, capacity: 2000 mAh ± 100 mAh}}", "flashes[0].cell.capacity", 360)]
    [InlineData("panel: {mass: 900 g ± 20 g}", "panel.mass", 0.02)]
    [InlineData("site: {slope: 5° ± 1°}", "site.slope", Math.PI / 180)]
    [InlineData("panel: {skirt-areal-mass: 100 g/m² ± 5 g/m²}", "panel.skirt-areal-mass", 0.005)]
    public void An_uncertainty_is_kept_in_SI(string yaml, string path, double si)
    {
        const string Smallest = "kit: K\ncamera: {name: body, sensor: 36 mm x 24 mm}\nlenses:\n  - {name: reed, focal-length: 55 mm}\n";

        var result = KitReader.Parse(Smallest + yaml, "kit.yaml", PartsLibrary.Embedded);

        result.Diagnostics.Should().BeEmpty();
        result.Uncertainties[path].Amount.Should().BeApproximately(si, si * 1e-12);
    }

    /// <summary>The values that stand beside the records' members, in the units that the texts name.</summary>
    [Theory]
    [InlineData("panel.skirt-areal-mass", "100 g/m²")]
    [InlineData("panel.density", "1190 kg/m³")]
    [InlineData("panel.youngs-modulus", "3.2 GPa")]
    [InlineData("panel.long-term-stress", "5 MPa")]
    [InlineData("frame.height", "500 mm")]
    [InlineData("site.wind", "5.4 m/s")]
    [InlineData("site.hand-speed", "5 mm/s")]
    [InlineData("site.slope", "5°")]
    [InlineData("site.temperature", "25 °C")]
    [InlineData("session.setting-up", "1200 s")]
    public void A_default_is_told_in_the_unit_that_people_write(string path, string value)
    {
        const string Smallest = "kit: K\ncamera: {name: body, sensor: 36 mm x 24 mm}\nlenses:\n  - {name: reed, focal-length: 55 mm}\n";

        KitReader.Parse(Smallest, "kit.yaml", PartsLibrary.Embedded).Defaults.Should().Contain(used => used.Path == path && used.Value == value);
    }

    /// <summary>NIST Special Publication 811 (2008), appendix B.8, as its table prints them: seven digits, so half of the last is 5e-7 or less of each (from memory).</summary>
    [Theory]
    [InlineData("1 oz/yd²", 3.390575e-2)]
    [InlineData("10 oz/yd2", 3.390575e-1)]
    public void Cloth_may_be_weighed_in_ounces_a_square_yard(string text, double kilograms)
    {
        QuantityText.TryAreaDensity(text, out var mass, out _).Should().BeTrue();

        mass.KilogramsPerSquareMeter.Should().BeApproximately(kilograms, kilograms * 5e-7);
    }

    private static double[] Sides(params UnitsNet.Length[] sides) => Array.ConvertAll(sides, side => Math.Round(side.Millimeters, 9));
}
