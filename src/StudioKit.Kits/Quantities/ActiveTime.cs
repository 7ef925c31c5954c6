namespace StudioKit.Kits.Quantities;

/// <summary>When a subject is about: hours of the clock, or a part of the day by the sun.</summary>
/// <param name="Hours">The hours; none where it goes by the sun.</param>
/// <param name="Part">The part of the day; none where it goes by the clock.</param>
public sealed record ActiveTime(ClockRange? Hours, DayPart? Part);
