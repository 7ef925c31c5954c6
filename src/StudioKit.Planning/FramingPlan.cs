using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>One lens combination at one magnification.</summary>
public sealed record FramingPlan
{
    /// <summary>Short name, unique in the plan, e.g. "55 mm at 1:1".</summary>
    public required string Name { get; init; }

    /// <summary>Name of the lens.</summary>
    public required string Lens { get; init; }

    /// <summary>Magnification.</summary>
    public required Magnification Magnification { get; init; }

    /// <summary>Tubes, close-up lenses and converters it needs, in order from the camera; empty for the lens alone.</summary>
    public required IReadOnlyList<string> Accessories { get; init; }

    /// <summary>Other combinations on hand that reach the same magnification, each as one line.</summary>
    public IReadOnlyList<string> OtherCombinations { get; init; } = [];

    /// <summary>Why the magnification is out of reach; none where it is reached.</summary>
    public ReachLimit? Limit { get; init; }

    /// <summary>Whether the combination reaches the magnification.</summary>
    public bool Reached => Limit is null;

    /// <summary>Extension beyond infinity focus, tubes and the lens's own together.</summary>
    public required Length Extension { get; init; }

    /// <summary>Focal length at this focus.</summary>
    public required Length FocalLength { get; init; }

    /// <summary>Subject to sensor.</summary>
    public required Length SubjectToSensor { get; init; }

    /// <summary>Front glass to subject.</summary>
    public required Length WorkingDistance { get; init; }

    /// <summary>One standard deviation of it, from what had to be assumed of the lens.</summary>
    public Length WorkingDistanceUncertainty { get; init; }

    /// <summary>Subject to entrance pupil, the point from which the camera looks.</summary>
    public required Length SubjectToEntrancePupil { get; init; }

    /// <summary>Effective over marked f-number [1]; ≥ 1 save where a camera already reports the effective one.</summary>
    public required double EffectiveApertureFactor { get; init; }

    /// <summary>One standard deviation of the light that focusing close costs, from what had to be assumed of the lens.</summary>
    public Stops ExposureUncertainty { get; init; }

    /// <summary>Exit over entrance pupil diameter of the lens, as given or assumed [1].</summary>
    public required double PupilRatio { get; init; }

    /// <summary>Width of the field at the subject.</summary>
    public required Length FieldWidth { get; init; }

    /// <summary>Height of the field at the subject.</summary>
    public required Length FieldHeight { get; init; }

    /// <summary>Longest animal that it shows whole, lying along the frame.</summary>
    public Length LongestWhole => FieldWidth;

    /// <summary>Animal that fills the frame: with a tenth of it clear at either end (common practice, no source).</summary>
    public Length FillsFrame => FieldWidth * 0.8;

    /// <summary>What had to be assumed of the lens, with its uncertainty.</summary>
    public ValueList<LensAssumption> Assumptions { get; init; } = [];

    /// <summary>Limits of the theory that the reader must know.</summary>
    public IReadOnlyList<string> Caveats { get; init; } = [];
}
