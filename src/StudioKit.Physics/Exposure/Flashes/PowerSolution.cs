namespace StudioKit.Physics.Exposure.Flashes;

/// <summary>Power setting found for a wanted level of light.</summary>
/// <param name="Mark">The setting: a click of the dial, an end of it where the level is out of reach.</param>
/// <param name="Level">The level that this setting gives.</param>
/// <param name="Target">The level that was wanted.</param>
/// <param name="ExactStops">Power for exactly that level, in stops against full; above 0 where full power does not suffice.</param>
/// <param name="Limit">The end of the dial in the way.</param>
public sealed record PowerSolution(DialMark Mark, Stops Level, Stops Target, Stops ExactStops, PowerLimit Limit)
{
    /// <summary>The setting as a share of full power.</summary>
    public FlashPower Power => Mark.Power;

    /// <summary>Whether the dial reaches the level.</summary>
    public bool IsReached => Limit == PowerLimit.None;
}
