using StudioKit.Kits.Quantities;
using UnitsNet;

namespace StudioKit.Kits.Description;

/// <summary>Keys that take dates, places on the globe, parts of the day and the lie of the land.</summary>
internal static class DayKeys
{
    public static Section<T> Date<T>(this OpenKey<T> key, Func<T, DateOnly, T> set)
        where T : class => key.Value(DayText.Date, (owner, day) => set(owner, DateOnly.FromDayNumber(day)), null);

    public static Section<T> Latitude<T>(this OpenKey<T> key, Func<T, Angle, T> set)
        where T : class => key.Value(DayText.Latitude, (owner, number) => set(owner, OwnUnits.Angle(number)), null);

    public static Section<T> Longitude<T>(this OpenKey<T> key, Func<T, Angle, T> set)
        where T : class => key.Value(DayText.Longitude, (owner, number) => set(owner, OwnUnits.Angle(number)), null);

    public static Section<T> ClockOffset<T>(this OpenKey<T> key, Func<T, Duration, T> set, Func<T, Duration> get)
        where T : class => key.Value(DayText.ClockOffset, (owner, number) => set(owner, OwnUnits.Duration(number)), owner => OwnUnits.Of(get(owner)));

    public static Section<T> Downhill<T>(this OpenKey<T> key, Func<T, Angle, T> set)
        where T : class => key.Value(DownhillText.Kind, (owner, number) => set(owner, OwnUnits.Angle(number)), null);

    public static Section<T> Active<T>(this OpenKey<T> key, Func<T, ActiveTime, T> set)
        where T : class => key.Value(DayText.Active, set, null);
}
