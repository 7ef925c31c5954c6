namespace StudioKit.Web.Results;

/// <summary>A studio in space, to scale.</summary>
/// <param name="Said">The same in words.</param>
/// <param name="PanelWidth">Width of the panel in millimetres.</param>
/// <param name="Panel">The panel from the side, from its front edge back.</param>
/// <param name="Bars">The frame's pipes.</param>
/// <param name="Lights">The flashes below.</param>
/// <param name="Sights">The cameras.</param>
/// <param name="Subject">Where the subject's foot stands.</param>
public sealed record SolidAnswer(
    string Said, double PanelWidth, IReadOnlyList<Spot> Panel, IReadOnlyList<SolidBar> Bars, IReadOnlyList<SolidLight> Lights, IReadOnlyList<SolidSight> Sights, Place Subject);
