using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Shelters;
using StudioKit.Physics.Structure;
using UnitsNet;

namespace StudioKit.Planning.Sheltering;

/// <summary>What wind-breaks leave of the wind.</summary>
internal static class WindScreens
{
    /// <summary>The sides that a wind-break needs before something of a width and height, as the wind swings.</summary>
    public static (Length Wide, Length High) Needed(ShelterSpec screen, Length width, Length height) => (width + (2 * screen.Away * Math.Tan(WindBreak.Swing * Math.PI / 180)), height);

    /// <summary>Wind behind a wind-break over that in the open; 1 where it is too small for what stands behind it [1].</summary>
    public static double Left(ShelterSpec screen, Length width, Length height)
    {
        var (wide, high) = Needed(screen, width, height);
        return screen.Kind == ShelterKind.WindBreak && screen.Width >= wide && screen.Height >= high ? WindBreak.SpeedLeft(screen.Away / screen.Height, screen.Porosity) : 1;
    }

    /// <summary>Wind on something of a width and height over that in the open, behind what all its set-ups have put up [1].</summary>
    public static double Behind(KitSpec kit, IReadOnlyList<SetUpSpec> setUps, Length width, Length height) =>
        setUps.Select(setUp => Shade.Of(kit, setUp).Select(shelter => Left(shelter, width, height)).DefaultIfEmpty(1).Min()).DefaultIfEmpty(1).Max();
}
