namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>Sets fill flashes beside an ambient light that shutter and ISO were settled on.</summary>
internal static class FillLighting
{
    public static SetUpResult Add(SetUpCase setUp, CameraCase camera, double fill, MissedLimit? limit)
    {
        var ambient = SetUpCamera.AmbientAtIso100(setUp.Ambient, camera, camera.Shutter) + IsoWindow.StopsOf(camera.Iso);
        LightSolution[] lights =
        [
            .. setUp.Lights.Select(light => SubjectLighting.Set(
                PowerCap.Apply(light.Flash, setUp.Limits), camera, SubjectLighting.Target(setUp.Lights, light, fill), setUp.Uncertainty)),
        ];
        return new SetUpResult
        {
            Camera = camera,
            Lights = lights,
            AmbientLevel = new Stops(ambient),
            SubjectShade = setUp.SubjectShade,
            SubjectLevel = SubjectLighting.Total(lights, ambient + setUp.SubjectShade.Value),
            IsoAboveBase = new Stops(IsoWindow.StopsOf(camera.Iso) - IsoWindow.StopsOf(setUp.Limits.LowestIso)),
            Missed = [.. MissedLimit.Any(limit), .. SubjectLighting.Broken(lights, setUp.Limits)],
        };
    }
}
