using UnitsNet;

namespace StudioKit.Physics.Light;

/// <summary>A place on the sheet.</summary>
/// <param name="Across">To the right of its middle.</param>
/// <param name="AlongSheet">Along the sheet from its front edge.</param>
public readonly record struct PanelPlace(Length Across, Length AlongSheet);
