using StudioKit.Field.Pictures;

namespace StudioKit.Field.Analysis;

/// <summary>What one test frame says of its lighting.</summary>
public sealed record FrameAnalysis
{
    /// <summary>File of the frame.</summary>
    public required string Path { get; init; }

    /// <summary>Pixels across, as seen [1].</summary>
    public required int Width { get; init; }

    /// <summary>Pixels down, as seen [1].</summary>
    public required int Height { get; init; }

    /// <summary>What the file says of how it was taken.</summary>
    public required FrameSettings Settings { get; init; }

    /// <summary>Tone curve that it was read by.</summary>
    public ToneCurve Curve { get; init; } = ToneCurve.Standard;

    /// <summary>Share of the frame that is background [1].</summary>
    public required double BackgroundShare { get; init; }

    /// <summary>Share of the frame that is the subject, its outline not counted [1].</summary>
    public required double SubjectShare { get; init; }

    /// <summary>Share of the frame that could be background or subject: brightness, edges and texture do not agree [1].</summary>
    public double DoubtfulShare { get; init; }

    /// <summary>Share of the background that is clipped to white [1].</summary>
    public required double ClippedShare { get; init; }

    /// <summary>How far the darkest background lies under clipping, but for its darkest half percent; 0 where all is white [1].</summary>
    public required double StopsMissing { get; init; }

    /// <summary>Brightest to darkest background in stops, but for half a percent at either end [1].</summary>
    public required double UnevennessStops { get; init; }

    /// <summary>Whether part of the background is clipped, so that <see cref="UnevennessStops"/> is only the least it can be.</summary>
    public required bool UnevennessIsLeast { get; init; }

    /// <summary>Colour of the background under clipping and over a mid-tone; none where nothing lies there.</summary>
    public BackgroundTint? Tint { get; init; }

    /// <summary>Light on the subject's darkest parts; none where no subject was found.</summary>
    public ShadowVeil? Veil { get; init; }

    /// <summary>Where the subject's own tones lie; none where no subject was found.</summary>
    public SubjectTones? Tones { get; init; }

    /// <summary>The nine regions of the frame, from the top left.</summary>
    public required IReadOnlyList<FrameRegion> Regions { get; init; }

    /// <summary>Cells across [1].</summary>
    public required int CellColumns { get; init; }

    /// <summary>Cells down [1].</summary>
    public required int CellRows { get; init; }

    /// <summary>The cells, row by row from the top left.</summary>
    public required IReadOnlyList<FrameCell> Cells { get; init; }

    /// <summary>Sharpness by tile.</summary>
    public required SharpnessMap Sharpness { get; init; }

    /// <summary>The frame made small, with the places that are not white.</summary>
    public required FrameThumbnail Thumbnail { get; init; }

    /// <summary>
    /// Why the figures of background and subject are not to be relied upon, as a sentence: no white-background frame, or a subject without a clear
    /// edge. None where they are sound.
    /// </summary>
    public string? Doubt { get; init; }

    /// <summary>What to bear in mind, one sentence each.</summary>
    public IReadOnlyList<string> Caveats { get; init; } = [];
}
