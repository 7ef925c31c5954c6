namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>Settles shutter and ISO on the ambient light: the shutter first, the ISO last.</summary>
internal static class AmbientFirst
{
    /// <summary>Finds shutter and ISO for a wanted rendering of the ambient light.</summary>
    /// <param name="setUp">The case.</param>
    /// <param name="camera">Camera with the f-number to use.</param>
    /// <param name="favourite">Shutter speed to start from.</param>
    /// <param name="level">Ambient level wanted [stops].</param>
    /// <param name="limit">The limit in the way; none where the level is met.</param>
    public static CameraCase Settle(SetUpCase setUp, CameraCase camera, ShutterSpeed favourite, double level, out MissedLimit? limit)
    {
        var shutter = SetUpCamera.WithinSync(favourite, setUp.Limits);
        var lowest = IsoWindow.StopsOf(setUp.Limits.LowestIso);
        var highest = Guard.Between(IsoWindow.StopsOf(setUp.Limits.HighestIso), lowest, 100, nameof(setUp.Limits.HighestIso));
        var iso = level - SetUpCamera.AmbientAtIso100(setUp.Ambient, camera, shutter);

        var favoured = setUp.FavouriteIso is { } favouriteIso ? Math.Clamp(IsoWindow.StopsOf(favouriteIso), lowest, highest) : (double?)null;
        var (lowestKept, highestKept) = (favoured ?? lowest, favoured ?? highest);
        var moved = iso < lowestKept ? Shorten(shutter, setUp.Limits, lowestKept - iso) : Lengthen(shutter, setUp, iso - highestKept);
        var wanted = iso - Math.Log2(moved.Seconds / shutter.Seconds);
        var click = Math.Clamp(Math.Round(3 * wanted) / 3, lowest, highest);
        limit = Limit(wanted, lowest, highest, moved, camera, setUp.Limits);
        return camera with { Shutter = moved, Iso = IsoWindow.SpeedAt(click) };
    }

    private static ShutterSpeed Shorten(ShutterSpeed shutter, SetUpLimits limits, double stops) => new(
        Math.Max(Math.Min(shutter.Seconds, limits.FlashSync.Seconds), shutter.Seconds * Math.Pow(2, -Thirds(stops))));

    private static ShutterSpeed Lengthen(ShutterSpeed shutter, SetUpCase setUp, double stops)
    {
        var longest = Math.Max(shutter.Seconds, (setUp.Limits.LongestShutter ?? setUp.Camera.Shutter).Seconds);
        return stops <= 0 ? shutter : new ShutterSpeed(Math.Min(longest, shutter.Seconds * Math.Pow(2, Thirds(stops))));
    }

    private static double Thirds(double stops) => Math.Ceiling((3 * stops) - 1e-9) / 3;

    // Half a click of the ISO dial is nothing to complain of.
    private static MissedLimit? Limit(
        double wanted, double lowest, double highest, ShutterSpeed shutter, CameraCase camera, SetUpLimits limits)
    {
        const double halfClick = (1.0 / 6) + 1e-9;
        return wanted < lowest - halfClick
            ? new MissedLimit.AmbientTooBright(camera.Aperture, shutter, limits.LowestIso, new Stops(lowest - wanted))
            : wanted > highest + halfClick
                ? new MissedLimit.AmbientTooDim(camera.Aperture, shutter, limits.HighestIso, new Stops(wanted - highest))
                : null;
    }
}
