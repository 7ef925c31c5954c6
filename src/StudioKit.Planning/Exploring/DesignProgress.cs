namespace StudioKit.Planning.Exploring;

/// <summary>How far a search for designs has come.</summary>
/// <param name="Tried">Designs tried [1].</param>
/// <param name="Of">Designs that are to be tried [1]; closing may take some more.</param>
/// <param name="Shown">Designs that none of them beats [1].</param>
public sealed record DesignProgress(int Tried, int Of, int Shown);
