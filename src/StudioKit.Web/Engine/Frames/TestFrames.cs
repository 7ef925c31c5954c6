using StudioKit.Field.Advice;
using StudioKit.Field.Analysis;
using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Planning.Expected;
using StudioKit.Web.Engine.Telling;
using StudioKit.Web.Results;
using UnitsNet;

namespace StudioKit.Web.Engine.Frames;

/// <summary>What single test frames come to, and what to turn.</summary>
/// <param name="plans">Where plans come from.</param>
/// <param name="pictures">The pictures that were read.</param>
internal sealed class TestFrames(PlannedKits plans, ReadPictures pictures)
{
    /// <summary>How near the lower flash can be moved, as the command line takes it where nobody says.</summary>
    public static Length Nearest { get; } = Length.FromCentimeters(10);

    /// <summary>Tells of a frame.</summary>
    public FrameAnswer Of(FrameRequest request)
    {
        var frame = pictures.Of(request.Picture);
        return frame.IsSound ? Of(request, frame.Value) : Nothing(PictureTelling.Faults(frame.Diagnostics));
    }

    private FrameAnswer Of(FrameRequest request, FrameAnalysis frame)
    {
        if (plans.Of(request.Text, request.FileName).Plan is not { } plan)
        {
            return Nothing(["The kit's text cannot be read: put that right first."]);
        }

        FlashPower? power = null;
        if (request.Power.Length > 0)
        {
            if (!QuantityText.TryPower(request.Power, out var typed, out var problem))
            {
                return Nothing([$"Power of the lower flash: {problem}."]);
            }

            power = ThirdStopSeries.FromMark(typed);
        }

        var taken = new TestFramePlan(plan, new ExpectedLight(plan), request.SetUp, request.Framing, null);
        var place = taken.PlaceOf(frame);
        return place.IsSound
            ? FrameTelling.Of(taken.Report(frame, place.Value, taken.FlashAt(place.Value, (power, null), Nearest), null))
            : Nothing(PictureTelling.Faults(place.Diagnostics));
    }

    private static FrameAnswer Nothing(IReadOnlyList<string> faults) => new(Standing.Unread, "", [], faults);
}
