using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Physics.Optics;

/// <summary>A stack focused on a subject: where everything lies, how bright and how large the image is.</summary>
public sealed record OpticalStackResult
{
    /// <summary>Magnification on the sensor.</summary>
    public required Magnification Magnification { get; init; }

    /// <summary>Magnification that the lens's own focusing ring is set to [1]; ≥ 0.</summary>
    public required double OwnMagnification { get; init; }

    /// <summary>Focal length of the lens alone at that focus.</summary>
    public required Length FocalLength { get; init; }

    /// <summary>Focal length of the whole stack.</summary>
    public required Length StackFocalLength { get; init; }

    /// <summary>How far the lens stands beyond its infinity position, its own focusing and the tubes together.</summary>
    public required Length Extension { get; init; }

    /// <summary>Subject to the front principal plane of the lens: u = f·(1 + 1/m) for a lens alone.</summary>
    public required Length ObjectDistance { get; init; }

    /// <summary>Subject to sensor.</summary>
    public required Length SubjectToSensor { get; init; }

    /// <summary>Subject to the foremost glass, or to the mount ring of a reversed lens; zero or less when they would touch.</summary>
    public required Length WorkingDistance { get; init; }

    /// <summary>Whether the working distance rests on a guessed length of the lens.</summary>
    public required bool WorkingDistanceIsEstimated { get; init; }

    /// <summary>One standard deviation of the working distance, from what was assumed of the lens; ≥ 0.</summary>
    public required Length WorkingDistanceUncertainty { get; init; }

    /// <summary>Whether the lens would have to touch its subject or swallow it.</summary>
    public bool TouchesSubject => WorkingDistance.Meters <= 0;

    /// <summary>f-number that governs image brightness and diffraction.</summary>
    public required FNumber EffectiveFNumber { get; init; }

    /// <summary>Light lost against the marked f-number, 2·log₂(N_e/N), counted positive [1].</summary>
    public required double ExposureLossStops { get; init; }

    /// <summary>One standard deviation of that loss, from what was assumed of the lens; ≥ 0 stops.</summary>
    public required Stops ExposureUncertainty { get; init; }

    /// <summary>Width of the subject plane that fills the frame.</summary>
    public required Length FieldWidth { get; init; }

    /// <summary>Height of the subject plane that fills the frame.</summary>
    public required Length FieldHeight { get; init; }

    /// <summary>Subject to the entrance pupil, the point of perspective; none when it lies at infinity, negative when behind the subject.</summary>
    public required Length? SubjectToEntrancePupil { get; init; }

    /// <summary>One standard deviation of that distance, from what was assumed of the lens; ≥ 0.</summary>
    public required Length EntrancePupilUncertainty { get; init; }

    /// <summary>Exit over entrance pupil diameter of the lens, the right way round, as given or assumed [1].</summary>
    public required double PupilRatio { get; init; }

    /// <summary>Exit pupil to sensor.</summary>
    public required Length ExitPupilToSensor { get; init; }

    /// <summary>What was assumed of the lens because it was not given.</summary>
    public required ValueList<LensAssumption> Assumptions { get; init; }

    /// <summary>What the photographer must know about these numbers.</summary>
    public required IReadOnlyList<string> Caveats { get; init; }
}
