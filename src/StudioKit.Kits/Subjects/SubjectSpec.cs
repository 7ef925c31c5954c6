using StudioKit.Kits.Quantities;
using UnitsNet;

namespace StudioKit.Kits.Subjects;

/// <summary>An animal or plant to be portrayed.</summary>
public sealed record SubjectSpec
{
    private readonly Speed? _speed;

    /// <summary>Name on cards and lists; unique among the subjects.</summary>
    public required string Name { get; init; }

    /// <summary>How it is handled.</summary>
    public required SubjectGroup Group { get; init; }

    /// <summary>Longest dimension; framings that show it whole are chosen by it.</summary>
    public required Length Length { get; init; }

    /// <summary>Height above the panel; a third of the length where the kit gives none.</summary>
    public Length? Height { get; init; }

    /// <summary>Depth that must be sharp, along the line of sight; half its height where the kit gives none.</summary>
    public Length? Depth { get; init; }

    /// <summary>How fast it moves on the panel; where the kit gives nothing, 5 mm/s, and nought for what does not live.</summary>
    public Speed Speed
    {
        get => _speed ?? (Group == SubjectGroup.LifelessThings ? Speed.Zero : Speed.FromMillimetersPerSecond(5));
        init => _speed = value;
    }

    /// <summary>Mean reflectance [1]; above 0, at most 1.</summary>
    public double Reflectance { get; init; } = 0.18;

    /// <summary>Whether its skin is wet and glares.</summary>
    public bool Wet { get; init; }

    /// <summary>Most time it is held; the group's usual limit where the kit gives none.</summary>
    public Duration? HoldLimit { get; init; }

    /// <summary>When it is about and can be photographed; at any time where the kit gives none.</summary>
    public ActiveTime? Active { get; init; }

    /// <summary>Frames taken of it in each set-up [1]; the session's number where the kit gives none.</summary>
    public int? Frames { get; init; }

    /// <summary>Whether a focus stack is taken too, where one frame is not deep enough.</summary>
    public bool Stack { get; init; }

    /// <summary>The feature that decides what it is; none where no one is named.</summary>
    public FeatureSpec? Feature { get; init; }
}
