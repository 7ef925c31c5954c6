using StudioKit.Kits.Description;
using UnitsNet;

namespace StudioKit.Kits.SetUps;

/// <summary>Whether the lights of a set-up fit its way of lighting.</summary>
internal static class SetUpLights
{
    public static Fault? Check(SetUpSpec setUp) => setUp.Kind == SetUpKind.WhiteBackground ? CheckWhite(setUp) : CheckOther(setUp);

    private static Fault? CheckWhite(SetUpSpec setUp) => NoBackground(setUp) ?? UnderSheet(setUp) ?? Silhouette(setUp);

    private static Fault? NoBackground(SetUpSpec setUp) => setUp switch
    {
        { Upright: null } when Has(setUp, LightRole.Behind) => new Fault(
            "lights", $"The set-up '{setUp.Name}' has a flash behind an upright sheet, but no such sheet.", "Name one of 'uprights': 'upright: reed screen'."),
        { Upright: null } when !Has(setUp, LightRole.Below) => new Fault(
            "lights", $"The white-background set-up '{setUp.Name}' has no flash below the panel.", "Add a light with 'role: below'; before an upright sheet one with 'role: behind', and 'upright' with its name."),
        { Upright: { } upright } when !Has(setUp, LightRole.Behind) => new Fault(
            "lights", $"The set-up '{setUp.Name}' has no flash behind its upright sheet '{upright}'.", "Add a light with 'role: behind'."),
        _ => null,
    };

    private static Fault? UnderSheet(SetUpSpec setUp) => setUp.Lights.FirstOrDefault(light => light.Elevation < Angle.Zero) is { } under && Has(setUp, LightRole.Below)
        ? new Fault("lights", $"The light '{under.Flash}' of '{setUp.Name}' would shine from under the sheet: its elevation is below 0°.", "Let it stand over the sheet: 'elevation: 45°'.")
        : null;

    private static Fault? Silhouette(SetUpSpec setUp) => Has(setUp, LightRole.Above) || (setUp.Upright is not null && setUp.Lights.Any(light => !light.Role.IsBackground()))
        ? null
        : new Fault("lights", $"The set-up '{setUp.Name}' has no flash above, so the subject will be a silhouette.", "Add a light with 'role: above'.", IsWarning: true);

    private static Fault? CheckOther(SetUpSpec setUp)
    {
        if (setUp.Upright is { } upright)
        {
            return new Fault("upright", $"Only a white background has a sheet behind the subject, and '{setUp.Name}' is none.", $"Leave 'upright: {upright}' out, or write 'kind: white-background'.");
        }

        if (setUp.Lights.FirstOrDefault(light => light.Role is LightRole.Below or LightRole.Above or LightRole.Behind) is { } stray)
        {
            return new Fault(
                "lights", $"The role '{Word(stray.Role)}' belongs to a white-background set-up, but '{setUp.Name}' is none.", "Use the roles key, fill and rim here.");
        }

        var wanted = setUp.Kind == SetUpKind.DarkBackground ? LightRole.Key : LightRole.Fill;
        return Has(setUp, wanted) || (setUp.Kind != SetUpKind.DarkBackground && Has(setUp, LightRole.Key))
            ? null
            : new Fault(
                "lights", $"The {MemberText.Of(setUp.Kind)} set-up '{setUp.Name}' has no {Word(wanted)} light.", $"Add a light with 'role: {Word(wanted)}'.");
    }

    private static bool Has(SetUpSpec setUp, LightRole role) => setUp.Lights.Any(light => light.Role == role);

    private static string Word(LightRole role) => MemberText.Of(role);
}
