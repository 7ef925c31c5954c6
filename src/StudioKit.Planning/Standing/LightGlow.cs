using StudioKit.Kits.Studio;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Standing;

namespace StudioKit.Planning.Standing;

/// <summary>What a light about the subject does to the sheet beneath, in stops against clipping.</summary>
/// <param name="Sheet">The sheet at the subject's foot by this light alone; none where it does not shine on one.</param>
/// <param name="Glare">Brightest part of its mirror image that is seen; none where none is.</param>
/// <remarks>
/// The top of the sheet is taken to throw back as much, matt, as its underside does. A light that gives the subject a level by what falls on it head-on
/// shows a tone of 18 % at that level; sheet and mirror image are held against that tone.
/// </remarks>
internal sealed record LightGlow(Stops? Sheet, Stops? Glare)
{
    private const double MidTone = 0.18;

    /// <summary>A light's glow.</summary>
    /// <param name="scene">Subject and camera.</param>
    /// <param name="light">The light.</param>
    /// <param name="normal">Level that it gives to what faces it [stops].</param>
    /// <param name="camera">The camera as it is set.</param>
    public static LightGlow Of(StandScene scene, StandingLight light, Stops normal, CameraCase camera)
    {
        if (scene.Room.Sheet is null)
        {
            return new(null, null);
        }

        var facing = LightOnSurface.Exposure(light.Front, scene.Subject, light.From.Towards);
        var tone = LightOnSurface.Luminance(facing, MidTone);
        var against = normal - camera.MidToneUnderClipping - camera.ClipPoint;
        var sheet = LightOnSurface.Luminance(LightOnSurface.Exposure(light.Front, scene.Foot, Direction.Up), scene.Kit.Panel.UndersideReflectance);
        var glare = scene.Kit.Panel.Finish == SheetFinish.Gloss
            ? scene.Cameras.Max(seen => SheetGloss.Glare(light.Front, seen.View, scene.Room.Level))
            : null;
        return new(Against(sheet, tone, against), Against(glare ?? 0, tone, against));
    }

    private static Stops? Against(double luminance, double tone, Stops against) => luminance > 0 && tone > 0 ? against + Stops.FromRatio(luminance / tone) : null;
}
