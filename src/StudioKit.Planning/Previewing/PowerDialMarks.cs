using StudioKit.Physics.Exposure;

namespace StudioKit.Planning.Previewing;

/// <summary>The marks of a flash's power dial.</summary>
public static class PowerDialMarks
{
    // No dial has more clicks; a lowest power that rounding puts under the last mark ends it.
    private const int Most = 64;

    /// <summary>Every mark from full power down.</summary>
    /// <param name="lowest">Lowest power of the flash.</param>
    /// <param name="step">Step of its dial.</param>
    public static IReadOnlyList<DialMark> Of(FlashPower lowest, PowerStep step)
    {
        var marks = new List<DialMark> { new(FlashPower.Full, step) };
        while (marks.Count < Most && marks[^1].Darker is { } darker && darker.Power.StopsBelowFull < lowest.StopsBelowFull + (0.5 * step.OneClick().Value))
        {
            marks.Add(darker);
        }

        return marks;
    }
}
