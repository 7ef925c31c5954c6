namespace StudioKit.Physics.Light.Placements;

/// <summary>Says in a sentence what stands in the way, and what would help.</summary>
internal static class PlacementAdvice
{
    public static string For(PlacementCase search, Placement? nearest) => nearest?.Limit switch
    {
        PlacementLimit.PanelTooSmall => "A framing sees past the panel: make the panel larger, or sweep it up at the back.",
        PlacementLimit.FullPower => FormattableString.Invariant(
            $"Full power falls {PlacementJudge.Excess(search, nearest):0.0} stop short at the darkest visible point: open the aperture, raise the ISO speed, add a flash or white skirts."),
        PlacementLimit.Veil => FormattableString.Invariant(
            $"The brightest visible point lies {PlacementJudge.Excess(search, nearest):0.0} stop over the veil's limit: light the sheet more evenly from further away, through a diffuser or with skirts, or accept more veil."),
        _ => "No candidate stands clear under the panel: try greater panel heights or smaller offsets.",
    };
}
