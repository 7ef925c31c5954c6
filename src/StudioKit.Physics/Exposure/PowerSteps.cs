using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Exposure;

/// <summary>The steps of power dials in numbers.</summary>
public static class PowerSteps
{
    /// <summary>Clicks that halve or double the power.</summary>
    /// <param name="step">The dial's step.</param>
    /// <returns>3, 2 or 1 [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such step.</exception>
    [Source("CommonPractice", "power dials go by thirds, halves or whole stops")]
    public static int ClicksPerStop(this PowerStep step) => step switch
    {
        PowerStep.Third => 3,
        PowerStep.Half => 2,
        PowerStep.Whole => 1,
        _ => throw new ArgumentOutOfRangeException(nameof(step), step, "There is no such step."),
    };

    /// <summary>One click of the dial.</summary>
    /// <param name="step">The dial's step.</param>
    /// <returns>A third, a half or a whole stop [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such step.</exception>
    [Source("CommonPractice", "power dials go by thirds, halves or whole stops")]
    public static Stops OneClick(this PowerStep step) => new(1.0 / step.ClicksPerStop());
}
