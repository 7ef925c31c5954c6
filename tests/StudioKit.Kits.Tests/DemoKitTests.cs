using StudioKit.Kits.SetUps;

namespace StudioKit.Kits.Tests;

public sealed class DemoKitTests
{
    [Theory]
    [InlineData("fen-edge.yaml")]
    [InlineData("heath-ultralight.yaml")]
    [InlineData("pond-edge.yaml")]
    [InlineData("tall-stand.yaml")]
    public void Demo_kits_are_without_fault(string file)
    {
        var result = KitReader.Read(Path.Combine(KitFolder.Path, file));

        result.Diagnostics.Select(fault => fault.Format()).Should().BeEmpty();
        result.Kit.Should().NotBeNull();
    }

    [Fact]
    public void The_starter_kit_is_without_fault()
    {
        var result = KitReader.Parse(StarterKit.Text, "my-kit.yaml", PartsLibrary.Embedded);

        result.Diagnostics.Select(fault => fault.Format()).Should().BeEmpty();
        result.Kit!.Name.Should().Be("My first kit");
    }

    [Fact]
    public void The_white_background_scene_of_the_fen_edge_kit_is_the_common_one()
    {
        // Common practice, no source: life size, f/16, 1/125 s, ISO 400 to 500, a small flash under 3 mm of opal acrylic.
        var kit = KitReader.Read(Path.Combine(KitFolder.Path, "fen-edge.yaml")).Kit!;
        var white = kit.SetUps[0];

        white.Kind.Should().Be(SetUpKind.WhiteBackground);
        white.Aperture!.Value.Value.Should().Be(16);
        white.Iso!.Value.Value.Should().Be(500);
        white.Lights[0].Distance.Centimeters.Should().BeApproximately(45, 1e-9);
        kit.Flashes[0].GuideNumber.AtIso100.Meters.Should().BeApproximately(30, 1e-9);
        kit.Flashes[0].GuideNumber.Zoom!.Value.Millimeters.Should().Be(35);
        kit.Panel.Thickness.Millimeters.Should().Be(3);
        kit.SetUps.Select(setUp => setUp.Kind).Should().BeEquivalentTo(Enum.GetValues<SetUpKind>());
    }
}
