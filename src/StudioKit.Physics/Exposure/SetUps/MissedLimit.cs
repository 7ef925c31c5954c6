using StudioKit.Physics.Exposure.Flashes;
using UnitsNet;

namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>A limit that the settings of a set-up miss, and by how much; one of the forms below.</summary>
/// <param name="By">Stops by which it is missed; above 0; none where no amount would mend it.</param>
public abstract record MissedLimit(Stops? By)
{
    internal static IEnumerable<MissedLimit> Any(MissedLimit? limit) => limit is null ? [] : [limit];

    /// <summary>The ISO speed that something asks for lies above what something else allows.</summary>
    /// <param name="Needed">Speed asked for.</param>
    /// <param name="NeededFor">What asks for it.</param>
    /// <param name="NeedingFlash">The flash that asks; none where it is no flash.</param>
    /// <param name="Allowed">Speed allowed.</param>
    /// <param name="AllowedBy">What allows no more.</param>
    /// <param name="BarringFlash">The flash that allows no more; none where it is no flash.</param>
    /// <param name="By">Stops between the two speeds.</param>
    public sealed record IsoConflict(IsoSpeed Needed, IsoBound NeededFor, FlashCase? NeedingFlash, IsoSpeed Allowed, IsoBound AllowedBy, FlashCase? BarringFlash, Stops? By) : MissedLimit(By);

    /// <summary>A flash at the most power allowed stays short of its level.</summary>
    /// <param name="Flash">Its name.</param>
    /// <param name="Most">The most power allowed.</param>
    /// <param name="By">Stops short.</param>
    public sealed record FlashTooWeak(string Flash, DialMark Most, Stops? By) : MissedLimit(By);

    /// <summary>A flash at its lowest power gives more than its level.</summary>
    /// <param name="Flash">Its name.</param>
    /// <param name="Least">Its lowest power.</param>
    /// <param name="By">Stops too much.</param>
    public sealed record FlashTooStrong(string Flash, DialMark Least, Stops? By) : MissedLimit(By);

    /// <summary>A flash is not ready soon enough.</summary>
    /// <param name="Flash">Its name.</param>
    /// <param name="Power">Its power.</param>
    /// <param name="Takes">Time to recycle at that power.</param>
    /// <param name="Longest">Longest wait wanted.</param>
    /// <param name="By">Stops of power between the two.</param>
    public sealed record RecyclesSlowly(string Flash, DialMark Power, Duration Takes, Duration Longest, Stops? By) : MissedLimit(By);

    /// <summary>A flash burns too long to freeze the subject.</summary>
    /// <param name="Flash">Its name.</param>
    /// <param name="Power">Its power.</param>
    /// <param name="Burns">Flash duration t0.1 at that power.</param>
    /// <param name="Longest">Longest that freezes.</param>
    /// <param name="By">Stops of time between the two.</param>
    public sealed record BurnsLong(string Flash, DialMark Power, Duration Burns, Duration Longest, Stops? By) : MissedLimit(By);

    /// <summary>The brightest visible point of the panel veils the subject.</summary>
    /// <param name="Brightest">Its white margin.</param>
    /// <param name="Highest">White margin that the veil allows.</param>
    public sealed record Veils(Stops Brightest, Stops Highest) : MissedLimit(Brightest - Highest);

    /// <summary>The ambient light is too bright for the darkest settings.</summary>
    /// <param name="Aperture">f-number set.</param>
    /// <param name="Shutter">Shortest shutter speed.</param>
    /// <param name="Iso">Lowest speed.</param>
    /// <param name="By">Stops too bright.</param>
    public sealed record AmbientTooBright(FNumber Aperture, ShutterSpeed Shutter, IsoSpeed Iso, Stops? By) : MissedLimit(By);

    /// <summary>The ambient light is too dim for the brightest settings.</summary>
    /// <param name="Aperture">f-number set.</param>
    /// <param name="Shutter">Longest shutter speed.</param>
    /// <param name="Iso">Highest speed.</param>
    /// <param name="By">Stops too dim.</param>
    public sealed record AmbientTooDim(FNumber Aperture, ShutterSpeed Shutter, IsoSpeed Iso, Stops? By) : MissedLimit(By);

    /// <summary>The flashes light the background behind the subject.</summary>
    /// <param name="Behind">Subject to background.</param>
    /// <param name="Level">Level of the flashes on it.</param>
    /// <param name="Wanted">Level that it must lie under.</param>
    public sealed record LightsBackground(Length Behind, Stops Level, Stops Wanted) : MissedLimit(Level - Wanted);

    /// <summary>What the camera sees of the panel cannot be worked out.</summary>
    public sealed record Unseen() : MissedLimit((Stops?)null);

    /// <summary>Hand, subject or flash smear more than passes for sharp.</summary>
    /// <param name="Smear">Length of the smear on the sensor [pixels].</param>
    /// <param name="Most">Length that passes for sharp [pixels].</param>
    public sealed record Smears(double Smear, double Most) : MissedLimit(new Stops(Math.Log2(Smear / Most)));
}
