namespace StudioKit.Physics.Light.Solving;

/// <summary>A box with nothing in the light's way: all that depends on panel, ground and skirts alone.</summary>
internal sealed class BareBox
{
    private const int PatchesPerSide = 8;

    public BareBox(LightPanel panel, LightSurround surround, ReceiverSet points)
    {
        Mesh = new PatchMesh(panel, surround, PatchesPerSide);
        Samples = new PatchSamples(Mesh.Patches);
        Rays = new ShadowRays(Mesh, points);
        Factors = FormFactors.Of(Mesh, panel, points);
    }

    public PatchMesh Mesh { get; }

    public PatchSamples Samples { get; }

    public ShadowRays Rays { get; }

    public FormFactors Factors { get; }
}
