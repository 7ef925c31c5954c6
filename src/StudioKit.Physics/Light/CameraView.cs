using UnitsNet;

namespace StudioKit.Physics.Light;

/// <summary>Where the camera stands for one framing and what it takes in.</summary>
/// <remarks>The camera looks away from the panel's front edge; its line of sight goes through a point over the subject's foot.</remarks>
public sealed record CameraView
{
    /// <summary>Name of the framing.</summary>
    public required string Name { get; init; }

    /// <summary>Width of the field in the plane in focus.</summary>
    public required Length FieldWidth { get; init; }

    /// <summary>Height of the field in the plane in focus.</summary>
    public required Length FieldHeight { get; init; }

    /// <summary>Entrance pupil to the plane in focus.</summary>
    public required Length PupilDistance { get; init; }

    /// <summary>Angle of the line of sight under the horizontal; 90° looks straight down, more looks back towards the front edge.</summary>
    public required Angle Pitch { get; init; }

    /// <summary>Camera turned about its line of sight, right side down.</summary>
    public Angle Roll { get; init; } = Angle.Zero;

    /// <summary>Height over the sheet of the point looked at; lifts the line of sight, so that the patch lies further back.</summary>
    public Length SubjectHeight { get; init; } = Length.Zero;

    /// <summary>Subject's foot to the right of the panel's middle.</summary>
    public Length SubjectRight { get; init; } = Length.Zero;

    /// <summary>Subject's foot beyond the panel's middle.</summary>
    public Length SubjectBack { get; init; } = Length.Zero;

    /// <summary>How far beyond the subject's foot another sheet stands on this one, so that what is seen further off is the other's; none where nothing stands there; &gt; 0 m.</summary>
    public Length? EndsBehind { get; init; }
}
