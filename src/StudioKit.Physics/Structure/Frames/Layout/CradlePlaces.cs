using UnitsNet;

namespace StudioKit.Physics.Structure.Frames.Layout;

/// <summary>Gives every flash below the panel a tee on a lower rail, in the order asked, where the rails before it leave room.</summary>
/// <remarks>Flashes at one height share the side stretchers, those in one line across also the rail, and those in one place the tee.</remarks>
internal sealed class CradlePlaces(FrameMeasures measures)
{
    // Places nearer than this are one place.
    private const double Same = 1e-4;

    private readonly List<PlacedCradle> _held = [];

    private double Pitch { get; } = measures.Closest(FittingKind.Tee, FittingKind.Tee);

    private FlashBodyRoom Room => new(-measures.Right + PipeRadius, measures.Right - PipeRadius, measures.Front + PipeRadius, measures.Back - PipeRadius);

    private double PipeRadius { get; } = measures.Design.Pipe.OutsideDiameter.Meters / 2;

    public IReadOnlyList<PlacedCradle> Place(IReadOnlyList<FlashCradleCase> asked) => [.. asked.Select(Place)];

    private PlacedCradle Place(FlashCradleCase asked)
    {
        var up = measures.Height - asked.BelowPanel.Meters - asked.StandOff.Meters;
        var at = Snapped(new FramePoint(asked.OffsetRight.Meters, asked.OffsetBack.Meters, up));
        var cradle = new PlacedCradle(asked, at, null);
        cradle = cradle with { Fault = Outside(cradle) ?? _held.Select(held => Meeting(cradle, held)).FirstOrDefault(fault => fault is not null) };
        if (cradle.Fault is null)
        {
            _held.Add(cradle);
        }

        return cradle;
    }

    // Onto the level, line and place of a cradle before it.
    private FramePoint Snapped(FramePoint at)
    {
        var up = _held.Select(held => held.At.Up).FirstOrDefault(level => Math.Abs(level - at.Up) < Same, at.Up);
        var back = _held.Where(held => held.At.Up == up).Select(held => held.At.Back).FirstOrDefault(line => Math.Abs(line - at.Back) < Same, at.Back);
        var right = _held.Where(held => held.At.Up == up && held.At.Back == back).Select(held => held.At.Right).FirstOrDefault(place => Math.Abs(place - at.Right) < Same, at.Right);
        return new FramePoint(right, back, up);
    }

    private CradleFault? Outside(PlacedCradle cradle)
    {
        var (at, asked) = (cradle.At, cradle.Asked);
        if (at.Up < measures.LowestTee)
        {
            return Fault(CradleFaultKind.TooLow, measures.LowestTee - at.Up);
        }

        if (at.Up > measures.HighestTee)
        {
            return Fault(CradleFaultKind.TooNearTopRails, at.Up - measures.HighestTee);
        }

        var inside = Math.Abs(at.Right) <= measures.Right - Pitch && at.Back >= measures.Front + Pitch && at.Back <= measures.Back - Pitch;
        var over = Math.Max(
            Math.Abs(at.Right) + (asked.HeadWidth.Meters / 2) - measures.Right,
            Math.Max(at.Back - measures.Back, measures.Front - at.Back) + (asked.HeadHeight.Meters / 2)) + PipeRadius;
        return !inside ? Fault(CradleFaultKind.OutsideLegs, 0) : over > Same ? Fault(CradleFaultKind.HeadOutsideLegs, over) : Body(cradle);
    }

    private CradleFault? Body(PlacedCradle cradle)
    {
        var outside = Room.Outside(cradle.Asked).Meters;
        var sunk = cradle.Asked.BodyHeight.Meters - cradle.Window.Up;
        return outside > Same ? Fault(CradleFaultKind.BodyOutsideLegs, outside) : sunk > Same ? Fault(CradleFaultKind.BodyInGround, sunk) : null;
    }

    private CradleFault? Meeting(PlacedCradle cradle, PlacedCradle held)
    {
        if (HeadsMeet(cradle, held))
        {
            return Fault(CradleFaultKind.HeadMeetsAnother, 0);
        }

        var missing = Math.Max(TeesMissing(cradle.At, held.At), Math.Max(RailInHead(cradle.At, held), RailInHead(held.At, cradle)));
        return missing > Same ? Fault(CradleFaultKind.TooNearAnotherRail, missing) : null;
    }

    // What two tees on one leg, stretcher or rail lie too near each other [m].
    private double TeesMissing(FramePoint one, FramePoint other)
    {
        if (one == other)
        {
            return 0;
        }

        var between = one.Up != other.Up ? one.Up - other.Up : one.Back != other.Back ? one.Back - other.Back : one.Right - other.Right;
        return Pitch - Math.Abs(between);
    }

    // What a rail lies inside a head over its own, lower rail [m].
    private double RailInHead(FramePoint rail, PlacedCradle head) => rail.Up > head.At.Up && rail.Up < head.Window.Up
        ? (head.Asked.HeadHeight.Meters / 2) + PipeRadius - Math.Abs(rail.Back - head.At.Back)
        : 0;

    private static bool HeadsMeet(PlacedCradle one, PlacedCradle other) =>
        one.Asked.UpFor.Intersect(other.Asked.UpFor, StringComparer.Ordinal).Any()
        && (one.At == other.At
            || (Overlap(one.At.Right, one.Asked.HeadWidth, other.At.Right, other.Asked.HeadWidth)
                && Overlap(one.At.Back, one.Asked.HeadHeight, other.At.Back, other.Asked.HeadHeight)
                && one.At.Up < other.Window.Up && other.At.Up < one.Window.Up));

    private static bool Overlap(double one, Length itsSide, double other, Length otherSide) =>
        Math.Abs(one - other) < ((itsSide + otherSide).Meters / 2) - Same;

    private static CradleFault Fault(CradleFaultKind kind, double metres) => new(kind, Length.FromMeters(metres));
}
