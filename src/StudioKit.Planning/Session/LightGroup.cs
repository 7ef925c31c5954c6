using StudioKit.Kits.Quantities;

namespace StudioKit.Planning.Session;

/// <summary>Set-ups that can be photographed in one light at one hour.</summary>
/// <param name="SetUps">The set-ups.</param>
/// <param name="Planned">From the darkest to the brightest light that one of them is planned for, in which all work.</param>
/// <param name="Light">All light in which all work.</param>
/// <param name="Clock">Hours that all allow; any where none names hours.</param>
internal sealed record LightGroup(IReadOnlyList<SetUpWindow> SetUps, LightRange Planned, LightRange Light, ClockRange? Clock)
{
    /// <summary>How far apart the lights are that its set-ups are planned for [stops].</summary>
    public double Spread => Planned.Brightest.AtIso100 - Planned.Darkest.AtIso100;

    /// <summary>The group of these set-ups; none where one does not work in the light that another is planned for, or their hours do not meet.</summary>
    public static LightGroup? Of(IReadOnlyList<SetUpWindow> setUps)
    {
        var light = setUps.Select(setUp => setUp.Light).Aggregate((LightRange?)setUps[0].Light, (common, window) => common?.With(window));
        var planned = setUps.Select(setUp => setUp.Planned).OrderBy(one => one.AtIso100).ToList();
        return light is not null && light.Holds(planned[0]) && light.Holds(planned[^1]) && HaveHours(setUps, out var clock)
            ? new LightGroup(setUps, new LightRange(planned[0], planned[^1]), light, clock)
            : null;
    }

    // Hours that have a time in common have the beginning of one of them in common.
    private static bool HaveHours(IReadOnlyList<SetUpWindow> setUps, out ClockRange? common)
    {
        var hours = setUps.Select(setUp => setUp.Clock).OfType<ClockRange>().ToList();
        common = hours.Select(range => range.From).Select(minute => hours.Aggregate((ClockRange?)hours[0], (both, range) => both?.With(range, minute)))
            .OfType<ClockRange>().OrderByDescending(range => range.Length).FirstOrDefault();
        return hours.Count == 0 || common is not null;
    }
}
