using StudioKit.Physics;
using StudioKit.Physics.Exposure.SetUps;

namespace StudioKit.Planning;

/// <summary>Whether an exposure works, what it misses, and how likely the first frame is right.</summary>
public sealed record ExposureVerdict
{
    /// <summary>An exposure that keeps every limit.</summary>
    public static ExposureVerdict Kept { get; } = new() { Verdict = Verdict.Works };

    /// <summary>Works, at the edge, or does not work.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>Limits missed, the one that binds first; empty where it works.</summary>
    public ValueList<MissedLimit> Missed { get; init; } = [];

    /// <summary>Probability that the first frame meets the target [1]; 0 to 1, none where nothing lights the frame.</summary>
    public double? FirstFrame { get; init; }

    /// <summary>Probability that the darkest visible corner stays grey on the first frame [1]; 0 to 1; white background only.</summary>
    public double? GreyCorner { get; init; }

    /// <summary>Probability that the background shows on the first frame [1]; 0 to 1; dark background only.</summary>
    public double? BackgroundShows { get; init; }

    /// <summary>The limit that binds; none where it works.</summary>
    public MissedLimit? Binding => Missed.Count > 0 ? Missed[0] : null;
}
