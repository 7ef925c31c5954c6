using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Field.Advice;

/// <summary>What to turn after a test frame, and by how much.</summary>
/// <param name="ChangeStops">Stops of light that the panel needs more (positive) or can do with less (negative) [1].</param>
/// <param name="Mark">New power as the dial of the flash beneath shows it; none where its range does not reach.</param>
/// <param name="Distance">Or new distance from window to panel; none where it cannot stand so near.</param>
/// <param name="Iso">Or this many stops on the ISO speed, in thirds [1].</param>
/// <param name="Sentences">The same in words, best first.</param>
public sealed record WhiteAdvice(
    double ChangeStops, DialMark? Mark, Length? Distance, double Iso, IReadOnlyList<string> Sentences)
{
    /// <summary>New power as a share of full power; none where its range does not reach.</summary>
    public FlashPower? Power => Mark?.Power;
}
