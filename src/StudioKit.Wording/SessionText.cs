using StudioKit.Kits.Quantities;
using StudioKit.Planning;
using StudioKit.Planning.Session;

namespace StudioKit.Wording;

/// <summary>Blocks of a session in words.</summary>
public static class SessionText
{
    /// <summary>The set-ups of a block and the light that it is planned for.</summary>
    /// <param name="block">The block.</param>
    public static string Title(SessionBlock block)
    {
        ArgumentNullException.ThrowIfNull(block);
        var subjects = block.Only.Count == 0 ? "" : $" for {string.Join(" and ", block.Only)}";
        return $"{string.Join(" and ", block.SetUps.Select(setUp => setUp.SetUp))}{subjects}, {Range(block.Planned)}";
    }

    /// <summary>When a block is photographed, and how long its rounds take.</summary>
    /// <param name="block">The block.</param>
    public static string When(SessionBlock block)
    {
        ArgumentNullException.ThrowIfNull(block);
        return $"{(block.Clock is { } hours ? $"From {Hours(hours)}. " : "")}{Light(block)}. {Rounds(block)} {DayText.Begin(block)}".TrimEnd();
    }

    /// <summary>In which rounds of a block a step is done; nothing where there is one only.</summary>
    /// <param name="block">The block.</param>
    /// <param name="part">Which rounds.</param>
    public static string Of(SessionBlock block, RoundPart part)
    {
        ArgumentNullException.ThrowIfNull(block);
        return block.Following is null ? "" : part switch
        {
            RoundPart.First => "first round",
            RoundPart.Following => "later rounds",
            _ => "every round",
        };
    }

    /// <summary>Hours of the day, e.g. <c>09:00 to 17:00</c>.</summary>
    /// <param name="hours">The hours.</param>
    public static string Hours(ClockRange hours)
    {
        ArgumentNullException.ThrowIfNull(hours);
        return $"{Time(hours.From)} to {Time(hours.To)}";
    }

    private static string Light(SessionBlock block) => block.Light == block.Planned
        ? $"Only in light of {Range(block.Light)}"
        : $"Works in light of {Range(block.Light)}: where it is not {Range(block.Planned)}, set what the cards' tables say";

    private static string Range(LightRange light) => light.Darkest == light.Brightest
        ? AmbientText.Value(light.Darkest)
        : $"{AmbientText.Value(light.Darkest)} to {AmbientText.Figure(light.Brightest)}";

    private static string Rounds(SessionBlock block) => block.Following is { } following
        ? FormattableString.Invariant($"First round {MeasureFormat.Minutes(block.First.Time)}, each of {block.Rounds - 1} more {MeasureFormat.Minutes(following.Time)}: {MeasureFormat.Minutes(block.Time)} in all, {block.Frames} frames.")
        : FormattableString.Invariant($"One round of {MeasureFormat.Minutes(block.Time)}, {block.Frames} frames.");

    private static string Time(int minute) => FormattableString.Invariant($"{minute / 60:00}:{minute % 60:00}");
}
