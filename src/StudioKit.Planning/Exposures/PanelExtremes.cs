using StudioKit.Physics.Exposure;

namespace StudioKit.Planning.Exposures;

/// <summary>Darkest and brightest visible point of the panel, against the point straight above a bare flash.</summary>
/// <param name="Darkest">Stops of the darkest point; negative under that point.</param>
/// <param name="Brightest">Stops of the brightest point.</param>
internal sealed record PanelExtremes(Stops Darkest, Stops Brightest);
