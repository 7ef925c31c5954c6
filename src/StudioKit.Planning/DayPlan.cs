using StudioKit.Physics;
using StudioKit.Physics.Daylight;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Session;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>A day at its place: where the sun stands, what light is to be expected, and what can be photographed in it.</summary>
public sealed record DayPlan
{
    /// <summary>The date.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>The place.</summary>
    public required GeographicPlace Place { get; init; }

    /// <summary>How far the clock is ahead of Universal Time.</summary>
    public required Duration ClockOffset { get; init; }

    /// <summary>Whether the kit says so; else it follows from the longitude.</summary>
    public required bool IsOffsetGiven { get; init; }

    /// <summary>How much darker the shade used there is than open shade.</summary>
    public required Stops ShadeLoss { get; init; }

    /// <summary>Twilights, sunrise, true noon and sunset in the order of the clock; what the day lacks is left out.</summary>
    public required ValueList<SunEvent> Events { get; init; }

    /// <summary>The light hours, one after the other; they run past midnight where a block of the session does.</summary>
    public required ValueList<DayHour> Hours { get; init; }
}
