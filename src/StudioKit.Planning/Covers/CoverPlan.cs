using StudioKit.Physics;
using StudioKit.Physics.Light.Covers;
using UnitsNet;

namespace StudioKit.Planning.Covers;

/// <summary>The clear cover of a set-up, or the tank that its animals swim in.</summary>
public sealed record CoverPlan
{
    /// <summary>Most by which a cover may be warmed (common practice, no source).</summary>
    public static readonly TemperatureDelta WarmestRise = TemperatureDelta.FromKelvins(5);

    /// <summary>Name of the set-up.</summary>
    public required string SetUp { get; init; }

    /// <summary>Name of the cover.</summary>
    public required string Cover { get; init; }

    /// <summary>What it is like.</summary>
    public required CoverShape Shape { get; init; }

    /// <summary>Whether it is lifted for the picture.</summary>
    public required bool Lifted { get; init; }

    /// <summary>Depth of its water; none in air.</summary>
    public required Length Water { get; init; }

    /// <summary>Width of its foot.</summary>
    public required Length FootWidth { get; init; }

    /// <summary>Depth of its foot.</summary>
    public required Length FootDepth { get; init; }

    /// <summary>Whether its foot stands on the flat sheet with the subject in its middle; so too where no sheet is.</summary>
    public required bool StandsOnSheet { get; init; }

    /// <summary>Widest foot that would; none where no sheet is.</summary>
    public Length? RoomWidth { get; init; }

    /// <summary>Deepest foot that would.</summary>
    public Length? RoomDepth { get; init; }

    /// <summary>Longest animal that it leaves room to turn.</summary>
    public required Length LongestAnimal { get; init; }

    /// <summary>Highest animal that it leaves room.</summary>
    public required Length HighestAnimal { get; init; }

    /// <summary>The set-up's subjects in it.</summary>
    public required ValueList<CoveredSubject> Subjects { get; init; }

    /// <summary>How long an animal may stay in it.</summary>
    public required CoverStay Stay { get; init; }

    /// <summary>Most by which daylight can warm the air in it; none in water, which takes the longer to warm the more there is.</summary>
    public TemperatureDelta? Warming { get; init; }

    /// <summary>Stops that shade must take from daylight so that it stays cool; 0 where it does.</summary>
    public double ShadeStops { get; init; }

    /// <summary>What is seen through it at each framing; empty where it is lifted.</summary>
    public required ValueList<CoveredFraming> Framings { get; init; }

    /// <summary>Camera angles that are clear at every framing; empty where there is none.</summary>
    public ValueList<PitchRange> ClearForAll => [.. Framings.Select(framing => framing.Clear).Aggregate((IEnumerable<PitchRange>)[new PitchRange(Angle.Zero, Angle.FromDegrees(90))], (all, clear) =>
        all.SelectMany(one => clear.Select(other => new PitchRange(UnitMath.Max(one.From, other.From), UnitMath.Min(one.To, other.To)))).Where(range => range.From <= range.To))];
}
