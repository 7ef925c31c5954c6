using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Field.Advice;

/// <summary>What to turn after a test frame, and by how much.</summary>
/// <param name="ChangeStops">Stops of light that the panel needs more (positive) or can do with less (negative) [1].</param>
/// <param name="Power">New power of the flash beneath; none where its range does not reach.</param>
/// <param name="Distance">Or new distance from window to panel; none where it cannot stand so near.</param>
/// <param name="Iso">Or this many stops on the ISO speed, in thirds [1].</param>
/// <param name="Sentences">The same in words, best first.</param>
public sealed record WhiteAdvice(
    double ChangeStops, FlashPower? Power, Length? Distance, double Iso, IReadOnlyList<string> Sentences);
