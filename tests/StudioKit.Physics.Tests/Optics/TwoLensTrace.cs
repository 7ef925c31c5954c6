namespace StudioKit.Physics.Tests.Optics;

/// <summary>Rays through two thin lenses with a stop between them, traced surface by surface: the slow, plain second route.</summary>
internal sealed record TwoLensTrace(double F1, double F2, double Gap, double StopPlace, double StopDiameter, double Magnification)
{
    public double FocalLength => F1 * F2 / (F1 + F2 - Gap);

    /// <summary>Diameter of the stop's image seen from behind over that seen from the front.</summary>
    public double PupilRatio => (1 - (StopPlace / F1)) / (1 - ((Gap - StopPlace) / F2));

    public double MarkedFNumber => FocalLength / (StopDiameter / (1 - (StopPlace / F1)));

    public double SubjectToEntrancePupil => SubjectDistance + (StopPlace / (1 - (StopPlace / F1)));

    public double EffectiveFNumber => 1 / (2 * Math.Abs(EdgeRay(SubjectDistance).Slope));

    private double SubjectDistance => (FocalLength * (1 - (Gap / F2))) + (FocalLength / Magnification);

    private double SensorDistance => (FocalLength * (1 - (Gap / F1))) + (FocalLength * Magnification);

    /// <summary>How far a point must leave the focused plane for a spot of this width on the sensor.</summary>
    public double OffsetWithSpot(double width, bool towardsCamera)
    {
        double low = 0, high = towardsCamera ? SubjectDistance * 0.9 : SubjectDistance * 9;
        for (var i = 0; i < 200; i++)
        {
            var middle = (low + high) / 2;
            var spot = 2 * Math.Abs(EdgeRay(SubjectDistance - (towardsCamera ? middle : -middle)).Height);
            (low, high) = spot < width ? (middle, high) : (low, middle);
        }

        return low;
    }

    // The ray from an axial point that just clears the edge of the stop, as it arrives at the sensor.
    private (double Height, double Slope) EdgeRay(double distance)
    {
        var atStop = HeightAtStop(distance, 1);
        var start = StopDiameter / 2 / atStop;
        double height = distance * start, slope = start - (distance * start / F1);
        height += Gap * slope;
        slope -= height / F2;
        return (height + (SensorDistance * slope), slope);
    }

    private double HeightAtStop(double distance, double start)
    {
        var height = distance * start;
        return height + (StopPlace * (start - (height / F1)));
    }
}
