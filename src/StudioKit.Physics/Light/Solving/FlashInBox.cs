namespace StudioKit.Physics.Light.Solving;

/// <summary>One flash without a body at one place of a box: what it sends round the box is settled once, and looked at in as many of the box's points as are asked for.</summary>
internal sealed class FlashInBox(DirectLight flash, ReceiverSet points, SettledBox? settled, PatchSamples? samples)
{
    private readonly double[]? _senders = settled?.Exitances(samples!.Exposures(flash));

    /// <summary>Light of unit intensity at the first points of the box.</summary>
    /// <param name="count">How many points [1].</param>
    public UnitLight At(int count)
    {
        var (direct, arriving) = (new double[VectorMath.Padded(count)], new double[VectorMath.Padded(count)]);
        flash.AddTo(points, direct.Length, direct);
        settled?.Gather(_senders!, arriving.AsSpan(0, count));
        return new UnitLight(direct, arriving, null);
    }
}
