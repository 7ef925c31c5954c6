namespace StudioKit.Web.Results;

/// <summary>The studio of one white-background set-up, to scale; all lengths in millimetres.</summary>
/// <param name="SetUp">Name of the set-up.</param>
/// <param name="Key">Path of the set-up in the kit.</param>
/// <param name="PanelWidth">Width of the panel.</param>
/// <param name="PanelDepth">Depth along the sheet, sweep included.</param>
/// <param name="FlatDepth">The flat part of it.</param>
/// <param name="PanelHeight">Ground to the flat panel's underside.</param>
/// <param name="SubjectFromFront">Where the subject's foot stands, midway between left and right.</param>
/// <param name="Columns">Points of the map across.</param>
/// <param name="Rows">Points of the map from front to back.</param>
/// <param name="SidePanel">The panel in the side view, from its front edge back.</param>
/// <param name="SideBars">The frame's pipes in the side view.</param>
/// <param name="Lights">The flashes below.</param>
/// <param name="Framings">What each framing sees; empty where the light cannot be worked out.</param>
/// <param name="Problems">What is impossible about the geometry.</param>
public sealed record StudioPicture(
    string SetUp, string Key, double PanelWidth, double PanelDepth, double FlatDepth, double PanelHeight, double SubjectFromFront, int Columns, int Rows,
    IReadOnlyList<Spot> SidePanel, IReadOnlyList<SideBar> SideBars, IReadOnlyList<LowerLight> Lights, IReadOnlyList<SeenFraming> Framings, IReadOnlyList<string> Problems)
{
    /// <summary>What can be moved.</summary>
    public IReadOnlyList<Handle> Handles { get; init; } = [];

    /// <summary>Outlines of where the sheet lies over pipes of the frame and stays dark, seen from above.</summary>
    public IReadOnlyList<IReadOnlyList<Spot>> Covered { get; init; } = [];

    /// <summary>What is said of them; empty where there are none.</summary>
    public string CoveredWords { get; init; } = "";

    /// <summary>The flashes above and beside.</summary>
    public IReadOnlyList<UpperLight> UpperLights { get; init; } = [];

    /// <summary>Where the subject's foot stands in the side view.</summary>
    public Spot Subject { get; init; }
}
