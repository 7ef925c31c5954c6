using StudioKit.Planning;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Cards;

/// <summary>A card's settings as plain text, which its code holds and a log may take in.</summary>
internal static class SettingsText
{
    public static string Of(ExposurePlan exposure, Stamp stamp) => string.Join(
        '\n',
        [
            $"{exposure.SetUp}, {exposure.Framing.Name}",
            $"{exposure.Aperture.Nominal}, {exposure.Shutter.Nominal}, {exposure.Iso.Nominal}",
            .. exposure.Lights.Select(light =>
                $"{RoleText.Title(light.Role)}: {LightNames.WithModifier(light)}, {(light.Zoom is null ? "" : $"{PlanFormat.Zoom(light.Zoom)}, ")}{light.PowerMark} at {DistanceFormat.Centimetres(light.Distance)}"),
            $"{stamp.KitName}, {stamp.Origin}",
        ]);
}
