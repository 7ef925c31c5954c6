using StudioKit.Physics.Structure.Frames;

namespace StudioKit.Planning.Checks;

/// <summary>What stands in the way of a check; one of the forms below.</summary>
public abstract record CheckFinding
{
    private CheckFinding()
    {
    }

    /// <summary>What a stage of the plan says.</summary>
    /// <param name="Part">Name of the part it is about; none where the sentence names it.</param>
    /// <param name="Sentence">What is wrong with it.</param>
    public sealed record Said(string? Part, string Sentence) : CheckFinding;

    /// <summary>Why no frame can be drawn.</summary>
    /// <param name="Obstacle">As the frame has it.</param>
    public sealed record OfNoFrame(FrameObstacle Obstacle) : CheckFinding;

    /// <summary>What stops a frame being built or packed.</summary>
    /// <param name="Problem">As the frame has it.</param>
    public sealed record OfFrame(FrameProblem Problem) : CheckFinding;

    /// <summary>Why a frame does not carry a flash.</summary>
    /// <param name="Fault">As the frame has it.</param>
    public sealed record OfCradle(CradleFault Fault) : CheckFinding;
}
