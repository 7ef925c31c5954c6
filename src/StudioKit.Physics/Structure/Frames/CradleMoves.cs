using StudioKit.Physics.Sources;
using StudioKit.Physics.Structure.Frames.Layout;
using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>How far a flash that a frame refuses must be moved before the frame carries it.</summary>
public static class CradleMoves
{
    // Further than this it is another lighting.
    private const int FarthestMillimeters = 300;

    /// <summary>The least move each way that gives a refused flash its cradle and takes none from another.</summary>
    /// <param name="design">The frame that refuses it.</param>
    /// <param name="cradle">Which of the cases' cradles [1]; from 0.</param>
    /// <returns>The moves in whole millimetres up to 300 mm, the least first; none where no single move does.</returns>
    /// <exception cref="ArgumentNullException">There is no case.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such cradle, or a field of the case is outside its range.</exception>
    /// <remarks>The frame is laid out anew with the flash moved, millimetre by millimetre; no other part of it may suffer.</remarks>
    [Source("Derived", "the frame laid out anew with the flash moved")]
    public static IReadOnlyList<CradleMove> Of(FrameCase design, int cradle)
    {
        ArgumentNullException.ThrowIfNull(design);
        Guard.Between(cradle, 0, design.Cradles.Count - 1);
        var now = PipeFrame.Generate(design);
        return [.. Enum.GetValues<CradleMoveKind>().Select(kind => Least(design, cradle, kind, now)).OfType<CradleMove>().OrderBy(move => move.By)];
    }

    private static CradleMove? Least(FrameCase design, int cradle, CradleMoveKind kind, FrameResult now) => Enumerable.Range(1, FarthestMillimeters)
        .Select(millimeters => new CradleMove(kind, Length.FromMillimeters(millimeters)))
        .FirstOrDefault(move => After(design, cradle, move) is { } moved && Carries(moved, cradle, now));

    // The places of cradles cost little, the whole frame more.
    private static bool Carries(FrameCase moved, int cradle, FrameResult now)
    {
        var places = LowerRails.For(new FrameMeasures(moved)).Cradles;
        if (places[cradle].Fault is not null || places.Zip(now.Cradles).Any(pair => pair.First.Fault is not null && pair.Second.Fault is null))
        {
            return false;
        }

        return PipeFrame.Obstacle(moved) is null && PipeFrame.Generate(moved).Problems.Count <= now.Problems.Count;
    }

    private static FrameCase? After(FrameCase design, int cradle, CradleMove move)
    {
        if (move.Kind == CradleMoveKind.RaisePanel)
        {
            return design with { Height = design.Height + move.By };
        }

        var moved = After(design.Cradles[cradle], move);
        return moved.BelowPanel > Length.Zero ? design with { Cradles = [.. design.Cradles.Select((other, i) => i == cradle ? moved : other)] } : null;
    }

    private static FlashCradleCase After(FlashCradleCase flash, CradleMove move) => move.Kind switch
    {
        CradleMoveKind.Up => flash with { BelowPanel = flash.BelowPanel - move.By },
        CradleMoveKind.Down => flash with { BelowPanel = flash.BelowPanel + move.By },
        CradleMoveKind.Left => flash with { OffsetRight = flash.OffsetRight - move.By },
        CradleMoveKind.Right => flash with { OffsetRight = flash.OffsetRight + move.By },
        CradleMoveKind.Front => flash with { OffsetBack = flash.OffsetBack - move.By },
        _ => flash with { OffsetBack = flash.OffsetBack + move.By },
    };
}
