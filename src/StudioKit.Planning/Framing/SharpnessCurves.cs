using StudioKit.Kits.Cameras;
using StudioKit.Kits.Subjects;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Planning.Framing;

/// <summary>Blur of a subject over the f-numbers of a lens.</summary>
internal static class SharpnessCurves
{
    private const int MarksPerDoubling = 6;

    /// <summary>The curve of a framing; none where the subject reaches as far as the camera, or none fits the frame.</summary>
    public static SharpnessCurve? Of(PlannedFraming framing, SubjectSpec? subject, FNumber chosen)
    {
        if (subject is null || !StaysBefore(framing, SharpnessPlanner.DepthOf(subject)))
        {
            return null;
        }

        var depth = SharpnessPlanner.DepthOf(subject);
        var points = Marks(framing.Lens).Select(mark => BlurOver(framing, mark, depth)!).ToList();
        return new SharpnessCurve(subject.Name, depth, points, SharpnessPlanner.Sharpest(framing, subject), chosen);
    }

    /// <summary>Blur at one f-number; none where the subject reaches as far as the camera.</summary>
    public static ApertureBlur? BlurOver(PlannedFraming framing, FNumber aperture, Length depth)
    {
        if (!StaysBefore(framing, depth))
        {
            return null;
        }

        var blur = Blur.OverSubject(SharpnessPlanner.At(framing, aperture), depth);
        var m = framing.Plan.Magnification.Value;
        return new ApertureBlur(aperture, blur.Nearest.Total / m, blur.Middle.Total / m, blur.Farthest.Total / m);
    }

    /// <summary>Every third-stop f-number of a lens, widest first.</summary>
    public static IEnumerable<FNumber> Marks(LensSpec lens)
    {
        var widest = Mark(ThirdStopSeries.FromMark(lens.WidestAperture));
        var smallest = Mark(ThirdStopSeries.FromMark(lens.SmallestAperture));
        for (var mark = widest; mark <= smallest; mark++)
        {
            yield return new FNumber(Math.Pow(2, (double)mark / MarksPerDoubling));
        }
    }

    private static int Mark(FNumber aperture) => (int)Math.Round(MarksPerDoubling * Math.Log2(aperture.Value));

    // Either half of the subject must lie before the pupil, wherever a close-up lens throws that.
    private static bool StaysBefore(PlannedFraming framing, Length depth) =>
        framing.Stack.SubjectToEntrancePupil is not { } pupil || depth / 2 < Length.FromMeters(Math.Abs(pupil.Meters)) * 0.99;
}
