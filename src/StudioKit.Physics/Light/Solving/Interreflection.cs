using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Solving;

/// <summary>Light sent to and fro in a box with its shadows, and gathered at the panel's points.</summary>
[Source("Goral1984", "interreflection, final gather")]
internal sealed class Interreflection
{
    private readonly PatchMesh _mesh;
    private readonly double[] _gather;
    private readonly int _stride;
    private readonly Radiosity _radiosity;

    public Interreflection(PatchMesh mesh, FormFactors factors)
    {
        (_mesh, _gather, _stride) = (mesh, factors.Gather, VectorMath.PaddedRow(mesh.SenderCount));
        _radiosity = new Radiosity(factors.Exchange, [.. mesh.Patches.Select(patch => patch.Reflectance)]);
    }

    /// <summary>Turns direct exposures of the patches into full ones, in place, and gathers what they send to the points [lx·s].</summary>
    /// <param name="patchExposure">Exposure of every patch [lx·s].</param>
    /// <param name="settled">Change of a patch, as a share of the brightest, that counts as none [1].</param>
    public double[] Settle(Span<double> patchExposure, double settled = Radiosity.Settled)
    {
        var exitance = new double[_radiosity.Stride];
        _radiosity.Settle(patchExposure, exitance, settled);
        var senders = new double[_stride];
        exitance.AsSpan(0, _mesh.SenderCount).CopyTo(senders);
        var arriving = new double[_gather.Length / Math.Max(1, _stride)];
        for (var i = 0; i < arriving.Length; i++)
        {
            arriving[i] = VectorMath.Dot(_gather.AsSpan(i * _stride, _stride), senders);
        }

        return arriving;
    }

    /// <summary>Where the light of a source went, from the full exposures of the patches.</summary>
    public LightBalance Balance(double emitted, double[] exposure)
    {
        double Absorbed(BoxFace first, BoxFace last) => Enumerable
            .Range(_mesh.Start(first), _mesh.End(last) - _mesh.Start(first))
            .Sum(i => exposure[i] * _mesh.Patches[i].Area * (1 - _mesh.Patches[i].Reflectance));

        return new LightBalance(
            emitted,
            Absorbed(BoxFace.Panel, BoxFace.Panel),
            Absorbed(BoxFace.Left, BoxFace.Back),
            Absorbed(BoxFace.Floor, BoxFace.Ground));
    }
}
