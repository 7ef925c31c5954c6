namespace StudioKit.Physics.Tests.Optics;

/// <summary>Rays close to the axis, bent surface by surface after Snell: what the tests hold the lens model against.</summary>
/// <remarks>A ray is height and slope. Distances in mm, counted from the front glass, subjects before it.</remarks>
internal sealed class LensTrace
{
    private readonly LensPrescription _lens;
    private readonly bool _close;

    public LensTrace(LensPrescription lens, bool close = false)
    {
        (_lens, _close) = (lens, close);
        var (height, slope) = Through(1, 0);
        FocalLength = -1 / slope;
        BackFocus = -height / slope;
        // A ray through the rear focus the other way round: the front focus is where a ray starts that leaves parallel.
        var (_, one) = Through(0, 1);
        FrontPrincipalPlane = (one - 1) / slope;
        RearPrincipalPlane = Length + BackFocus - FocalLength;
        (EntrancePupil, EntrancePupilPerStop) = PupilBefore();
        PupilRatio = ExitPupilPerStop() / EntrancePupilPerStop;
    }

    public double FocalLength { get; }

    /// <summary>Last glass to the image of infinity.</summary>
    public double BackFocus { get; }

    /// <summary>First to last glass.</summary>
    public double Length => _lens.Surfaces.Take(_lens.Surfaces.Count - 1).Sum(Gap);

    public double FrontPrincipalPlane { get; }

    public double RearPrincipalPlane { get; }

    public double Separation => RearPrincipalPlane - FrontPrincipalPlane;

    public double EntrancePupil { get; }

    /// <summary>Diameter of the entrance pupil over that of the stop.</summary>
    public double EntrancePupilPerStop { get; }

    public double PupilRatio { get; }

    /// <summary>Last distance of the table.</summary>
    public double LastDistance => Gap(_lens.Surfaces[^1]);

    /// <summary>A ray through all surfaces, from the front glass to the last.</summary>
    public (double Height, double Slope) Through(double height, double slope) => Through(height, slope, 0, _lens.Surfaces.Count);

    private double Gap(LensSurface surface) => _close ? surface.Close : surface.Distance;

    private (double Height, double Slope) Through(double height, double slope, int from, int to)
    {
        var index = from == 0 ? 1 : _lens.Surfaces[from - 1].Index;
        for (var i = from; i < to; i++)
        {
            var surface = _lens.Surfaces[i];
            // n'·u' = n·u − y·(n' − n)/r.
            slope = ((index * slope) - (height * (surface.Index - index) / surface.Radius)) / surface.Index;
            index = surface.Index;
            if (i < _lens.Surfaces.Count - 1)
            {
                height += slope * Gap(surface);
            }
        }

        return (height, slope);
    }

    private int Stop => _lens.Surfaces.ToList().FindIndex(surface => surface.IsStop);

    // Rays that start at the front glass and cross the axis in the stop seem to come from the entrance pupil's middle.
    private (double Place, double PerStop) PupilBefore()
    {
        var (parallel, _) = Through(1, 0, 0, Stop);
        var (tilted, _) = Through(0, 1, 0, Stop);
        return (tilted / parallel, 1 / parallel);
    }

    private double ExitPupilPerStop()
    {
        var (middleHeight, middleSlope) = Through(0, 1, Stop, _lens.Surfaces.Count);
        var (edgeHeight, edgeSlope) = Through(1, 0, Stop, _lens.Surfaces.Count);
        return Math.Abs(edgeHeight - (middleHeight / middleSlope * edgeSlope));
    }
}
