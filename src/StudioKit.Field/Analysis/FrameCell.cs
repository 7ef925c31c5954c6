namespace StudioKit.Field.Analysis;

/// <summary>One cell of the coarse grid laid over a frame.</summary>
/// <param name="BackgroundShare">Share of the cell that is background [1].</param>
/// <param name="ClippedShare">Share of that background that is clipped to white [1]; 0 where there is no background.</param>
/// <param name="Light">Mean light of the background in the channel that clips last, 1 at clipping [1].</param>
public readonly record struct FrameCell(double BackgroundShare, double ClippedShare, double Light)
{
    // A cell of which more clips has a mean that no longer follows the light.
    private const double MostClipped = 0.002;

    /// <summary>Whether more of it is background than not.</summary>
    public bool IsMostlyBackground => BackgroundShare > 0.5;

    /// <summary>Whether its mean follows the light: within the range that it is wanted for, and hardly clipped.</summary>
    /// <param name="above">Light that it must exceed [1].</param>
    /// <param name="below">Light that it must stay under [1].</param>
    public bool FollowsLight(double above, double below) => Light > above && Light < below && ClippedShare < MostClipped;
}
