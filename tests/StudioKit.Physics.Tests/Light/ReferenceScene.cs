using System.Reflection;
using System.Text.Json;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Lobes;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light;

/// <summary>The boxes of light-scenes.json, computed with Radiance, the open lighting simulator of Lawrence Berkeley National Laboratory.</summary>
internal sealed record ReferenceScene(string Name, LightScene Scene, bool HasSkirts, double[] Exposures, double[]? Traced)
{
    public static IReadOnlyDictionary<string, ReferenceScene> All { get; } = Load();

    private static Dictionary<string, ReferenceScene> Load()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("light-scenes.json")!;
        using var document = JsonDocument.Parse(stream);
        return document.RootElement.GetProperty("scenes").EnumerateArray().Select(Read).ToDictionary(scene => scene.Name, StringComparer.Ordinal);
    }

    private static ReferenceScene Read(JsonElement scene)
    {
        double Number(string name) => scene.GetProperty(name).GetDouble();
        double[] Numbers(string name) => [.. scene.GetProperty(name).EnumerateArray().Select(item => item.GetDouble())];

        var (centre, size, hasSkirts) = (Numbers("emitter_centre_m"), Numbers("emitter_size_m"), scene.GetProperty("skirt").GetBoolean());
        var panel = new LightPanel
        {
            Width = Length.FromMeters(Number("panel_width_m")),
            Depth = Length.FromMeters(Number("panel_depth_m")),
            Height = Length.FromMeters(Number("panel_height_m")),
            UndersideReflectance = Number("panel_underside_reflectance"),
        };
        var surround = new LightSurround
        {
            FloorReflectance = Number("floor_reflectance"),
            SkirtReflectance = hasSkirts ? Number("skirt_reflectance") : null,
        };
        var emitter = new Emitter
        {
            Centre = new Position(centre[0], centre[1], centre[2]),
            Orientation = Orientation.Tilted(Angle.FromDegrees(Number("emitter_tilt_deg_toward_plus_x")), Angle.Zero),
            Width = Length.FromMeters(size[0]),
            Height = Length.FromMeters(size[1]),
            Lobe = new CosineLobe(Number("lobe_exponent"), Number("lobe_exponent")),
            AxialIntensityTime = Number("on_axis_intensity_cd_s"),
        };
        return new ReferenceScene(
            scene.GetProperty("name").GetString()!,
            new LightScene { Panel = panel, Surround = surround, Emitters = [emitter] },
            hasSkirts,
            Numbers("luminous_exposure_lx_s"),
            scene.TryGetProperty("traced_lx_s", out _) ? Numbers("traced_lx_s") : null);
    }
}
